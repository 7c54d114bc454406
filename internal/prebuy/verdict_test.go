package prebuy

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
	"trialfit/internal/verdict"
)

const today = "2026-11-25"

var shared = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Hold: hold, Today: today, BlockOn: "must"})
})

func checker(t testing.TB) *check.Checker {
	c, err := shared()
	require.NoError(t, err)
	return c
}

func examples(t testing.TB) []string {
	files, err := filepath.Glob("../../examples/shortlists/*" + Suffix)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

func example(t testing.TB, name string) string { return "../../examples/shortlists/" + name + Suffix }

// TestComposedVerdict: what is decided piece by piece, and remembered from one
// combination to the next, is what the check itself says of the whole manifest:
// for every combination, region and must.
func TestComposedVerdict(t *testing.T) {
	c := checker(t)
	for _, file := range examples(t) {
		s, err := Read(file, c.Book)
		require.NoError(t, err)
		requireComposed(t, s)
	}
	j := requireComposed(t, alike(t))
	// Of twelve pairs, by whether families are the same, differ or are missing,
	// whether the answer is there, and where it counts by the model year.
	for question, different := range map[string]int{"us-tx/engine_change": 8, "us-nv/swap_standard": 11, "us/certified_configuration": 11} {
		n := slices.IndexFunc(j.units, func(u *unit) bool { return slices.Contains(u.rules, question) })
		require.True(t, j.units[n].told, question)
		require.NotEmpty(t, j.units[n].likened, question)
		require.Len(t, j.units[n].kept.by, different, "%s: pairs alike are decided once", question)
	}
}

// alike is a list in which many pairs tell the same: families that are the same
// as the outgoing one, others, and some that nobody names. Some candidates have
// papers: one intact, one changed since, and an authority's answer.
func alike(t *testing.T) *Shortlist {
	dir := t.TempDir()
	write := func(name, text string) {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	var b strings.Builder
	b.WriteString("shortlist: 1\nname: alike\ncurrency: USD\nintent: {regions: \"US-NV, US-TX\", registration: {zone: Clark}}\nchassis:\n")
	family := map[string]string{"a": ", family: Alder 40 (invented)", "b": ", family: Birch 50 (invented)", "c": ""}
	papers := map[int]string{
		0: ", vin: {value: ZZZ1W9C44M1000201, basis: documented, evidence: [plate]}}, evidence: [{id: plate, kind: photograph, date: 2026-11-01, file: plate.txt, shows: [{id: vin, path: chassis.vin, value: ZZZ1W9C44M1000201}]}]",
		1: "}, evidence: [{id: answer, kind: authority-answer, answers: us/certified_configuration, office: office of the port (invented), date: 2026-11-01, file: answer.txt}]",
		2: "}", 3: "}",
	}
	for i, f := range []string{"a", "b", "c", "a"} {
		fmt.Fprintf(&b, "  - {id: %s%d, known: {chassis: {model_year: %d%s, registration: {title_fuel: petrol}, outgoing_engine: {fuel: petrol%s}}}\n", f, i, 1975+10*(i%2), papers[i], family[f])
	}
	b.WriteString("donors:\n")
	for i, f := range []string{"a", "b", "c"} {
		paper := ""
		if i == 1 {
			paper = ", number: {value: N1, evidence: [stamp]}}, evidence: [{id: stamp, kind: photograph, date: 2026-11-01, file: stamp.txt, shows: [{id: n, path: engine.number, value: N2}]}]"
		} else {
			paper = "}"
		}
		fmt.Fprintf(&b, "  - {id: %s%d, known: {engine: {fuel: petrol%s%s}}\n", f, i, family[f], paper)
	}
	write("alike"+Suffix, b.String())
	for _, name := range []string{"plate.txt", "answer.txt", "stamp.txt"} {
		write(name, "invented for this test")
	}
	s, err := Read(filepath.Join(dir, "alike"+Suffix), checker(t).Book)
	require.NoError(t, err)
	name, err := s.Record()
	require.NoError(t, err)
	require.Equal(t, "alike.shortlist.evidence.sha256", filepath.Base(name))
	write("stamp.txt", "another photograph")
	return s
}

func requireComposed(t *testing.T, s *Shortlist) *jury {
	c := checker(t)
	j, err := s.jury(t.Context(), c)
	require.NoError(t, err)
	fit, err := j.alone(t.Context())
	require.NoError(t, err)
	for _, chassis := range s.Chassis {
		for _, donor := range s.Donors {
			m, _, err := s.manifest(c.Loader, chassis, donor, s.reckon(chassis, donor).Takes)
			require.NoError(t, err)
			b := j.subject(m)
			composed, err := j.decide(t.Context(), b, func(u *unit) bool { return u.origin == ofPair })
			require.NoError(t, err)
			reports, err := c.Across(t.Context(), m, s.Intent.Regions)
			require.NoError(t, err)
			for i, report := range reports {
				for _, more := range []ruled{fit.intent[i], fit.chassis[chassis.Index].rules[i], fit.donors[donor.Index].rules[i]} {
					composed[i].add(more)
				}
				name := joint(chassis, donor) + " in " + s.Intent.Regions[i]
				said := j.judgement(b, i, composed[i])
				blocking := slices.Sorted(slices.Values(slices.Concat(said.NotMet, said.Unproven)))
				require.ElementsMatch(t, report.Verdict.Blocking, blocking, name)
				for id, r := range report.Verdict.Rules {
					if r.Level == "must" && r.Hold == hold {
						requireRuling(t, r, composed[i][id], name+": "+id)
					}
				}
			}
		}
	}
	return j
}

// TestOrigins: what is wrong with a candidate is work, even where nothing else is
// known of it.
func TestOrigins(t *testing.T) {
	file := filepath.Join(t.TempDir(), "short"+Suffix)
	require.NoError(t, os.WriteFile(file, []byte(`shortlist: 1
name: short
currency: EUR
intent: {regions: IE}
chassis: [{id: a, lacks: [{id: rust, what: rust}]}]
donors: [{id: b}]
`), 0o644))
	s, err := Read(file, checker(t).Book)
	require.NoError(t, err)
	o := s.origins()
	require.Equal(t, ofChassis, o.of("work.*.close_by"))
	require.Equal(t, ofIntent, o.of("engine.family"))
	require.Equal(t, ofPair, o.of("chassis.brings.cluster"))
	requireComposed(t, s)
}

// requireRuling compares a judgement with what is kept of it.
func requireRuling(t *testing.T, r verdict.Rule, said ruling, name string) {
	t.Helper()
	whole := kept(r)
	require.Equal(t, whole.outcome, said.outcome, name)
	require.Equal(t, whole.open, said.open, name)
	if whole.against != nil {
		require.NotNil(t, said.against, name)
		require.Equal(t, findings(t, r), findings(t, *said.against), name)
	}
}

func findings(t *testing.T, r verdict.Rule) []string {
	var out []string
	for _, f := range r.Findings {
		text, err := json.Marshal(f)
		require.NoError(t, err)
		out = append(out, string(text))
	}
	slices.Sort(out)
	return out
}

// edited is an example with some text replaced, read anew.
func edited(t *testing.T, name string, pairs ...string) *Result {
	c := checker(t)
	text, err := os.ReadFile(example(t, name))
	require.NoError(t, err)
	for i := 0; i < len(pairs); i += 2 {
		require.Equal(t, 1, strings.Count(string(text), pairs[i]), pairs[i])
	}
	dir := t.TempDir()
	require.NoError(t, os.CopyFS(dir, os.DirFS(filepath.Dir(example(t, name)))))
	file := filepath.Join(dir, name+Suffix)
	require.NoError(t, os.WriteFile(file, []byte(strings.NewReplacer(pairs...).Replace(string(text))), 0o644))
	s, err := Read(file, c.Book)
	require.NoError(t, err)
	r, err := Run(t.Context(), s, c, nil)
	require.NoError(t, err)
	return r
}

// TestPetrolWins: it costs less to finish although the diesel base raises fewer
// questions; the diesel base with the heavy donor fails on its front axle plate.
func TestPetrolWins(t *testing.T) {
	r := edited(t, "heated-wagon")
	require.Equal(t, "petrol-wagon+van-four", r.Ranked[0].ID)
	last := r.Ranked[len(r.Ranked)-1]
	require.Equal(t, "diesel-wagon+van-four", last.ID)
	require.Greater(t, last.Rank, r.Ranked[0].Rank)
	require.Less(t, last.Regions[0].Questions, r.Ranked[0].Regions[0].Questions, "it registers more easily")
	require.Len(t, r.Ruled, 1)
	require.Equal(t, "mass/front_axle_rating", r.Ruled[0].Rule)
	require.Equal(t, []string{"diesel-wagon+truck-six"}, r.Ruled[0].Who)
}

// TestDieselWins: the petrol base was never offered with so large an engine on
// its brakes, and Western Australia wants that approved first.
func TestDieselWins(t *testing.T) {
	r := edited(t, "slipway-wagon")
	require.Equal(t, "diesel-wagon+taxi-diesel", r.Ranked[0].ID)
	require.Len(t, r.Ruled, 1)
	require.Equal(t, "au-wa/brake_options", r.Ruled[0].Rule)
	require.Equal(t, []string{"petrol-sedan-wagon+taxi-diesel"}, r.Ruled[0].Who)
	require.Len(t, r.Blanks, 1)
	require.Equal(t, "ute-diesel", r.Blanks[0].Candidate)
	require.Equal(t, "price", r.Blanks[0].First[0].What)
}

// TestTopQuestion answers what is asked first, on the side of the price at which
// it says that the matter is settled, and just beyond.
func TestTopQuestion(t *testing.T) {
	r := edited(t, "heated-wagon")
	top := r.Asks[0]
	require.Equal(t, []string{"donors.van-four.price"}, top.Paths)
	require.Equal(t, []string{"at most 2687 USD: petrol-wagon+van-four costs less than petrol-wagon+truck-six, whatever else"}, top.If)
	require.True(t, r.Ranked[0].Shared)

	answered := edited(t, "heated-wagon", `"2100..2900 USD"`, `"2687 USD"`)
	require.Equal(t, "petrol-wagon+van-four", answered.Ranked[0].ID)
	require.False(t, answered.Ranked[0].Shared, "settled, as was said")
	require.Equal(t, 2, answered.Ranked[1].Rank)

	beyond := edited(t, "heated-wagon", `"2100..2900 USD"`, `"2689 USD"`)
	require.True(t, beyond.Ranked[0].Shared, "just beyond it is open")
}

// TestBreakEven puts the prices in at which the choice is said to turn.
func TestBreakEven(t *testing.T) {
	r := edited(t, "heated-wagon")
	n := slices.IndexFunc(r.Even, func(e Even) bool { return e.Candidate == "van-four" })
	require.GreaterOrEqual(t, n, 0)
	e := r.Even[n]
	require.True(t, e.Rises)
	certain := edited(t, "heated-wagon", `"2100..2900 USD"`, `"`+ceil(e.At.High)+`.01 USD"`)
	require.Equal(t, "petrol-wagon+truck-six", certain.Ranked[0].ID)
	require.False(t, certain.Ranked[0].Shared)
	possible := edited(t, "heated-wagon", `"2100..2900 USD"`, `"`+ceil(e.At.Low)+`.01 USD"`)
	require.True(t, possible.Ranked[0].Shared)
}

// TestFindings: what can't be true together is told at its line.
func TestFindings(t *testing.T) {
	r := edited(t, "heated-wagon", "vin: {value: ZZZ1W9D4XL1000877", "vin: {value: ZZZ1W9C44M1000201", `gross: "2900 kg"`, `gross: "1800 kg"`)
	var told []string
	for _, n := range r.Notes {
		told = append(told, n.Text)
	}
	require.Contains(t, told, "diesel-wagon has the VIN of petrol-wagon (line 32): one of the two was copied wrongly, or they are one vehicle")
	require.True(t, slices.ContainsFunc(told, func(s string) bool {
		return strings.HasPrefix(s, "diesel-wagon weighs 1885 kg empty, more than its gross rating of 1800 kg")
	}), told)
}

// TestProblems: one line for each fault, with the place and what would do.
func TestProblems(t *testing.T) {
	c := checker(t)
	file := "bad" + Suffix
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile(file, []byte(`shortlist: 1
name: bad
currency: USD
intent: {regions: "California", hourly_rate: 50}
chassis:
  - {id: a, price: "4500 EUR", brings: [{id: tank, meets: tank-retrun}], known: {chassis: {wheelbase: "118 lb"}}}
donors:
  - {id: b, prize: "3 USD"}
`), 0o644))
	_, err := Read(file, c.Book)
	require.IsType(t, manifest.Problems{}, err)
	require.Equal(t, []string{
		`bad.shortlist.yaml:4:46: found 50, needed an amount with its currency such as "4200..4800 USD"`,
		`bad.shortlist.yaml:8:13: unknown key "prize", did you mean "price"?`,
	}, formFaults(err), err)

	text, err := os.ReadFile(file)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(file, []byte(strings.NewReplacer("hourly_rate: 50", `hourly_rate: "50 USD"`, "prize", "price", `"118 lb"`, `"118 in"`).Replace(string(text))), 0o644))
	_, err = Read(file, c.Book)
	require.EqualError(t, err, strings.Join([]string{
		`bad.shortlist.yaml:4:19: "California" is not a list of ISO 3166 codes: write it as "US-CA, US-NV"`,
		`bad.shortlist.yaml:6:20: "4500 EUR" is in EUR, this file counts in USD: convert it, currencies are never mixed`,
		`bad.shortlist.yaml:6:59: "tank-retrun" is no need of this build, did you mean "tank-return"?`,
	}, "\n"))

	require.NoError(t, os.WriteFile(file, []byte("# nothing\n"), 0o644))
	_, err = Read(file, c.Book)
	require.EqualError(t, err, `bad.shortlist.yaml: is empty: a shortlist starts with "shortlist: 1"`)
}

