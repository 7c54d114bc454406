package markdown

import (
	"encoding/xml"
	"html"
	"io"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/report"
	"trialfit/internal/report/reporttest"
	"trialfit/internal/report/wording"
)

func written(t *testing.T, r reporttest.Run, size int) string {
	t.Helper()
	return string(r.Write(t, sized(size)))
}

func TestGolden(t *testing.T) {
	reporttest.Golden(t, "example.md", []byte(written(t, reporttest.Example(t), most)))
	reporttest.Golden(t, "sample.md", []byte(written(t, reporttest.Sample(t), most)))
}

// rendered is what the reader of a summary sees, as HTML: cmark-gfm is the
// reference implementation of GitHub-flavoured Markdown.
func rendered(t *testing.T, text string) string {
	t.Helper()
	program, err := exec.LookPath("cmark-gfm")
	if err != nil {
		require.Empty(t, os.Getenv("CI"), "cmark-gfm is not installed (Debian package cmark-gfm)")
		t.Skip("cmark-gfm is not installed (Debian package cmark-gfm)")
	}
	cmd := exec.Command(program, "--unsafe", "-e", "table", "-e", "autolink", "-e", "strikethrough", "-e", "tagfilter")
	cmd.Stdin = strings.NewReader(text)
	out, err := cmd.Output()
	require.NoError(t, err)
	return string(out)
}

// elements counts the elements of a rendered summary.
func elements(t *testing.T, page string) map[string]int {
	t.Helper()
	count := map[string]int{}
	dec := xml.NewDecoder(strings.NewReader(page))
	dec.AutoClose, dec.Strict, dec.Entity = xml.HTMLAutoClose, false, xml.HTMLEntity
	for {
		token, err := dec.Token()
		if err == io.EOF {
			return count
		}
		require.NoError(t, err)
		if start, ok := token.(xml.StartElement); ok {
			count[start.Name.Local]++
		}
	}
}

var tag = regexp.MustCompile(`<[^>]*>`)

// shown is the text of a page, as a reader sees it.
func shown(page string) string {
	return strings.ReplaceAll(html.UnescapeString(tag.ReplaceAllString(page, "")), joiner, "")
}

func TestHostileText(t *testing.T) {
	page := rendered(t, written(t, reporttest.Sample(t), most))
	count := elements(t, page)
	for _, never := range []string{"a", "b", "i", "code", "del", "img", "pre", "h1"} {
		require.Zero(t, count[never], never)
	}
	require.Equal(t, 1, count["em"], "the deferral, and nothing else")
	// Overview 3 builds, 2 problems; 1 + 1 + 1 + 1 + 1 rows of the first build
	// (in the way, unproven, waived, advice, idle waiver), 1 + 1 of the second;
	// and a head for each of the 9 tables.
	require.Equal(t, 9, count["table"])
	require.Equal(t, 3+2+5+2+9, count["tr"])
	require.Equal(t, 3*2+2+4*5+1+5+1, count["td"], "no text makes a cell")
	require.Contains(t, shown(page), "5/8 in, 50% off: a|b, <b>x</b> & `rm` *y* @all #1 [z](http://example.com) www.example.com ]]> {0} $1 $2 ~~c~~")
}

// TestEscape: what stands in the summary reads as it was written, and is
// nothing but text.
func TestEscape(t *testing.T) {
	for _, s := range []string{
		"1/2 NPT × 3/8 (±5 %), 1-1/2 in", `C:\shop\a_b_c`, "| a | b |", "# head", "@all and me@example.com",
		"https://example.com", "www.example.com", "<script>alert(1)</script>", "&amp; &#36;", "![x](y) [x]: y", "``x``", "**x** __x__ ~~x~~",
	} {
		page := rendered(t, "x "+Escape(s)+"\n")
		require.Equal(t, "x "+s+"\n", shown(page))
		for name := range elements(t, page) {
			require.Equal(t, "p", name, s)
		}
	}
	require.NotContains(t, Escape("@all"), "@all")
	require.NotContains(t, Escape("see #12"), "#12")
	require.Equal(t, "<span>$</span>5", Escape("$5"))
	require.Equal(t, "a b\uFFFD", Escape("a\nb\x1b"))
}

// TestSize: at every size the summary keeps within it, is cut at a whole row,
// closes what it opened, and still tells the deferral.
func TestSize(t *testing.T) {
	r := reporttest.Sample(t)
	one := r.Builds[0].Items
	for range 20 {
		r.Builds[0].Items = append(r.Builds[0].Items, one...)
	}
	whole := written(t, r, most)
	require.NotContains(t, whole, "Cut here")
	rows := func(s string) int { return strings.Count(s, "\n| ") }
	more := regexp.MustCompile(`\*\*Cut here: (\d+) more rows\.\*\*`)
	last := 0
	for size := 1000; size < len(whole); size += 997 {
		out := written(t, r, size)
		require.LessOrEqual(t, len(out), size)
		require.Regexp(t, more, out)
		require.Contains(t, out, Escape(wording.Deferral))
		require.Equal(t, strings.Count(out, "<details>"), strings.Count(out, "</details>"))
		if strings.Contains(out, "What stands in the way") {
			require.Contains(t, out, "Take care")
		}
		for line := range strings.Lines(out) {
			if strings.HasPrefix(line, "| ") {
				require.True(t, strings.HasSuffix(line, " |\n"), line)
			}
		}
		require.GreaterOrEqual(t, rows(out), last)
		last = rows(out)
	}
}

// TestKeepsWhatFills: to keep no more than what fills a summary makes the same
// summary as to keep everything, wherever it is cut.
func TestKeepsWhatFills(t *testing.T) {
	r := reporttest.Sample(t)
	for range 3 {
		r.Builds = append(r.Builds, r.Builds...)
	}
	whole := written(t, r, most)
	largest := about(r.Builds[0]).size()
	for size := 700; size < len(whole)+1000; size += 97 {
		few, all := sized(size), sized(1<<40)
		got := string(r.Write(t, few))
		s := report.Summary{Unread: r.Unread}
		for _, b := range r.Builds {
			s.Count(b)
			require.NoError(t, all.Add(b))
		}
		all.size = size
		var want strings.Builder
		require.NoError(t, all.End(&want, s))
		require.Equal(t, want.String(), got, size)
		require.LessOrEqual(t, few.told, size+largest)
	}
}

// TestUnderAMebibyte: sites refuse more than that as a whole.
func TestUnderAMebibyte(t *testing.T) {
	r := reporttest.Sample(t)
	first := r.Builds[0]
	for range 3000 {
		r.Builds = append(r.Builds, first)
	}
	out := written(t, r, most)
	require.Less(t, len(out), 1<<20)
	require.Contains(t, out, "Cut here")
}

func TestHoldsNone(t *testing.T) { reporttest.HoldsNone(t, New()) }
