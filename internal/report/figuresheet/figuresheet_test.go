package figuresheet_test

import (
	"bytes"
	"context"
	"encoding/csv"
	"encoding/json"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/figures/sheet"
	"trialfit/internal/report"
	"trialfit/internal/report/figuresheet"
	"trialfit/internal/report/reporttest"
	"trialfit/internal/verdict"
)

var checker = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Today: "2026-11-25"})
})

// read judges a manifest that is given as text.
func read(t *testing.T, text string) report.Build {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	m, err := c.Loader.Read(strings.NewReader(text), "test.build.yaml", ".")
	require.NoError(t, err)
	r, err := c.Check(context.Background(), m)
	require.NoError(t, err)
	return judged(c, r)
}

func judged(c *check.Checker, r *check.Report) report.Build {
	items := verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	return report.Build{Report: r, Items: items}
}

// sample is a sheet of figures that tell everything a sheet can tell: the
// goldens stay as they are when figures are added.
func sample(t *testing.T) figuresheet.Sheet {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	r, err := c.File(context.Background(), "testdata/sheet.build.yaml")
	require.NoError(t, err)
	return figuresheet.Sheet{Build: judged(c, r), Figures: []string{
		"air.cooler_effectiveness", "air.pressure_ratio",
		"electrical.ampacity_use", "electrical.cranking_drop", "electrical.cranking_drop_share",
		"electrical.voltage_drop", "electrical.voltage_drop_share",
		"fittings.diameter_gap", "gearing.top_speed", "hydraulics.slave_travel", "lifting.hook_load",
		"mass.axle_load_front_laden",
	}}
}

func TestText(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, sample(t).Text(&out, 80))
	reporttest.Golden(t, "sheet.txt", out.Bytes())
}

func TestJSON(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, figuresheet.JSON(&out, []figuresheet.Sheet{sample(t)}))
	reporttest.Golden(t, "sheet.json", out.Bytes())
}

func TestCSV(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, sample(t).CSV(&out))
	reporttest.Golden(t, "sheet.csv", out.Bytes())
}

// document is what the tests look at in the JSON form.
type document struct {
	Builds []struct {
		Counts  map[string]int
		Figures []entry
	}
}

type entry struct {
	ID, Subject, State string
	Low, High          json.Number
	SI                 struct{ Low, High json.Number }
	Missing, Outside   []string
	Limits             []struct{ Rule, Outcome string }
	Formula, Numbers   string
	Source             struct{ Title, Basis string }
}

func decode(t *testing.T, s figuresheet.Sheet) document {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, figuresheet.JSON(&out, []figuresheet.Sheet{s}))
	var doc document
	require.NoError(t, json.Unmarshal(out.Bytes(), &doc))
	return doc
}

// TestNothingIsLeftOut: every figure is on the sheet of every build, with a
// value or with what keeps it from having one, in each form.
func TestNothingIsLeftOut(t *testing.T) {
	for _, text := range []string{"trialfit: 1\nbuild: {}\n", "trialfit: 1\nbuild: {}\nelectrical: {circuits: none}\nfittings: none\n"} {
		s := figuresheet.Sheet{Build: read(t, text)}
		build := decode(t, s).Builds[0]
		seen := map[string]bool{}
		total := 0
		for _, e := range build.Figures {
			seen[e.ID] = true
			require.NotEmpty(t, e.Subject, e.ID)
			require.NotEmpty(t, e.Source.Title, e.ID)
			if e.State == "missing" {
				require.NotEmpty(t, e.Missing, e.ID)
			}
		}
		for _, n := range build.Counts {
			total += n
		}
		require.Equal(t, len(build.Figures), total)
		var page bytes.Buffer
		require.NoError(t, s.Text(&page, 80))
		for _, f := range sheet.All() {
			require.True(t, seen[f.ID], f.ID)
			require.Contains(t, page.String(), "("+f.ID+")")
		}
		require.Len(t, rows(t, s), 1+len(build.Figures))
	}
}

func rows(t *testing.T, s figuresheet.Sheet) [][]string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, s.CSV(&out))
	for _, line := range strings.SplitAfter(strings.TrimSuffix(out.String(), "\r\n"), "\n") {
		require.True(t, strings.HasSuffix(line, "\r\n") || !strings.HasSuffix(line, "\n"), "RFC 4180 ends rows with CRLF: %q", line)
	}
	table, err := csv.NewReader(&out).ReadAll()
	require.NoError(t, err)
	return table
}

// TestFormsAgree: the table and the JSON form carry the same numbers.
func TestFormsAgree(t *testing.T) {
	s := sample(t)
	table := rows(t, s)
	list := decode(t, s).Builds[0].Figures
	require.Len(t, table, 1+len(list))
	for i, e := range list {
		row := table[i+1]
		require.Equal(t, []string{e.ID, e.Subject}, []string{row[0], row[2]})
		require.Equal(t, []string{string(e.Low), string(e.High), string(e.SI.Low), string(e.SI.High)},
			[]string{row[3], row[4], row[6], row[7]}, e.ID)
	}
}

// TestLimitsAreTheRulesOwn: each finding on a figure that the rules gave stands
// beside it, with the outcome of the verdict.
func TestLimitsAreTheRulesOwn(t *testing.T) {
	b := sample(t).Build
	want := map[string]int{}
	for _, i := range b.Items {
		if strings.HasPrefix(i.Finding.Path, "figures.") {
			want[i.Rule.ID+" "+i.Finding.Outcome]++
		}
	}
	got := map[string]int{}
	for _, e := range decode(t, figuresheet.Sheet{Build: b}).Builds[0].Figures {
		for _, l := range e.Limits {
			got[l.Rule+" "+l.Outcome]++
		}
	}
	require.NotEmpty(t, want)
	require.Equal(t, want, got)
}

// TestTextOfTheManifestIsHarmless: what a builder wrote can neither run in a
// spreadsheet nor turn a line of the page round.
func TestTextOfTheManifestIsHarmless(t *testing.T) {
	s := figuresheet.Sheet{Build: read(t, "trialfit: 1\nbuild: {}\nmasses: {added: [{id: a, mass: \"12 kg\", x: \"-24 in\"}]}\n")}
	s.Build.Report.Manifest.File = "=1+1|\u202e.build.yaml"
	var page bytes.Buffer
	require.NoError(t, s.Text(&page, 80))
	require.NotContains(t, page.String(), "\u202e")
	for _, row := range rows(t, s)[1:] {
		for i, cell := range row {
			plain := strings.Trim(cell, "+-.0123456789") == ""
			require.False(t, !plain && strings.ContainsAny(cell[:1], "=+-@\t\r"), "column %d: %q", i, cell)
		}
	}
}

func TestSelect(t *testing.T) {
	all := sheet.All()
	ids, err := figuresheet.Select(all, []string{"mass.total"})
	require.NoError(t, err)
	require.Equal(t, []string{"mass.total"}, ids)
	ids, err = figuresheet.Select(all, []string{"lifting"})
	require.NoError(t, err)
	require.Contains(t, ids, "lifting.hook_load")
	require.NotContains(t, ids, "mass.total")
	_, err = figuresheet.Select(all, []string{"lifting.hook_lode"})
	require.ErrorContains(t, err, `"lifting.hook_lode" is neither a figure nor a discipline: nearest are lifting.hook_load, `)
	_, err = figuresheet.Select(all, []string{"axle_load_front"})
	require.ErrorContains(t, err, "nearest are mass.axle_load_front, ")
}