// formFaults leaves out the fault of a value, which is told along.
func formFaults(err error) []string {
	var out []string
	for line := range strings.SplitSeq(err.Error(), "\n") {
		if !strings.Contains(line, "118 lb") {
			out = append(out, line)
		}
	}
	return out
}

// TestBegin: the manifest that a build begins with loads, is judged as the
// combination was, and holds what the shortlist knew.
func TestBegin(t *testing.T) {
	c := checker(t)
	for _, file := range examples(t) {
		s, err := Read(file, c.Book)
		require.NoError(t, err)
		for _, chassis := range s.Chassis {
			for _, donor := range s.Donors {
				text, err := s.Begin(chassis, donor)
				require.NoError(t, err)
				dir := t.TempDir()
				from, _, sums, err := s.Papers(chassis, donor)
				require.NoError(t, err)
				require.NoError(t, os.CopyFS(dir, os.DirFS(from)))
				require.NoError(t, evidence.WriteSums(filepath.Join(dir, "begun"+evidence.SumSuffix), sums))
				m, err := c.Loader.Read(strings.NewReader(string(text)), "begun"+manifest.Suffix, dir)
				require.NoError(t, err, string(text))
				begun, err := c.Check(t.Context(), m)
				require.NoError(t, err)
				whole, _, err := s.manifest(c.Loader, chassis, donor, s.reckon(chassis, donor).Takes)
				require.NoError(t, err)
				report, err := c.Check(t.Context(), whole)
				require.NoError(t, err)
				require.Equal(t, report.Verdict.Blocking, begun.Verdict.Blocking)
				require.Equal(t, s.Name, m.Root.Word("build.name"))
				require.Equal(t, donor.node.Word("known.engine.family"), m.Root.Word("engine.family"))
			}
		}
	}
}

