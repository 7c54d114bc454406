package rulebook_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/verdict"
)

// folder writes a pack to disk and returns its folder. All packs here are invented.
func folder(t *testing.T, name string, files map[string]string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), name)
	for file, text := range files {
		path := filepath.Join(dir, filepath.FromSlash(file))
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	return dir
}

// head is what every manifest begins with.
const head = "trialfit: 1\nbuild: {name: test, hold: none}\n"

// rule writes a rule: its level and what stands between its metadata and its body.
func rule(pkg, level, basis, extra, body string) string {
	return `# METADATA
# title: what the shop of this test asks for
# description: The shop of this test was bitten once and asks for this since.
# custom:
#   level: ` + level + `
#   hold: plan
#   basis: ` + basis + `
#   source: house rules of an invented shop
#   outcomes: [met, not met, unproven, not applicable]
#   remedy: do as the house rules say
#   reviewed: 2026-11-25
#   since: "1.0"
#   waivable: true
` + extra + "package " + pkg + "\n\nimport data.lib.judge\n\n" + body + "\n"
}

// judge judges a manifest text at plan with local packs.
func judge(t *testing.T, manifest string, packs ...string) *check.Report {
	t.Helper()
	return judgeWith(t, checker(t, packs...), manifest)
}

func checker(t *testing.T, packs ...string) *check.Checker {
	t.Helper()
	c, err := check.New(check.Options{Hold: "plan", Today: "2026-11-25"}, packs...)
	require.NoError(t, err)
	return c
}

func judgeWith(t *testing.T, c *check.Checker, manifest string) *check.Report {
	t.Helper()
	m, err := c.Loader.Read(strings.NewReader(head+manifest), "test.build.yaml", t.TempDir())
	require.NoError(t, err)
	r, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	return r
}

func outcome(t *testing.T, r *check.Report, id string) string {
	t.Helper()
	require.Contains(t, r.Verdict.Rules, id)
	return r.Verdict.Rules[id].Outcome
}

// A local rule is judged beside the shipped ones, with limits of its own.
func TestLocalRule(t *testing.T) {
	pack := folder(t, "acme", map[string]string{
		"pack.yaml": "name: acme\nversion: \"1.0\"\n",
		"rules/cab/limits.yaml": `area: acme
limits:
  longest:
    title: longest wheelbase that fits the shop's jig
    value: 130 in
    kind: length
    tighter: lower
    source: the jig
    basis: own-record
    reviewed: 2026-11-25
`,
		"rules/cab/fits_jig/rule.rego": rule("local.acme.cab.fits_jig", "must", "own-record", "",
			`findings contains judge.limit_max("build.chassis.wheelbase", "limits.acme.longest")`),
	})
	const id = "local/acme/cab/fits_jig"
	shipped, c := checker(t), checker(t, pack)
	for manifest, want := range map[string]string{
		"":                                 "unproven",
		`chassis: {wheelbase: "118 in"}`:   "met",
		`chassis: {wheelbase: "3.5 m"}`:    "not met",
		`chassis: {wheelbase: "129.9 in"}`: "unproven", // the spread of a claimed length straddles the limit
	} {
		r := judgeWith(t, c, manifest)
		require.Equal(t, want, outcome(t, r, id), manifest)
		require.Equal(t, want != "met", slices.Contains(r.Verdict.Blocking, id))
		without := judgeWith(t, shipped, manifest)
		require.NotEmpty(t, without.Verdict.Rules)
		for shippedID, rule := range without.Verdict.Rules {
			require.Equal(t, rule, r.Verdict.Rules[shippedID])
		}
	}
	r := judgeWith(t, c, `
chassis: {wheelbase: "3.5 m"}
waivers:
  - {id: jig, rule: local/acme/cab/fits_jig, subject: chassis.wheelbase, reason: borrowed a longer jig, by: R. Vance, until: 2026-12-31}
`)
	require.Equal(t, "waived", outcome(t, r, id))
}

