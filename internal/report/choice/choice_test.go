package choice_test

import (
	"bytes"
	"context"
	"encoding/json"
	"html"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/prebuy"
	"trialfit/internal/report/choice"
)

// hostile is what somebody may write into a shortlist: markup, a table's bar, a
// link. Unseen characters are refused when it is read.
const hostile = `<script>alert(1)</script> | [x](http://x.invalid)`

// result is an example whose words are hostile, and long.
var result = sync.OnceValues(func() (*prebuy.Result, error) {
	c, err := check.New(check.Options{Today: "2026-11-25"})
	if err != nil {
		return nil, err
	}
	text, err := os.ReadFile("../../../examples/shortlists/heated-wagon" + prebuy.Suffix)
	if err != nil {
		return nil, err
	}
	said := strings.NewReplacer("name: Survey wagon", `name: "Survey `+hostile+`"`, "what: heater in the rear with its pipes", `what: "heater `+hostile+`"`).Replace(string(text))
	dir, err := os.MkdirTemp("", "choice")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	if err := os.CopyFS(dir, os.DirFS("../../../examples/shortlists")); err != nil {
		return nil, err
	}
	file := filepath.Join(dir, "heated-wagon"+prebuy.Suffix)
	if err := os.WriteFile(file, []byte(said), 0o600); err != nil {
		return nil, err
	}
	s, err := prebuy.Read(file, c.Book)
	if err != nil {
		return nil, err
	}
	s.File = "hostile" + prebuy.Suffix
	return prebuy.Run(context.Background(), s, c, nil)
})

func written(t *testing.T, form func(io.Writer, *prebuy.Result) error) string {
	r, err := result()
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, form(&b, r))
	return b.String()
}

// TestText: no line is longer than the terminal, on a phone and on a desk, but
// for words that can't be broken.
func TestText(t *testing.T) {
	for _, columns := range []int{40, 100} {
		text := written(t, func(w io.Writer, r *prebuy.Result) error { return choice.Text(w, r, columns, true) })
		for line := range strings.SplitSeq(text, "\n") {
			words := strings.Fields(line)
			if utf8.RuneCountInString(line) > columns && len(words) > 2 {
				require.LessOrEqual(t, utf8.RuneCountInString(line), columns, line)
			}
		}
		require.Contains(t, text, "petrol-wagon + van-four")
	}
}

func TestEscaped(t *testing.T) {
	page := written(t, choice.HTML)
	require.NotContains(t, page, "<script")
	require.NotRegexp(t, `(src|href)="http|@import|url\(`, page, "nothing comes from elsewhere")
	md := written(t, choice.Markdown)
	require.NotContains(t, md, "<script")
	require.NotContains(t, md, "[x](http")
}

// TestNumbers: every form tells the same numbers of every combination.
func TestNumbers(t *testing.T) {
	r, err := result()
	require.NoError(t, err)
	var doc struct {
		Combinations []struct {
			ID   string
			Rank int
			Cost struct{ Low, High, Text string } `json:"cost_to_finish"`
		}
	}
	require.NoError(t, json.Unmarshal([]byte(written(t, choice.JSON)), &doc))
	require.Len(t, doc.Combinations, len(r.Ranked))
	text := written(t, func(w io.Writer, r *prebuy.Result) error { return choice.Text(w, r, 100, true) })
	page, md := html.UnescapeString(written(t, choice.HTML)), written(t, choice.Markdown)
	for i, x := range r.Ranked {
		c := doc.Combinations[i]
		require.Equal(t, x.ID, c.ID)
		require.Equal(t, x.Rank, c.Rank)
		require.Equal(t, x.Total.Print("USD"), c.Cost.Text)
		for _, form := range []string{text, page, md} {
			require.Contains(t, form, c.Cost.Text)
		}
	}
}

// TestAccessible: axe-core finds nothing in a browser, by day and by night.
func TestAccessible(t *testing.T) {
	axe := dossiertest.Axe(t)
	for name, scheme := range map[string]string{"light": "1", "dark": "0"} {
		require.Empty(t, browse(t, axe, `axe.run(document, {resultTypes: ["violations"]}).then(r => report(r.violations.map(v => v.id + ": " + v.nodes[0].html)))`,
			"--blink-settings=preferredColorScheme="+scheme), name)
	}
}

// TestPhone: nothing reaches beyond the width of a phone, opened or not.
func TestPhone(t *testing.T) {
	require.Empty(t, browse(t, "", `
		document.querySelectorAll("details").forEach(d => d.open = true);
		document.documentElement.style.width = "390px";
		report([...document.querySelectorAll("body *")].filter(e => e.getBoundingClientRect().right > 390.5).map(e => e.outerHTML.slice(0, 90)))`))
}

// browse runs a script on the page in a browser of small width and gives the
// list that it reports.
func browse(t *testing.T, library, script string, flags ...string) []string {
	browser := dossiertest.Tool(t, "chromium")
	page := written(t, choice.HTML)
	const report = `const report = list => { document.body.textContent = "said:" + JSON.stringify(list) + ":said" };`
	end := strings.LastIndex(page, "</body>")
	page = page[:end] + "<script>" + library + "</script><script>" + report + script + "</script>" + page[end:]
	dir := t.TempDir()
	file := filepath.Join(dir, "page.html")
	require.NoError(t, os.WriteFile(file, []byte(page), 0o600))
	args := append([]string{"--headless=new", "--no-sandbox", "--disable-gpu", "--user-data-dir=" + dir, "--window-size=390,900",
		"--virtual-time-budget=60000", "--dump-dom"}, flags...)
	out, err := exec.CommandContext(t.Context(), browser, append(args, "file://"+file)...).Output()
	require.NoError(t, err)
	said := regexp.MustCompile(`said:(.*):said`).FindStringSubmatch(html.UnescapeString(string(out)))
	require.NotNil(t, said, "the script did not report")
	var list []string
	require.NoError(t, json.Unmarshal([]byte(said[1]), &list))
	return list
}