// TestStays: a diesel wagon keeps its cluster, tank and battery trays when a
// diesel goes in; what something else takes the place of is left over. Common
// practice.
func TestStays(t *testing.T) {
	r := edited(t, "heated-wagon")
	n := slices.IndexFunc(r.Close, func(c *Close) bool { return c.ID == "diesel-wagon+van-four" })
	var left []string
	for _, l := range r.Close[n].Left {
		left = append(left, l.Part.Of.ID+" "+l.Part.ID)
	}
	require.Equal(t, []string{"diesel-wagon old-diesel", "van-four vacuum-pump", "van-four sender"}, left)
}

// TestPapers: a paper goes with its candidate and with no other; one that shows
// something else rules its candidate out.
func TestPapers(t *testing.T) {
	c := checker(t)
	s, err := Read(example(t, "heated-wagon"), c.Book)
	require.NoError(t, err)
	_, carried, sums, err := s.Papers(s.Chassis[1], s.Donors[0])
	require.NoError(t, err)
	require.Equal(t, []string{"evidence/diesel-wagon-title.txt"}, carried)
	require.Len(t, sums, 1)
	_, none, _, err := s.Papers(s.Chassis[0], s.Donors[0])
	require.NoError(t, err)
	require.Empty(t, none)

	r := edited(t, "heated-wagon", "path: registration.title_fuel, value: diesel", "path: registration.title_fuel, value: petrol")
	n := slices.IndexFunc(r.Ruled, func(u Ruled) bool { return u.Rule == "records/evidence_agrees" })
	require.GreaterOrEqual(t, n, 0)
	require.Equal(t, []string{"diesel-wagon"}, r.Ruled[n].Who)
}
