package dossier_test

import (
	"bytes"
	"encoding/json"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/dossier"
	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/report/figuresheet"
	"trialfit/internal/verdict"
)

// section is the one with that id.
func section(t *testing.T, d *dossier.Document, id string) dossier.Section {
	t.Helper()
	for _, s := range d.Sections {
		if s.ID == id {
			return s
		}
	}
	t.Fatalf("no section %s", id)
	return dossier.Section{}
}

// rows lists the rows of the tables of a section, each cell as its lines.
func rows(s dossier.Section) [][][]string {
	var all [][][]string
	for _, b := range s.Blocks {
		t, ok := b.(dossier.Table)
		if !ok {
			continue
		}
		for _, r := range t.Rows {
			var row [][]string
			for _, c := range r.Cells {
				var lines []string
				for _, line := range c {
					lines = append(lines, line.String())
				}
				row = append(row, lines)
			}
			all = append(all, row)
		}
	}
	return all
}

// sheet is the part of the calculation sheet for programs that is compared.
type sheet struct {
	Builds []struct {
		Figures []struct {
			ID, Subject, Unit string
			State             string
			SI                struct{ Low, High json.Number } `json:"si"`
			Limits            []struct {
				Rule, Level, Outcome string
				Due                  bool
				Margin               *struct{ Text string }
			}
		}
	}
}

// TestFiguresByID: every figure that a due must or a rule of the region holds
// against a limit stands in the dossier under its id, with the value of the
// calculation sheet for programs, its margin and its outcome; nothing else does.
func TestFiguresByID(t *testing.T) {
	for _, file := range dossiertest.Examples(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			b := dossiertest.Build(t, file)
			var out bytes.Buffer
			require.NoError(t, figuresheet.JSON(&out, []figuresheet.Sheet{{Build: b}}))
			var s sheet
			require.NoError(t, json.Unmarshal(out.Bytes(), &s))
			shown := rows(section(t, dossiertest.Document(t, b), "figures"))
			next := 0
			results := map[string]figures.Result{}
			for _, c := range b.Report.Computed {
				for _, r := range c.Results {
					results[r.Figure.ID+" "+r.Subject] = r
				}
			}
			for _, f := range s.Builds[0].Figures {
				for _, l := range f.Limits {
					region := strings.Contains(l.Rule, "/") && dossiertest.Checker(t).Book.Rules[l.Rule].Region != ""
					if f.State != "computed" || l.Outcome == verdict.NotApplicable || !region && (!l.Due || l.Level != "must") {
						continue
					}
					row := shown[next]
					next++
					require.Equal(t, f.ID, row[0][len(row[0])-1])
					r := results[f.ID+" "+f.Subject]
					require.Equal(t, quantity.Canonical(r.Low), string(f.SI.Low), f.ID)
					require.Equal(t, quantity.Canonical(r.High), string(f.SI.High), f.ID)
					want := quantity.Print(r.Low, r.High, r.Figure.Kind, f.Unit)
					require.Equal(t, want, strings.SplitN(row[1][0], " (", 2)[0], f.ID)
					if l.Margin != nil {
						require.Equal(t, l.Margin.Text, withoutBrackets(row[3][0]), f.ID)
					}
					require.Equal(t, l.Outcome, row[4][0], f.ID)
				}
			}
			for _, row := range shown[next:] {
				require.Len(t, row, 3, "a value that the sheet does not hold: %v", row)
			}
		})
	}
}

// withoutBrackets takes out the value in other units.
func withoutBrackets(s string) string {
	before, rest, found := strings.Cut(s, " (")
	if !found {
		return s
	}
	_, after, _ := strings.Cut(rest, ")")
	return before + after
}

