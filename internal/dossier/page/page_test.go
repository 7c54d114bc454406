package page_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"trialfit/internal/dossier"
	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/dossier/page"
)

func draw(t *testing.T, d *dossier.Document) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, page.Write(&out, d))
	return out.String()
}

// visible is the text of the body as a parser of HTML reads it, blanks left
// out, drawings too.
func visible(t *testing.T, source string) string {
	t.Helper()
	root, err := html.Parse(strings.NewReader(source))
	require.NoError(t, err)
	var b strings.Builder
	var walk func(*html.Node)
	walk = func(n *html.Node) {
		if n.Type == html.ElementNode && (n.Data == "svg" || n.Data == "style" || n.Data == "thead") {
			return
		}
		if n.Type == html.TextNode {
			b.WriteString(n.Data)
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			walk(c)
		}
	}
	walk(root)
	return solid(b.String())
}

func solid(s string) string { return strings.Join(strings.Fields(s), "") }

// TestSaysEverything: every text of a document stands in its page, in order.
func TestSaysEverything(t *testing.T) {
	for name, d := range documents(t) {
		rest := visible(t, draw(t, d))
		for _, text := range dossiertest.Texts(d) {
			_, after, found := strings.Cut(rest, solid(text))
			require.True(t, found, "%s: %q is not there, or not in its place", name, text)
			rest = after
		}
	}
}

func documents(t *testing.T) map[string]*dossier.Document {
	t.Helper()
	list := map[string]*dossier.Document{"monster": dossiertest.Document(t, dossiertest.Monster(t, 60))}
	for _, file := range dossiertest.Examples(t) {
		b := dossiertest.Build(t, file)
		list[filepath.Base(file)] = dossiertest.Document(t, b)
		list[filepath.Base(file)+" for the owner"] = dossiertest.Book(t, b)
	}
	return list
}

// TestMarkupStaysText: nothing in a manifest becomes an element, an attribute,
// a style or an address, and nothing is fetched.
func TestMarkupStaysText(t *testing.T) {
	source := draw(t, dossiertest.Document(t, dossiertest.Monster(t, 6)))
	root, err := html.Parse(strings.NewReader(source))
	require.NoError(t, err)
	ids := map[string]bool{}
	var links []string
	for n := range root.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		require.NotContains(t, []string{"script", "b", "iframe", "link", "object", "base", "form"}, n.Data)
		for _, a := range n.Attr {
			require.False(t, strings.HasPrefix(a.Key, "on"), a.Key)
			switch a.Key {
			case "id":
				require.False(t, ids[a.Val], "id %s stands twice", a.Val)
				ids[a.Val] = true
			case "href":
				links = append(links, a.Val)
			case "src":
				require.True(t, strings.HasPrefix(a.Val, "data:image/jpeg;base64,"), a.Val)
			}
		}
	}
	for _, l := range links {
		id, inside := strings.CutPrefix(l, "#")
		switch {
		case inside:
			require.True(t, ids[id], "%s leads nowhere", l)
		default:
			require.Regexp(t, `^(https?://|data:application/)`, l)
		}
	}
	require.NotContains(t, source, "\u202e")
	require.NotContains(t, source, "\x1b")
	require.NotContains(t, source, "url(")
	require.NotContains(t, source, "ZgotmplZ", "something was taken for unsafe")
	require.Contains(t, source, `content: "Draft\00003a\000020not\000020ready\000020for\000020inspection"`)
	require.NotContains(t, source, "@import")
}

func TestSameBytes(t *testing.T) {
	b := dossiertest.Monster(t, 30)
	require.Equal(t, draw(t, dossiertest.Document(t, b)), draw(t, dossiertest.Document(t, b)))
}

// TestContrast: text against its ground reaches 4.5 to 1 in both schemes, the
// contrast that WCAG 2.2 asks for in success criterion 1.4.3, by its formula of
// relative luminance.
func TestContrast(t *testing.T) {
	css, err := os.ReadFile("style.css")
	require.NoError(t, err)
	colour := regexp.MustCompile(`--(\w+): (#[0-9a-f]{6})`)
	schemes := strings.SplitN(string(css), "prefers-color-scheme: dark", 2)
	for _, scheme := range schemes {
		block, _, _ := strings.Cut(scheme, "}")
		c := map[string]string{}
		for _, m := range colour.FindAllStringSubmatch(block, -1) {
			c[m[1]] = m[2]
		}
		for _, ink := range []string{"ink", "soft", "way"} {
			for _, ground := range []string{"paper", "tint"} {
				a, b := luminance(t, c[ink]), luminance(t, c[ground])
				require.GreaterOrEqual(t, (max(a, b)+0.05)/(min(a, b)+0.05), 4.5, "%s on %s", ink, ground)
			}
		}
	}
}

func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	require.Len(t, hex, 7)
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		n, err := strconv.ParseUint(hex[1+2*i:3+2*i], 16, 8)
		require.NoError(t, err)
		x := float64(n) / 255
		if x <= 0.04045 {
			x /= 12.92
		} else {
			x = math.Pow((x+0.055)/1.055, 2.4)
		}
		sum += weight * x
	}
	return sum
}

// TestAccessible: axe-core finds nothing in a browser. It runs in the page
// itself, which is let run a script for once; the page of the monster is as
// large as any.
func TestAccessible(t *testing.T) {
	browser, axe := dossiertest.Tool(t, "chromium"), dossiertest.Axe(t)
	source := draw(t, dossiertest.Document(t, dossiertest.Build(t, dossiertest.Examples(t)[0])))
	policy := regexp.MustCompile(`<meta http-equiv="Content-Security-Policy"[^>]*>`)
	require.Regexp(t, policy, source)
	source = policy.ReplaceAllString(source, "")
	const report = `axe.run(document, {resultTypes: ["violations"]}).then(r => {
		document.body.textContent = "axe:" + JSON.stringify(r.violations.map(v => v.id + ": " + v.nodes[0].html)) + ":" + r.passes.length + ":axe"
	})`
	end := strings.LastIndex(source, "</body>")
	source = source[:end] + "<script>" + axe + "</script><script>" + report + "</script>" + source[end:]
	dir := t.TempDir()
	file := filepath.Join(dir, "page.html")
	require.NoError(t, os.WriteFile(file, []byte(source), 0o644))
	cmd := exec.CommandContext(t.Context(), browser, "--headless=new", "--no-sandbox", "--disable-gpu", "--user-data-dir="+dir,
		"--window-size=390,900", "--virtual-time-budget=60000", "--dump-dom", "file://"+file)
	out, err := cmd.Output()
	require.NoError(t, err)
	said := regexp.MustCompile(`axe:(.*):(\d+):axe`).FindStringSubmatch(html.UnescapeString(string(out)))
	require.NotNil(t, said, "axe did not report")
	var violations []string
	require.NoError(t, json.Unmarshal([]byte(said[1]), &violations))
	require.Empty(t, violations)
	passes, err := strconv.Atoi(said[2])
	require.NoError(t, err)
	require.Greater(t, passes, 20, fmt.Sprint("axe looked at too little: ", passes))
}