// A rule whose word can't be understood never drops out and never passes.
func TestStrangeRules(t *testing.T) {
	pack := map[string]string{"pack.yaml": "name: acme\nversion: \"1.0\"\n"}
	for name, body := range map[string]string{
		"silent":          "unused := judge.always",
		"looks_at_none":   "applies := judge.always",
		"applies_true":    "applies := true\n\nunused := judge.always",
		"applies_false":   "applies := false\n\nunused := judge.always",
		"applies_perhaps": `applies := object.union(judge.always, {"state": "perhaps"})`,
		"applies_bare":    `applies := object.remove(judge.negate(judge.always), {"because"})`,
		"applies_unknown": `applies := judge.when("build.chassis.category", {"truck"})`,
		"findings_text":   "findings := \"met\"\n\nunused := judge.always",
		"findings_words":  "findings := {\"met\"}\n\nunused := judge.always",
		"of_no_subject":   "findings := {{\"outcome\": \"met\", \"rests_on\": []}}\n\nunused := judge.always",
		"resting_nowhere": "findings := {{\"outcome\": \"met\", \"subject\": \"build\"}}\n\nunused := judge.always",
		"own_outcome":     `findings := {judge.about("build", {"outcome": "fine", "rests_on": []})}`,
		"own_waiver":      `findings := {judge.about("build", {"outcome": "waived", "rests_on": []})}`,
	} {
		pack["rules/cab/"+name+"/rule.rego"] = rule("local.acme.cab."+name, "must", "own-record", "", body)
	}
	r := judge(t, "", folder(t, "acme", pack))
	local := 0
	for id, rule := range r.Verdict.Rules {
		if strings.HasPrefix(id, "local/") {
			local++
			require.Equal(t, "unproven", rule.Outcome, id)
			require.Contains(t, r.Verdict.Blocking, id)
		}
	}
	require.Equal(t, len(pack)-1, local)
}

const xzRegion = `code: XZ
name: Invented waters
reviewed: 2026-11-25
review_months: 12
authorities:
  - name: Harbour office (invented)
    decides: everything
`

// xz is a pack with a region of its own: XZ is an ISO 3166-1 code for users to
// assign, and XZ-N is invented with it.
var xz = map[string]string{
	"pack.yaml":                "name: harbour\nversion: \"1.0\"\n",
	"regions/xz/region.yaml":   xzRegion,
	"regions/xz-n/region.yaml": strings.Replace(xzRegion, "code: XZ", "code: XZ-N\ninherits: XZ", 1),
	"regions/xz/asked/rule.rego": rule("local.harbour.xz.asked", "must", "own-record", "#   collects: questions\n",
		`applies := judge.when("build.engine.fuel", {"petrol"})`), // of no effect: no condition may hide a question
	"regions/xz/fuel/rule.rego": rule("local.harbour.xz.fuel", "note", "second-hand", `#   question:
#     ask: May a diesel engine go into this hull at all?
#     office: Harbour office (invented)
`, `applies := judge.when("build.engine.fuel", {"diesel"})`),
	"regions/xz-n/vin/rule.rego": rule(`local.harbour["xz-n"].vin`, "must", "own-record", "",
		`findings contains judge.present_at("build.chassis.vin", "plan")`),
}

func TestLocalRegion(t *testing.T) {
	c := checker(t, folder(t, "harbour", xz))
	const asked, vin = "local/harbour/xz/asked", "local/harbour/xz-n/vin"

	r := judgeWith(t, c, "registration: {region: XZ-N}\nengine: {fuel: diesel}")
	require.Equal(t, []string{"XZ", "XZ-N"}, r.Verdict.Regions)
	require.Equal(t, "met", outcome(t, r, "registration/region_examined"))
	require.Equal(t, "unproven", outcome(t, r, asked))
	require.Equal(t, "no-answer", r.Verdict.Rules[asked].Findings[0].Reason)
	require.Equal(t, "unproven", outcome(t, r, vin))
	require.Subset(t, r.Verdict.Blocking, []string{asked, vin})

	// Rules of a region outside the chain are not in force.
	r = judgeWith(t, c, "registration: {region: XZ}\nengine: {fuel: petrol}")
	require.Equal(t, "not applicable", outcome(t, r, asked))
	require.NotContains(t, r.Verdict.Rules, vin)
	require.NotContains(t, r.Verdict.Rules, "us/engine_year")
	r = judgeWith(t, c, "registration: {region: US}")
	require.NotContains(t, r.Verdict.Rules, asked)
	require.Contains(t, r.Verdict.Rules, "us/engine_year")

	// Without the pack nobody has looked at the region.
	require.Equal(t, "unproven", outcome(t, judge(t, "registration: {region: XZ}"), "registration/region_examined"))
}

// A local pack adds a question to a shipped region; the shipped rule that
// collects questions asks it with its own.
func TestLocalQuestion(t *testing.T) {
	c := checker(t, folder(t, "acme", map[string]string{
		"pack.yaml": "name: acme\nversion: \"1.0\"\n",
		"regions/us/county/rule.rego": rule("local.acme.us.county", "note", "second-hand", `#   question:
#     ask: Does the county of this test want to see the truck first?
#     office: county clerk (invented)
`, "applies := judge.always"),
	}))
	subjects := func(r *check.Report) []string {
		var out []string
		for _, f := range r.Verdict.Rules["us/questions_answered"].Findings {
			out = append(out, f.Subject)
		}
		return out
	}
	const old = "registration: {region: US}\nchassis: {model_year: 1960}\n" // before the shipped questions
	require.NotContains(t, subjects(judge(t, old)), "local/acme/us/county")
	require.Contains(t, subjects(judgeWith(t, c, old)), "local/acme/us/county")
	require.Equal(t, "unproven", outcome(t, judgeWith(t, c, old), "local/acme/us/county"))
}

