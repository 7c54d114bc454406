package check_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// obstacle is what blocks a build first: a rule, and of its findings the one
// that a local would name. None is a pass.
type obstacle struct{ rule, subject string }

// TestBuilds judges twelve whole, invented builds at "plan", at home and next
// door, where another rule holds or another office is asked.
func TestBuilds(t *testing.T) {
	builds := map[string]map[string]obstacle{
		// Petrol to diesel: in Ireland a conversion to be declared. A question
		// of the test that both countries ask is answered by one of them only.
		"harbour-van": {"GB": {}, "IE": {"ie/questions_answered", "ie/conversion"}},
		// Germany asks about the rise of power, the Netherlands about the
		// change as a whole; each wants to hear it from its own examiner.
		"ridge-wagon": {"DE": {}, "NL": {"nl/questions_answered", "nl/individual_approval"}},
		"polder-van":  {"NL": {}, "DE": {"de/questions_answered", "de/low_emission_zone"}},
		// No larger than an engine sold with these brakes, but stronger:
		// Western Australia looks at displacement only.
		"coast-sedan": {
			"AU-WA": {}, "AU-SA": {"au-sa/questions_answered", "au-sa/statement_of_requirements"},
			"AU-VIC": {"au-vic/questions_answered", "au-vic/signatory_consulted"},
		},
		// An engine of the model, sold with larger brakes: listed in Victoria.
		"gully-sedan": {
			"AU-VIC": {}, "AU-WA": {"au-wa/brake_options", "engine.displacement"},
			"AU-SA": {"au-sa/questions_answered", "au-sa/statement_of_requirements"},
		},
		"paddock-truck": {"AU-QLD": {}, "AU-NSW": {"au-nsw/questions_answered", "au-nsw/certifier_consulted"}},
		"tussock-wagon": {"NZ": {}, "AU-SA": {"au-sa/questions_answered", "au-sa/statement_of_requirements"}},
		// Nothing is asked in South Africa before the engine has its number cleared.
		"karoo-pickup": {"ZA": {}},
		// Older than the truck, and its label does not name California.
		"mesa-pickup": {"US-NV": {}, "US-AZ": {}, "US-CA": {"us-ca/questions_answered", "us-ca/engine_older"}},
		// Oregon registers no heavy diesel before 1997 around Portland.
		"river-truck": {"US-WA": {}, "US-OR": {"us-or/heavy_registration", "engine.model_year"}},
		"lake-truck":  {"CA-ON": {}, "CA-QC": {"ca-qc/questions_answered", "ca-qc/alteration"}},
		// In Canada the province alone looks at a vehicle in use.
		"inlet-truck": {"CA-BC": {}, "US-WA": {"us-wa/questions_answered", "us-wa/elements_of_design"}},
	}
	files, err := filepath.Glob("testdata/builds/*.build.yaml")
	require.NoError(t, err)
	require.Len(t, files, len(builds), "a build here, and in the folder")

	c, err := shared()
	require.NoError(t, err)
	var chains [][]rulebook.Region
	for _, want := range builds {
		for region := range want {
			chain, err := c.Book.Chain(region)
			require.NoError(t, err)
			chains = append(chains, chain)
		}
	}
	require.NoError(t, c.Book.Together(chains...))
	for name, want := range builds {
		t.Run(name, func(t *testing.T) {
			m, err := c.Loader.File(filepath.Join("testdata", "builds", name+".build.yaml"))
			require.NoError(t, err)
			for region, first := range want {
				there := *c
				there.Options = check.Options{Hold: "plan", Region: region, Today: options.Today}
				r, err := there.Check(t.Context(), m)
				require.NoError(t, err)
				requireObstacle(t, first, region, r.Verdict)
			}
		})
	}
}

func requireObstacle(t *testing.T, want obstacle, region string, v *verdict.Verdict) {
	t.Helper()
	require.Equal(t, "plan", v.Hold)
	if want == (obstacle{}) {
		require.Equal(t, verdict.Pass, v.Verdict, "%s: %v", region, v.Blocking)
		return
	}
	require.Equal(t, verdict.Fail, v.Verdict, region)
	require.Equal(t, want.rule, v.Blocking[0], region)
	var open []string
	for _, f := range v.Rules[want.rule].Findings {
		if f.Outcome == verdict.NotMet || f.Outcome == verdict.Unproven {
			open = append(open, f.Subject)
		}
	}
	require.Contains(t, open, want.subject, region)
}

// TestBuildsToTheEnd follows three kinds of builds that are not the usual one
// through every hold point: nothing may stand in their way that has no business
// with them, and of the advice only what a mechanic would give as well.
func TestBuildsToTheEnd(t *testing.T) {
	builds := map[string][]string{
		"harbour-van": nil,
		// Its donor was heard warm only, and no maker prints what its axles take.
		"ridge-wagon": {"feasibility/donor_ran", "torque/axle_ratings"},
		// Nobody lifts the rear of a farm truck to find its centre of gravity.
		"paddock-truck": {"mass/stability"},
	}
	c, err := shared()
	require.NoError(t, err)
	for name, advice := range builds {
		m, err := c.Loader.File(filepath.Join("testdata", "builds", name+".build.yaml"))
		require.NoError(t, err)
		for _, hold := range rulebook.HoldPoints {
			t.Run(name+"/"+hold, func(t *testing.T) {
				there := *c
				there.Options = check.Options{Hold: hold, Today: options.Today}
				r, err := there.Check(t.Context(), m)
				require.NoError(t, err)
				require.Equal(t, verdict.Pass, r.Verdict.Verdict, "%v", r.Verdict.Blocking)
				if hold == "handover" {
					require.ElementsMatch(t, advice, open(r.Verdict))
				} else {
					require.Subset(t, advice, open(r.Verdict))
				}
			})
		}
	}
}

// open lists the rules that are due and not met or unproven.
func open(v *verdict.Verdict) []string {
	var ids []string
	for id, r := range v.Rules {
		if r.Due && (r.Outcome == verdict.NotMet || r.Outcome == verdict.Unproven) {
			ids = append(ids, id)
		}
	}
	return ids
}
