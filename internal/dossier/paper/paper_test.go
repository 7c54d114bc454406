package paper_test

import (
	"bytes"
	"encoding/xml"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/dossier"
	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/dossier/paper"
)

func draw(t *testing.T, d *dossier.Document) []byte {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, paper.Write(&out, d))
	return out.Bytes()
}

func file(t *testing.T, pdf []byte) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "dossier.pdf")
	require.NoError(t, os.WriteFile(name, pdf, 0o644))
	return name
}

// run gives what a program of poppler-utils prints.
func run(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.CommandContext(t.Context(), dossiertest.Tool(t, name), args...).CombinedOutput()
	require.NoError(t, err, string(out))
	return string(out)
}

// solid leaves out blanks, and what stands for characters that are not shown.
func solid(s string) string {
	var b strings.Builder
	for _, r := range s {
		if r == '\uFFFD' || r > 0x2FFF || r >= 0x590 && r < 0x600 {
			continue
		}
		if !strings.ContainsRune(" \n\t\f\r", r) {
			b.WriteRune(r)
		}
	}
	return b.String()
}

// drawn is a document with its PDF.
type drawn struct {
	*dossier.Document
	pdf []byte
}

var all map[string]drawn

const monster = "monster"

// documents are drawn once for all tests.
func documents(t *testing.T) map[string]drawn {
	t.Helper()
	if all != nil {
		return all
	}
	all = map[string]drawn{}
	add := func(name string, d *dossier.Document) { all[name] = drawn{d, draw(t, d)} }
	add(monster, dossiertest.Document(t, dossiertest.Monster(t, 300)))
	for _, file := range dossiertest.Examples(t) {
		b := dossiertest.Build(t, file)
		add(filepath.Base(file), dossiertest.Document(t, b))
		add(filepath.Base(file)+" for the owner", dossiertest.Book(t, b))
	}
	return all
}

// TestSaysEverything: every text of a document can be selected in its PDF, in
// order.
func TestSaysEverything(t *testing.T) {
	for name, d := range documents(t) {
		if name == monster {
			continue // its rows go over pages
		}
		rest := solid(run(t, "pdftotext", "-raw", "-enc", "UTF-8", file(t, d.pdf), "-"))
		for _, text := range dossiertest.Texts(d.Document) {
			_, after, found := strings.Cut(rest, solid(text))
			require.True(t, found, "%s: %q is not there, or not in its place", name, text)
			rest = after
		}
	}
}

// box is a word where it stands, in points from the top left corner.
type box struct {
	Left   float64 `xml:"xMin,attr"`
	Top    float64 `xml:"yMin,attr"`
	Right  float64 `xml:"xMax,attr"`
	Bottom float64 `xml:"yMax,attr"`
	Text   string  `xml:",chardata"`
}

type bboxes struct {
	Pages []struct {
		Width  float64 `xml:"width,attr"`
		Height float64 `xml:"height,attr"`
		Words  []box   `xml:"word"`
	} `xml:"body>doc>page"`
}

// TestNothingClippedOrOverlapping: every word lies inside the margins of its
// page, and none on another.
func TestNothingClippedOrOverlapping(t *testing.T) {
	const side, little = 16 * 72 / 25.4, 1.5
	for name, d := range documents(t) {
		var read bboxes
		out := run(t, "pdftotext", "-bbox", file(t, d.pdf), "-")
		dec := xml.NewDecoder(strings.NewReader(clean(out)))
		dec.Strict = false
		require.NoError(t, dec.Decode(&read))
		require.NotEmpty(t, read.Pages)
		for n, p := range read.Pages {
			words := slices.Clone(p.Words)
			slices.SortFunc(words, func(a, b box) int { return int(a.Top*8) - int(b.Top*8) })
			for i, w := range words {
				require.True(t, w.Left >= side-little && w.Right <= p.Width-side+little && w.Top > 20 && w.Bottom < p.Height-20,
					"%s page %d: %q is outside the margins: %v", name, n+1, w.Text, w)
				for _, other := range words[i+1:] {
					if other.Top > w.Bottom {
						break
					}
					across := min(w.Right, other.Right) - max(w.Left, other.Left)
					down := min(w.Bottom, other.Bottom) - max(w.Top, other.Top)
					require.False(t, across > little && down > (w.Bottom-w.Top)*0.45,
						"%s page %d: %q lies on %q", name, n+1, w.Text, other.Text)
				}
			}
		}
	}
}

// clean takes out what no XML may hold, which pdftotext passes on.
func clean(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' || r == 0xFFFE || r == 0xFFFF {
			return -1
		}
		return r
	}, s)
}

// TestEveryPage: which page it is, of how many, the build, the hold point, the
// digest and the mark of a draft.
func TestEveryPage(t *testing.T) {
	d := documents(t)[monster]
	require.NotEmpty(t, d.Draft)
	pages := strings.Split(strings.TrimSuffix(run(t, "pdftotext", "-layout", file(t, d.pdf), "-"), "\f"), "\f")
	require.Greater(t, len(pages), 5)
	last := regexp.MustCompile(`(\d+) of (\d+)\s*$`)
	for n, p := range pages {
		for _, text := range []string{d.Build, d.Draft, d.Hold, d.Digest} {
			require.Contains(t, p, text, "page %d", n+1)
		}
		require.Equal(t, []int{n + 1, len(pages)}, numbers(t, last.FindStringSubmatch(p)), "page %d", n+1)
	}
}

func numbers(t *testing.T, match []string) []int {
	t.Helper()
	require.Len(t, match, 3)
	var list []int
	for _, m := range match[1:] {
		n := 0
		for _, r := range m {
			n = 10*n + int(r-'0')
		}
		list = append(list, n)
	}
	return list
}

// TestInside: title, date, paper, the record and the report attached, fonts
// embedded and subset.
func TestInside(t *testing.T) {
	d := documents(t)["patrol-truck.build.yaml"]
	name := file(t, d.pdf)
	info := run(t, "pdfinfo", name)
	require.Contains(t, info, "612 x 792 pts (letter)")
	require.Contains(t, info, d.Title+": "+d.Build)
	attached := run(t, "pdfdetach", "-list", name)
	require.Contains(t, attached, "2 embedded files")
	for i, f := range d.Files {
		require.Contains(t, attached, f.Name)
		out := filepath.Join(t.TempDir(), "file")
		run(t, "pdfdetach", "-save", string(rune('1'+i)), "-o", out, name)
		data, err := os.ReadFile(out)
		require.NoError(t, err)
		require.Equal(t, f.Data, data)
	}
	for _, line := range strings.Split(strings.TrimSpace(run(t, "pdffonts", name)), "\n")[2:] {
		require.Regexp(t, `Identity-H\s+yes \w+\s+yes`, line, "embedded, with Unicode")
	}
}

// TestSameBytes: the same build gives the same file, also where it is drawn
// anew from the evidence.
func TestSameBytes(t *testing.T) {
	b := dossiertest.Monster(t, 30)
	first := draw(t, dossiertest.Document(t, b))
	for range 4 {
		require.True(t, bytes.Equal(first, draw(t, dossiertest.Document(t, b))))
	}
}

// TestHeadsRepeat: a table that goes on has its head on the next page too.
func TestHeadsRepeat(t *testing.T) {
	text := run(t, "pdftotext", "-layout", file(t, documents(t)[monster].pdf), "-")
	require.Greater(t, strings.Count(text, "File and SHA-256"), 10)
	require.Contains(t, text, "Characters not shown")
}
