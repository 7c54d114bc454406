package choice

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/dossier/dossiertest"
)

// questions is a page with so many questions to sellers and to authorities,
// each of about so many words.
func questions(asks, offices, words int) *page {
	text := func(n int) string {
		var b strings.Builder
		for i := range words {
			b.WriteString([]string{"weigh", "the", "front", "axle", "with", "both", "wheels", "on", "scales"}[(i+n)%9] + " ")
		}
		return strings.TrimSpace(b.String()) + "?"
	}
	v := &page{Name: "Long list (invented)", File: "shortlists/long.shortlist.yaml", Currency: "USD", Bars: &barScale{}}
	for i := range asks {
		v.Asks = append(v.Asks, ask{Text: text(i), Tool: "scales", Settles: "whether " + text(i+3), Share: "open until it is known",
			If: []string{"at most 700 kg: it may work", "at least 800 kg: it can't work", "in between: nobody knows"}})
	}
	for i := range offices {
		v.Offices = append(v.Offices, office{Ask: text(i), Office: "office of the port (invented)", Concerns: []string{"a+b", "a+c", "b+b", "b+c"}})
	}
	return v
}

// printed lays the sheet out on paper and counts the pages, without the rest of
// the answer.
func printed(t *testing.T, v *page, paper, typeface string) string {
	browser, info := dossiertest.Tool(t, "chromium"), dossiertest.Tool(t, "pdfinfo")
	var b bytes.Buffer
	require.NoError(t, writePage(&b, v))
	style := fmt.Sprintf(`<style>header, footer, main > section:not(.sheet) { display: none } @media print { @page { size: %s } %s }</style></head>`, paper, typeface)
	dir := t.TempDir()
	file := filepath.Join(dir, "sheet.html")
	require.NoError(t, os.WriteFile(file, []byte(strings.Replace(b.String(), "</head>", style, 1)), 0o600))
	pdf := filepath.Join(dir, "sheet.pdf")
	require.NoError(t, exec.CommandContext(t.Context(), browser, "--headless=new", "--no-sandbox", "--disable-gpu", "--user-data-dir="+dir,
		"--no-pdf-header-footer", "--print-to-pdf="+pdf, "file://"+file).Run())
	out, err := exec.CommandContext(t.Context(), info, pdf).Output()
	require.NoError(t, err)
	for line := range strings.Lines(string(out)) {
		if pages, is := strings.CutPrefix(line, "Pages:"); is {
			return strings.TrimSpace(pages)
		}
	}
	return ""
}

// TestOneSheet: the questions print on one page, on A4 and on Letter, in the
// typeface that is asked for and in a wider one.
func TestOneSheet(t *testing.T) {
	const wide = `.sheet { font-family: "DejaVu Serif" !important } `
	for _, c := range []struct {
		asks, offices, words int
	}{{3, 2, 12}, {12, 30, 3}, {12, 30, 20}, {12, 3, 60}, {12, 0, 40}} {
		for paper, typeface := range map[string]string{"A4": "", "Letter": wide} {
			require.Equal(t, "1", printed(t, questions(c.asks, c.offices, c.words), paper, typeface), "%v on %s", c, paper)
		}
	}
	full := questions(12, 30, 20)
	for i := range full.Asks {
		full.Asks[i].Text += strings.Repeat(" more", 40)
	}
	require.Equal(t, "1", printed(t, full, "Letter", ""))
}

// TestSheetCounts: what does not fit is counted; questions to the authority get
// their room, and what they leave goes to the sellers again.
func TestSheetCounts(t *testing.T) {
	count := func(s sheet, room string) (n int) {
		for _, e := range s.Entries {
			if e.Printed && strings.HasPrefix(e.Room, room) {
				n++
			}
		}
		return n
	}
	short := sheetOf(questions(3, 2, 12), "")
	require.Zero(t, short.Beyond)
	require.Equal(t, 5, count(short, "answer"))

	long := sheetOf(questions(12, 30, 20), "")
	authority := count(long, "answer, office")
	require.NotZero(t, authority)
	require.NotZero(t, count(long, "answer")-authority)
	require.Equal(t, 42-count(long, "answer"), long.Beyond)
	var b bytes.Buffer
	require.NoError(t, writePage(&b, questions(12, 30, 20)))
	require.Contains(t, b.String(), fmt.Sprintf("not on this sheet, but on the screen: %d more", long.Beyond))
	require.Equal(t, 42, strings.Count(b.String(), `<div class="room">`), "the screen shows all")

	few, none := sheetOf(questions(12, 1, 20), ""), sheetOf(questions(12, 0, 20), "")
	require.Equal(t, 1, count(few, "answer, office"))
	require.InDelta(t, count(none, "answer"), count(few, "answer"), 1)
}

// TestOpen: regions of which the same is said are told together.
func TestOpen(t *testing.T) {
	r := row{Regions: []verdic{{Region: "IE", Words: "nothing"}, {Region: "GB", Words: "1 must"}, {Region: "NL", Words: "nothing"}}, Wishes: []string{"it may be slow"}}
	require.Equal(t, []string{"IE, NL: nothing", "GB: 1 must", "it may be slow"}, r.Open())
}

func TestLineOf(t *testing.T) {
	require.Equal(t, "line 28", lineOf("a.shortlist.yaml", "a.shortlist.yaml:28:31"))
	require.Empty(t, lineOf("a.shortlist.yaml", "a.shortlist.yaml"))
}
