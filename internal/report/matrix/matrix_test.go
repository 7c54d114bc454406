package matrix_test

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/report/matrix"
	"trialfit/internal/report/reporttest"
	"trialfit/internal/rulebook"
)

func builds(t *testing.T) []matrix.Build {
	t.Helper()
	sample := reporttest.Sample(t).Builds
	for i := range sample {
		r := *sample[i].Report
		r.Chain = []rulebook.Region{{Code: "XZ", Name: "=Invented waters", Pack: true}}
		sample[i].Report = &r
	}
	return []matrix.Build{{Regions: sample[:1]}, {Regions: sample}}
}

// What is in the way everywhere is said once; each region says what is its own.
func TestText(t *testing.T) {
	var out strings.Builder
	require.NoError(t, matrix.Text(&out, builds(t)[1:], 100))
	require.Contains(t, out.String(), "XZ      FAIL")
	require.Contains(t, out.String(), "XZ      PASS with 1 waiver")
	require.NotContains(t, out.String(), "In the way everywhere", "the second passes")
	require.Contains(t, strings.Join(strings.Fields(out.String()), " "), "Not tested is not the same as legal.")
	for line := range strings.Lines(out.String()) {
		require.LessOrEqual(t, len([]rune(strings.TrimSuffix(line, "\n"))), 100)
	}
	out.Reset()
	require.NoError(t, matrix.Text(&out, builds(t)[:1], 100))
	require.Contains(t, out.String(), "In the way everywhere: sample/brake_lines")
	require.Contains(t, out.String(), "only what stands in the way everywhere")
}

func TestForms(t *testing.T) {
	var doc, table, md strings.Builder
	require.NoError(t, matrix.JSON(&doc, builds(t)))
	require.NoError(t, matrix.CSV(&table, builds(t)))
	require.NoError(t, matrix.Markdown(&md, builds(t)))

	var read struct {
		Builds []struct {
			Everywhere []string
			Regions    []struct {
				Verdict        string
				NotMet         int `json:"not_met"`
				Unproven       int
				First_obstacle *struct{ Rule, Outcome string }
			}
		}
		Deferral string
	}
	require.NoError(t, json.Unmarshal([]byte(doc.String()), &read))
	require.Len(t, read.Builds, 2)
	require.Equal(t, "FAIL", read.Builds[1].Regions[0].Verdict)
	require.Equal(t, "PASS", read.Builds[1].Regions[1].Verdict)
	require.Nil(t, read.Builds[1].Regions[1].First_obstacle)
	require.NotEmpty(t, read.Deferral)

	rows, err := csv.NewReader(strings.NewReader(table.String())).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 4)
	require.Equal(t, "'=Invented waters", rows[1][4], "no spreadsheet takes a name for a formula")
	require.Contains(t, md.String(), "| XZ | =Invented waters | FAIL |")
}
