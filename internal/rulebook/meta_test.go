package rulebook

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/policies"
)

func TestMetadataRefused(t *testing.T) {
	for name, c := range map[string]struct{ old, new, want string }{
		"none":              {"# METADATA", "# nothing", "has no METADATA block on its package"},
		"unknown key":       {"#   hold: plan", "#   hold: plan\n#   holds: plan", `reading its metadata: unknown field "holds"`},
		"no title":          {"# title: the wheelbase is written down\n", "", `title says nothing: ""`},
		"title, todo":       {"the wheelbase is written down", "TODO the wheelbase", `title says nothing: "TODO the wheelbase"`},
		"title, long":       {"the wheelbase is written down", strings.Repeat("wheelbase ", 6) + "down", `title is longer than 60 characters: "` + strings.Repeat("wheelbase ", 6) + `down"`},
		"description":       {"Nothing can be placed on a frame whose length nobody knows.", "Lorem ipsum dolor.", `description says nothing: "Lorem ipsum dolor."`},
		"description, dots": {"Nothing can be placed on a frame whose length nobody knows.", "It matters because ...", `description says nothing: "It matters because ..."`},
		"source":            {"common practice of an invented shop", "tbd", `source says nothing: "tbd"`},
		"remedy":            {"measure the wheelbase", "fix it", `remedy says nothing: "fix it"`},
		"caution":           {"#   waivable: true", "#   caution: FIXME later\n#   waivable: true", `caution says nothing: "FIXME later"`},
		"level":             {"level: should", "level: shall", `level is "shall", needs one of must, should, note`},
		"no level":          {"#   level: should\n", "", `level is "", needs one of must, should, note`},
		"hold":              {"hold: plan", "hold: paint", `hold is "paint", needs one of plan, strip, mockup, install, first-start, road-test, inspection, handover`},
		"basis":             {"basis: common-practice", "basis: hearsay", `basis is "hearsay", needs one of statute, regulation, agency-guidance, code-of-practice, standard, manufacturer, physics, own-record, handbook, common-practice, second-hand, memory`},
		"must on practice":  {"level: should", "level: must", "a must can't rest on common-practice: make it advice or a question"},
		"question":          {"#   waivable: true", "#   question: {ask: \"May we do this at all?\", office: the harbour office}\n#   waivable: true", "a question is a note: the rule of its region that collects questions is what blocks; a question belongs to a region: it lies in regions/<code>/<rule>/"},
		"collects":          {"#   waivable: true", "#   collects: answers\n#   waivable: true", `collects is "answers", needs "questions"; a rule that collects questions is a must of a region`},
		"needs_basis":       {"#   waivable: true", "#   needs_basis: {paint: guessed}\n#   waivable: true", `needs_basis is "paint", needs one of plan, strip, mockup, install, first-start, road-test, inspection, handover; needs_basis at paint is "guessed", needs one of estimated, claimed, documented, measured, documented with evidence, measured with evidence`},
		"one outcome":       {"[met, not met, unproven, not applicable]", "[met]", "outcomes names fewer than two: a rule that can only say one thing says nothing"},
		"outcome":           {"[met, not met, unproven, not applicable]", "[met, waived]", `outcomes is "waived", needs one of met, not met, unproven, not applicable`},
		"reason":            {"#   waivable: true", "#   reasons: {short: tbd}\n#   waivable: true", `reason short says nothing: "tbd"`},
		"reviewed":          {"reviewed: 2026-11-25", "reviewed: yesterday", `reviewed is "yesterday", needs a date such as 2026-11-25`},
		"no review":         {"#   reviewed: 2026-11-25\n", "", `reviewed is "", needs a date such as 2026-11-25`},
		"since":             {"#   since: \"1.0\"\n", "", "since names no version"},
		"alias of ours":     {"#   waivable: true", "#   aliases: [mass/front_tyres]\n#   waivable: true", "there is a rule mass/front_tyres already"},
	} {
		t.Run(name, func(t *testing.T) {
			broken := acme.replaced(t, c.old, c.new)
			line := 1 + strings.Count(strings.Split(broken[ruleFile], "\npackage ")[0], "\n") + 1
			refused(t, "pack a: "+ruleFile+":"+string(rune('0'+line/10))+string(rune('0'+line%10))+":1: "+c.want, broken)
		})
	}
	refused(t, "pack a: rules/brakes/bled/rule.rego:14:1: a rule on brakes can't be waived",
		acme.with(files{"rules/brakes/bled/rule.rego": ruleOf("local.acme.brakes.bled", `findings contains judge.present_at("build.chassis.vin", "plan")`)}))
}

// An id means one rule: rules/us and regions/us of a pack would share theirs.
func TestIDsOnce(t *testing.T) {
	text := ruleOf("local.acme.us.a", `findings contains judge.present_at("build.chassis.vin", "plan")`)
	refused(t, "pack a: rules/us/a/rule.rego:14:1: there is a rule local/acme/us/a already",
		acme.with(files{"regions/us/a/rule.rego": text, "rules/us/a/rule.rego": text}))
}

// The catalogue that is embedded is the one the rules themselves give, and
// every rule in it can be told apart and tried.
func TestShippedCatalogue(t *testing.T) {
	pack := os.DirFS("../../policies")
	built, err := Build(pack)
	require.NoError(t, err)
	want, err := MarshalCatalogue(built)
	require.NoError(t, err)
	got, err := policies.FS.ReadFile("catalogue.json")
	require.NoError(t, err)
	require.Equal(t, string(want), string(got), "run go run ./internal/generate")

	var ids []string
	for _, m := range built {
		ids = append(ids, m.ID)
		ids = append(ids, m.Aliases...)
		require.FileExists(t, "../../policies/"+strings.Join(m.At, "/")+"/cases.yaml")
	}
	slices.Sort(ids)
	require.Equal(t, len(ids), len(slices.Compact(slices.Clone(ids))), "an id or alias stands twice")

	b, err := openPacks()
	require.NoError(t, err)
	require.NoError(t, b.checkRegions(b.Packs[0]))
	for _, m := range built {
		require.Same(t, b.Rules[m.ID], b.Rule(m.ID))
		for _, alias := range m.Aliases {
			require.Same(t, b.Rules[m.ID], b.Rule(alias))
		}
	}
	require.Nil(t, b.Rule("mass/nothing"))
}
