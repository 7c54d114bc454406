package check

import (
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/verdict"
)

// TestBuilds judges twelve whole, invented builds that stand before "plan" at
// home, where the offices have answered, and next door, where the first thing
// in the way is what a local would name. An empty obstacle is a pass.
func TestBuilds(t *testing.T) {
	c, err := New(Options{Today: "2026-11-25"})
	require.NoError(t, err)
	files, err := filepath.Glob("testdata/builds/*.build.yaml")
	require.NoError(t, err)
	builds := map[string]map[string]string{
		// A van and a wagon in Europe: next door wants its own papers.
		"harbour-van": {"GB": "", "IE": "ie/conversion"},
		"ridge-wagon": {"DE": "", "NL": "nl/individual_approval"},
		"polder-van":  {"NL": "", "DE": "de/operating_permit"},
		// Victoria leaves the brakes to its signatory; Western Australia has
		// them in its regulation. South Australia wants to be asked first.
		"coast-sedan":   {"AU-VIC": "", "AU-WA": "au-wa/brake_options"},
		"paddock-truck": {"AU-QLD": "", "AU-NSW": "au-nsw/certifier_consulted"},
		"tussock-wagon": {"NZ": "", "AU-SA": "au-sa/statement_of_requirements"},
		"karoo-pickup":  {"ZA": ""},
		// An engine certified federally only, in a chassis certified for California.
		"desert-wagon": {"US-NV": "", "US-CA": "us-ca/certified_for"},
		"mesa-pickup":  {"US-UT": "", "US-AZ": ""},
		"pine-pickup":  {"US-WA": "", "US-OR": ""},
		"lake-truck":   {"CA-ON": "", "CA-QC": "ca-qc/alteration"},
		"inlet-truck":  {"CA-BC": "", "US-WA": "us-wa/elements_of_design"},
	}
	require.Len(t, files, len(builds))
	for name, want := range builds {
		t.Run(name, func(t *testing.T) {
			m, err := c.Loader.File(filepath.Join("testdata/builds", name+".build.yaml"))
			require.NoError(t, err)
			for region, obstacle := range want {
				abroad := *c
				abroad.Options.Region = region
				r, err := abroad.Check(t.Context(), m)
				require.NoError(t, err)
				require.Equal(t, "plan", r.Verdict.Hold)
				if obstacle == "" {
					require.Equal(t, verdict.Pass, r.Verdict.Verdict, "%s: %v", region, r.Verdict.Blocking)
					continue
				}
				require.Equal(t, verdict.Fail, r.Verdict.Verdict, region)
				require.True(t, inTheWay(r.Verdict, obstacle), "%s: %v", region, r.Verdict.Blocking)
			}
		})
	}
}

// inTheWay says whether a rule blocks, itself or as a question that a rule
// which blocks has collected.
func inTheWay(v *verdict.Verdict, id string) bool {
	return slices.ContainsFunc(v.Blocking, func(rule string) bool {
		return rule == id || slices.ContainsFunc(v.Rules[rule].Findings, func(f verdict.Finding) bool {
			return f.Subject == id && f.Outcome == verdict.Unproven
		})
	})
}
