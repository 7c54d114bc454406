package text_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/report"
	"trialfit/internal/report/reporttest"
	"trialfit/internal/report/text"
	"trialfit/internal/verdict"
)

// judge checks a manifest and prints what a person would read.
func judge(t *testing.T, manifest string) (report.Build, []string) {
	t.Helper()
	c, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	m, err := c.Loader.Read(strings.NewReader(manifest), "few.build.yaml", t.TempDir())
	require.NoError(t, err)
	r, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	b := report.Build{Report: r, Items: verdict.Case{Manifest: m, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()}
	out := reporttest.Run{Builds: []report.Build{b}}.Write(t, text.New(&report.Spool{}, text.Options{Given: true}))
	return b, strings.Split(string(out), "\n")
}

// What a builder has on the first evening: a list of what to find out, hold
// point by hold point, short enough to read and with nothing left uncounted.
func TestFirstLines(t *testing.T) {
	b, lines := judge(t, `trialfit: 1
build: {name: first evening}
registration: {region: US-CA}
chassis: {make: Tarn, model: Hill 4, wheelbase: 108 in}
engine: {family: Brook 4D, fuel: diesel}
`)
	require.Less(t, len(lines), 150)
	stages := b.ToFindOut()
	require.Greater(t, len(stages), 4)
	all := 0
	for _, s := range stages {
		all += len(s.Asks)
		require.Contains(t, lines, fmt.Sprintf("  for %s (%d)", s.Hold, len(s.Asks)))
		if rest := len(s.Asks) - 10; rest > 0 {
			require.Contains(t, lines, fmt.Sprintf("    … and %d more", rest))
		}
	}
	require.Contains(t, lines, fmt.Sprintf("What to find out next, hold point by hold point (%d)", all))
	for _, line := range lines {
		require.LessOrEqual(t, len([]rune(line)), 80, line)
	}
	require.False(t, slices.ContainsFunc(stages, func(s report.Stage) bool {
		return slices.ContainsFunc(s.Asks, func(a report.Ask) bool { return a.Path == "chassis.wheelbase" })
	}), "what is known is not asked for")
}

// A thousand faults of one kind must not hide the one of another.
func TestThousandFindings(t *testing.T) {
	var m strings.Builder
	m.WriteString("trialfit: 1\nbuild: {name: harness, hold: mockup}\nelectrical:\n  circuits:\n")
	for n := range 1000 {
		fmt.Fprintf(&m, "    - {id: c%d, feeds: lamp %d, conductor: 18 AWG, place: engine-bay, fuse: 60 A}\n", n, n)
	}
	m.WriteString("fittings:\n  - {id: oil, port: Rc 1/8 internal, adapters: none, end: 1/8 NPT external, seal: paste}\n")
	_, lines := judge(t, m.String())
	require.Less(t, len(lines), 300)
	out := strings.Join(lines, "\n")
	require.Contains(t, out, "What stands in the way (1001)")
	require.Contains(t, out, "fittings/threads_mate")
	require.Regexp(t, `… and 995 more: 995 of\s+electrical/fuse_protects_wire; --all shows them`, out)
}

// Where the limit is a value of the build and the widest of all, it is what has
// to be found out.
func TestLimitWithARange(t *testing.T) {
	b, _ := judge(t, `trialfit: 1
build: {name: hottest day, hold: first-start}
registration: {ambient: 39..49 °C}
cooling: {top_tank: 85 °C ± 0.5, test_ambient: 34 °C ± 0.5, top_limit: 100 °C ± 1}
`)
	i := slices.IndexFunc(b.Items, func(i verdict.Item) bool {
		return i.Finding.Subject == "cooling.top_tank" && i.Finding.Outcome == verdict.Unproven
	})
	require.NotEqual(t, -1, i)
	require.Equal(t, []string{"find out more exactly: registration.ambient"}, b.Items[i].Do)
}

// What a value is held against bears the same title: the item it is of is named.
func TestLimitOfAnItem(t *testing.T) {
	b, _ := judge(t, `trialfit: 1
build: {name: sold stronger, hold: plan}
chassis: {engine_options: [{id: petrol-42, peak_torque: 285 N·m, driveline_kept: true}]}
engine: {peak_torque: 242 N·m}
`)
	i := slices.IndexFunc(b.Items, func(i verdict.Item) bool { return i.Finding.Subject == "transmission.input_torque_rating" })
	require.NotEqual(t, -1, i)
	require.Contains(t, b.Items[i].Needed, "(peak torque of petrol-42)")
}

func TestHoldsNone(t *testing.T) {
	reporttest.HoldsNone(t, text.New(&report.Spool{}, text.Options{All: true}))
}