// A pack adds a section to the manifest, in the manifest's own terms.
func TestManifestExtension(t *testing.T) {
	pack := folder(t, "acme", map[string]string{
		"pack.yaml": "name: acme\nversion: \"1.0\"\nevidence_kinds: [spray-card]\n",
		"manifest.json": `{
  "title": "Paint of the invented shop",
  "type": "object",
  "properties": {
    "booth_length": {"title": "Booth length", "$ref": "#/$defs/length"},
    "coats": {
      "title": "Coats",
      "anyOf": [{"const": "none"}, {
        "type": "array",
        "items": {
          "type": "object",
          "properties": {
            "id": {"$ref": "#/$defs/id"},
            "colour": {"$ref": "#/$defs/text"},
            "cards": {"type": "array", "items": {"$ref": "#/$defs/id", "x-ref": "evidence"}}
          },
          "required": ["id"],
          "additionalProperties": false
        }
      }]
    }
  },
  "additionalProperties": false
}`,
		"rules/paint/fits_booth/rule.rego": rule("local.acme.paint.fits_booth", "must", "own-record", "", `
findings contains judge.limit_min("build.x-acme.booth_length", "build.chassis.wheelbase")`),
		"rules/paint/colours/rule.rego": rule("local.acme.paint.colours", "must", "own-record", "", `
applies := judge.when_listed("build.x-acme.coats")

findings contains judge.present_at(judge.of(id, "build.x-acme.coats.*.colour"), "plan") if {
	some id in judge.each("build.x-acme.coats")
}`),
	})
	const fits, colours = "local/acme/paint/fits_booth", "local/acme/paint/colours"
	c := checker(t, pack)

	r := judgeWith(t, c, "")
	require.Equal(t, []string{"chassis.wheelbase", "x-acme.booth_length"}, r.Verdict.Rules[fits].Findings[0].Missing)
	require.Equal(t, "unproven", outcome(t, r, colours))

	r = judgeWith(t, c, `
chassis: {wheelbase: "118 in"}
x-acme:
  booth_length: {value: "6 m", basis: measured, evidence: [card]}
  coats:
    - {id: primer, colour: grey, cards: [card]}
    - {id: top}
evidence:
  - {id: card, kind: spray-card, file: card.txt, shows: [{id: booth, path: x-acme.booth_length, value: "6 m"}]}
`)
	require.Equal(t, "met", outcome(t, r, fits))
	require.Equal(t, "unproven", outcome(t, r, colours))
	var missing []string
	for _, f := range r.Verdict.Rules[colours].Findings {
		missing = append(missing, f.Missing...)
	}
	require.Equal(t, []string{"x-acme.coats.top.colour"}, missing)
	items := verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	require.NotEmpty(t, items)

	require.Equal(t, "not applicable", outcome(t, judgeWith(t, c, "x-acme: {coats: none}"), colours))

	for text, want := range map[string]string{
		"x-acme: {booth_lenght: 6 m}":                       `test.build.yaml:3:10: unknown key "booth_lenght", did you mean "booth_length"?`,
		"x-acme: {booth_length: 6 kg}":                      "test.build.yaml:3:24: ",
		"x-acme: {coats: [{colour: grey}]}":                 "test.build.yaml:3:18: ",
		"x-bcme: {}":                                        `test.build.yaml:3:1: unknown key "x-bcme"`,
		"evidence: [{id: a, kind: spray-can, file: a.txt}]": `test.build.yaml:3:26: `,
	} {
		_, err := c.Loader.Read(strings.NewReader(head+text), "test.build.yaml", ".")
		require.ErrorContains(t, err, want)
		require.NotContains(t, err.Error(), "\n")
	}
	_, err := c.Loader.Read(strings.NewReader(head+"evidence: [{id: a, kind: spray-can, file: a.txt}]"), "test.build.yaml", ".")
	require.ErrorContains(t, err, `did you mean "spray-card"?`)
}

// Two packs may name the same kind of evidence and share nothing else.
func TestPacksTogether(t *testing.T) {
	pack := func(name string) string {
		return folder(t, name, map[string]string{"pack.yaml": "name: " + name + "\nversion: \"1.0\"\nevidence_kinds: [spray-card, video]\n"})
	}
	judgeWith(t, checker(t, pack("one"), pack("two")), "evidence: [{id: a, kind: video, file: a.mp4}]")
}
