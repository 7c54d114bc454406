package meta

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"net/textproto"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// modeline tells an editor's YAML language server which schema a file follows:
// https://github.com/redhat-developer/yaml-language-server, "Using inlined schema".
const modeline = "# yaml-language-server: $schema=../../schemas/manifest.json\n"

// shortlistModeline is that of shortlists.
const shortlistModeline = "# yaml-language-server: $schema=../../schemas/shortlist.json\n"

func shortlists(t *testing.T) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(root, "examples", "*", "*.shortlist.yaml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

func examples(t *testing.T) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(root, "examples", "*", "*.build.yaml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

func TestModeline(t *testing.T) {
	for _, file := range examples(t) {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		require.True(t, strings.HasPrefix(string(text), modeline), file)
		_, err = os.Stat(filepath.Join(filepath.Dir(file), "../../schemas/manifest.json"))
		require.NoError(t, err, "the modeline leads nowhere")
	}
	for _, file := range shortlists(t) {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		require.True(t, strings.HasPrefix(string(text), shortlistModeline), file)
		_, err = os.Stat(filepath.Join(filepath.Dir(file), "../../schemas/shortlist.json"))
		require.NoError(t, err, "the modeline leads nowhere")
	}
}

// TestEditor: with nothing but the modeline an editor completes keys and words,
// explains them, and finds no fault with an example that trialfit accepts.
func TestEditor(t *testing.T) {
	program, err := exec.LookPath("yaml-language-server")
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("yaml-language-server is not here: npm install yaml-language-server, see .ci/run")
		}
		t.Skip("yaml-language-server is not here: npm install yaml-language-server")
	}
	s := serve(t, program)

	for _, file := range append(examples(t), shortlists(t)...) {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Empty(t, s.open(file, string(text)), file)
	}

	draft := filepath.Join(root, "examples", "draft", "draft.build.yaml")
	faults := s.open(draft, modeline+"trialfit: 1\nbuild: {name: x}\nchassis:\n  wheelbase: 118 in\n  wheelbaze: 118 in\nengine:\n  fuel: \n")
	require.NotEmpty(t, faults)
	require.Contains(t, faults[0], "wheelbaze")

	// Lines and columns count from 0.
	require.Contains(t, s.hover(draft, 4, 5), "Distance from front to rear axle centreline")
	require.Contains(t, s.complete(draft, 7, 8), "diesel")
	keys := filepath.Join(root, "examples", "draft", "keys.build.yaml")
	s.open(keys, modeline+"trialfit: 1\nbuild: {name: x}\nchassis:\n  wh\n")
	labels := s.complete(keys, 4, 4)
	require.Contains(t, labels, "wheelbase")
	require.Contains(t, labels, "track_front")
	require.NotContains(t, labels, "fuel", "keys of another section")
}

// server is a language server on its standard streams, spoken to as the
// Language Server Protocol 3.17 says.
type server struct {
	t    *testing.T
	in   io.Writer
	out  *bufio.Reader
	next int
}

type message struct {
	ID     json.RawMessage `json:"id,omitempty"`
	Method string          `json:"method,omitempty"`
	Params json.RawMessage `json:"params,omitempty"`
	Result json.RawMessage `json:"result,omitempty"`
	Error  json.RawMessage `json:"error,omitempty"`
}

func serve(t *testing.T, program string) *server {
	t.Helper()
	cmd := exec.CommandContext(t.Context(), program, "--stdio")
	in, err := cmd.StdinPipe()
	require.NoError(t, err)
	out, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	t.Cleanup(func() {
		in.Close()
		cmd.Process.Kill()
		cmd.Wait()
	})
	s := &server{t: t, in: in, out: bufio.NewReader(out)}
	s.ask("initialize", map[string]any{"processId": os.Getpid(), "rootUri": nil, "capabilities": map[string]any{
		"textDocument": map[string]any{"completion": map[string]any{}, "hover": map[string]any{}, "publishDiagnostics": map[string]any{}},
	}})
	s.send(map[string]any{"method": "initialized", "params": map[string]any{}})
	return s
}

func (s *server) send(fields map[string]any) {
	s.t.Helper()
	fields["jsonrpc"] = "2.0"
	body, err := json.Marshal(fields)
	require.NoError(s.t, err)
	_, err = fmt.Fprintf(s.in, "Content-Length: %d\r\n\r\n%s", len(body), body)
	require.NoError(s.t, err)
}

// until reads messages up to the first that is the one awaited; what the
// server asks meanwhile is answered with nothing configured.
func (s *server) until(awaited func(message) bool) message {
	s.t.Helper()
	for {
		head, err := textproto.NewReader(s.out).ReadMIMEHeader()
		require.NoError(s.t, err)
		size, err := strconv.Atoi(head.Get("Content-Length"))
		require.NoError(s.t, err)
		body := make([]byte, size)
		_, err = io.ReadFull(s.out, body)
		require.NoError(s.t, err)
		var m message
		require.NoError(s.t, json.Unmarshal(body, &m))
		if awaited(m) {
			return m
		}
		if m.Method != "" && m.ID != nil {
			s.send(map[string]any{"id": m.ID, "result": []any{nil, nil, nil, nil}})
		}
	}
}

func (s *server) ask(method string, params any) json.RawMessage {
	s.t.Helper()
	s.next++
	id := strconv.Itoa(s.next)
	s.send(map[string]any{"id": s.next, "method": method, "params": params})
	m := s.until(func(m message) bool { return m.Method == "" && string(m.ID) == id })
	require.Empty(s.t, m.Error)
	return m.Result
}

func uri(t *testing.T, file string) string {
	t.Helper()
	abs, err := filepath.Abs(file)
	require.NoError(t, err)
	return (&url.URL{Scheme: "file", Path: filepath.ToSlash(abs)}).String()
}

// open shows a text to the server and returns what it finds wrong with it.
func (s *server) open(file, text string) []string {
	s.t.Helper()
	id := uri(s.t, file)
	s.send(map[string]any{"method": "textDocument/didOpen", "params": map[string]any{
		"textDocument": map[string]any{"uri": id, "languageId": "yaml", "version": 1, "text": text},
	}})
	var told struct {
		URI         string
		Diagnostics []struct{ Message string }
	}
	s.until(func(m message) bool {
		return m.Method == "textDocument/publishDiagnostics" && json.Unmarshal(m.Params, &told) == nil && told.URI == id
	})
	var faults []string
	for _, d := range told.Diagnostics {
		faults = append(faults, d.Message)
	}
	return faults
}

func (s *server) at(file string, line, column int) map[string]any {
	return map[string]any{
		"textDocument": map[string]any{"uri": uri(s.t, file)},
		"position":     map[string]any{"line": line, "character": column},
	}
}

func (s *server) hover(file string, line, column int) string {
	s.t.Helper()
	var told struct{ Contents struct{ Value string } }
	require.NoError(s.t, json.Unmarshal(s.ask("textDocument/hover", s.at(file, line, column)), &told))
	return told.Contents.Value
}

func (s *server) complete(file string, line, column int) []string {
	s.t.Helper()
	var told struct{ Items []struct{ Label string } }
	require.NoError(s.t, json.Unmarshal(s.ask("textDocument/completion", s.at(file, line, column)), &told))
	var labels []string
	for _, i := range told.Items {
		labels = append(labels, i.Label)
	}
	return labels
}