// TestNothingHidden: whatever is not met, unproven or waived stands in the
// dossier under its rule, with what was found, and in the owner's book.
func TestNothingHidden(t *testing.T) {
	for _, file := range dossiertest.Examples(t) {
		b := dossiertest.Build(t, file)
		found := rows(section(t, dossiertest.Document(t, b), "open"))
		owner := strings.Join(dossiertest.Texts(dossiertest.Book(t, b)), "\n")
		open := b.Pick(func(i verdict.Item) bool {
			return i.Level != "note" && (report.Open(i) || i.Finding.Outcome == verdict.Waived)
		})
		require.Len(t, found, len(open), file)
		for _, i := range open {
			require.True(t, anyRow(found, i), "%s on %s is not told", i.Rule.ID, i.Finding.Subject)
			require.Contains(t, owner, i.Finding.Outcome+": "+i.Rule.Title)
		}
	}
}

func anyRow(rows [][][]string, i verdict.Item) bool {
	for _, row := range rows {
		last := row[0][len(row[0])-1]
		if strings.HasSuffix(last, "· "+i.Rule.ID) && row[1][0] == i.Finding.Outcome {
			return true
		}
	}
	return false
}

// TestRegionWhole: each rule of the region that was judged is among what
// applies, what does not, or the questions.
func TestRegionWhole(t *testing.T) {
	for _, file := range dossiertest.Examples(t) {
		b := dossiertest.Build(t, file)
		d := dossiertest.Document(t, b)
		told := strings.Join(dossiertest.Texts(&dossier.Document{Sections: []dossier.Section{section(t, d, "region"), section(t, d, "questions")}}), "\n") + "\n"
		for id := range b.Report.Verdict.Rules {
			if rule := dossiertest.Checker(t).Book.Rules[id]; rule.Region != "" && rule.Collects == "" {
				require.Contains(t, told, id+"\n")
			}
		}
	}
}

// TestEveryPaper: each paper is listed with its SHA-256, and every link to one
// leads to it.
func TestEveryPaper(t *testing.T) {
	b := dossiertest.Monster(t, 300)
	d := dossiertest.Document(t, b)
	papers := rows(section(t, d, "evidence"))
	require.Len(t, papers, 300)
	for n, item := range b.Report.Manifest.Node("evidence").Items {
		require.Equal(t, "E"+strconv.Itoa(n+1), papers[n][0][0])
		require.Equal(t, b.Report.Evidence[item.ID].Digest, papers[n][4][1])
	}
	require.Contains(t, strings.Join(dossiertest.Texts(dossiertest.Document(t, dossiertest.Monster(t, 0))), "\n"), "No evidence is on file.")
}

// TestDraft: a document is a draft until its hold point is passed.
func TestDraft(t *testing.T) {
	b := dossiertest.Build(t, dossiertest.Examples(t)[0])
	for _, c := range []struct{ verdict, hold, inspector, owner string }{
		{verdict.Fail, "inspection", "Draft: not ready for inspection", "Draft: not ready for handover"},
		{verdict.Pass, "install", "Draft: judged at install, not at inspection", "Draft: judged at install, not at handover"},
		{verdict.Pass, "inspection", "", "Draft: judged at inspection, not at handover"},
		{verdict.Pass, "handover", "", ""},
	} {
		v := *b.Report.Verdict
		v.Verdict, v.Hold = c.verdict, c.hold
		r := *b.Report
		r.Verdict = &v
		judged := report.Build{Report: &r, Items: b.Items}
		require.Equal(t, c.inspector, dossiertest.Document(t, judged).Draft)
		require.Equal(t, c.owner, dossiertest.Book(t, judged).Draft)
	}
}

// TestRegionsPaper: paper and units are those that inspectors there use.
func TestRegionsPaper(t *testing.T) {
	require.Equal(t, "letter", dossiertest.Document(t, dossiertest.Build(t, filepath.Join(dossiertest.Root(), "examples/patrol-truck/patrol-truck.build.yaml"))).Paper)
	d := dossiertest.Document(t, dossiertest.Monster(t, 0))
	require.Equal(t, "a4", d.Paper)
	require.Contains(t, strings.Join(dossiertest.Texts(d), "\n"), "300..330 kg (661.4..727.5 lb), measured")
}
