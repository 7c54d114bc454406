package rulebook

import (
	"context"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

const ruleFile = "rules/cab/wheelbase_kept/rule.rego"

// What a rule may not do is refused with its place. The body starts on line 18.
func TestSyntaxRefused(t *testing.T) {
	const compares = "a rule compares and selects; sums are figures, and there is no clock, chance or network"
	for name, c := range map[string]struct{ body, want string }{
		"input":             {`findings contains judge.always if input.build.chassis`, `18:35: reads input.build.chassis past the judge: use a path, so that a missing value can't pass`},
		"input, whole":      {`findings contains judge.about(input, {})`, `18:31: reads input past the judge: use a path, so that a missing value can't pass`},
		"input, in a call":  {`findings contains judge.always if object.get(input, "build", {}) != {}`, `18:46: reads input past the judge: use a path, so that a missing value can't pass`},
		"data.rules":        {`findings contains judge.always if data.rules.mass.front_tyres.findings`, `18:35: reads data.rules.mass.front_tyres.findings: a rule may refer to data.lib only`},
		"data.verdict":      {`findings contains judge.always if data.verdict.verdict == "PASS"`, `18:35: reads data.verdict.verdict: a rule may refer to data.lib only`},
		"data.catalogue":    {`findings contains judge.always if some id, _ in data.catalogue`, `18:49: reads data.catalogue: a rule may refer to data.lib only`},
		"data.limits":       {`findings contains judge.always if data.limits.mass.axle_margin`, `18:35: reads data.limits.mass.axle_margin: a rule may refer to data.lib only`},
		"data, computed":    {"findings contains judge.always if {\n\tsome x in {\"rules\"}\n\tdata[x]\n}", `20:2: reads data[x]: a rule may refer to data.lib only`},
		"data, whole":       {`findings contains judge.always if object.get(data, "limits", {}) != {}`, `18:46: reads data: a rule may refer to data.lib only`},
		"data, as a step":   {`findings contains judge.always if {"a": 1}[data.catalogue.x]`, `18:44: reads data.catalogue.x: a rule may refer to data.lib only`},
		"another rule":      {`findings contains judge.always if data.local.acme.cab.other.findings`, `18:35: reads data.local.acme.cab.other.findings: a rule may refer to data.lib only`},
		"with":              {`findings contains f if f := judge.present_at("build.chassis.vin", "plan") with data.holds as []`, `18:24: uses with: a rule judges what is, not what might be`},
		"http.send":         {`findings contains judge.always if http.send({"url": "https://example.org"})`, "18:35: uses http.send: " + compares},
		"time.now_ns":       {`findings contains judge.always if time.now_ns() > 0`, "18:35: uses time.now_ns: " + compares},
		"rand.intn":         {`findings contains judge.always if rand.intn("x", 2) == 1`, "18:35: uses rand.intn: " + compares},
		"opa.runtime":       {`findings contains judge.always if opa.runtime().env`, "18:35: uses opa.runtime: " + compares},
		"plus":              {`findings contains judge.always if 1 + 1 == 2`, "18:37: uses +: " + compares},
		"minus":             {`findings contains judge.always if count([1]) - 1 == 0`, "18:46: uses -: " + compares},
		"regex.match":       {`findings contains judge.always if regex.match("a+", "aa")`, "18:35: uses regex.match: " + compares},
		"walk":              {`findings contains judge.always if walk({}, [_, _])`, "18:35: uses walk: " + compares},
		"print":             {`findings contains judge.always if print("here")`, "18:35: uses print: " + compares},
		"annotations":       {`findings contains judge.always if rego.metadata.chain()`, "18:35: uses rego.metadata.chain: " + compares},
		"in a helper":       {"findings contains judge.always if helper(1)\n\nhelper(x) if x * 2 == 2", "20:16: uses *: " + compares},
		"in a default":      {`default findings := {input}`, "18:1: illegal default rule (value cannot contain ref)"},
		"misspelt field":    {`findings contains judge.present_at("build.chassis.wheelbse", "plan")`, `18:36: path "build.chassis.wheelbse": "chassis" has no field "wheelbse", did you mean "wheelbase"?`},
		"misspelt section":  {`findings contains judge.present_at("build.chasis.wheelbase", "plan")`, `18:36: path "build.chasis.wheelbase": "the manifest" has no field "chasis", did you mean "chassis"?`},
		"misspelt in table": {`table := {"van": ["limits.mass.axle_margn"]}`, `18:19: path "limits.mass.axle_margn": no such limit, did you mean "limits.mass.axle_margin"?`},
		"below a value":     {`findings contains judge.present_at("build.chassis.vin.year", "plan")`, `18:36: path "build.chassis.vin.year": "chassis.vin" has no field "year"`},
		"unknown figure":    {`findings contains judge.limit_max("figures.mass.totals", "limits.mass.axle_margin")`, `18:35: path "figures.mass.totals": no such figure, did you mean "figures.mass.total"?`},
		"figure of one":     {`findings contains judge.limit_max("figures.electrical.voltage_drop", "limits.mass.axle_margin")`, `18:35: path "figures.electrical.voltage_drop": no such figure, did you mean "figures.electrical.voltage_drop.*"?`},
		"glued":             {`findings contains judge.present_at(concat(".", ["build", "chassis"]), "plan")`, `18:49: "build" is put together into a path: write the whole path, so that it can be checked`},
		"glued with dot":    {`findings contains judge.present_at(sprintf("%s%s", ["build.", "chassis"]), "plan")`, `18:53: "build." is put together into a path: write the whole path, so that it can be checked`},
		"glued, half-way":   {`findings contains judge.present_at(concat("", ["build.chassis.", "vin"]), "plan")`, `18:48: path "build.chassis.": "chassis" has no field ""`},
		"recursion":         {"findings contains judge.about(\"build.chassis.vin\", f) if some f in findings", "18:1: rule data.local.acme.cab.wheelbase_kept.findings is recursive: data.local.acme.cab.wheelbase_kept.findings -> data.local.acme.cab.wheelbase_kept.findings"},
		"unsafe variable":   {`findings contains judge.about(x, {})`, "18:19: var x is unsafe"},
		"unknown helper":    {`findings contains judge.limit_most("build.chassis.wheelbase", "limits.mass.axle_margin")`, "18:19: undefined function data.lib.judge.limit_most"},
		"too few paths":     {`findings contains judge.limit_max("build.chassis.wheelbase")`, "18:19: function data.lib.judge.limit_max has arity 2, got 1 argument"},
		"syntax":            {`findings contains judge.always if {`, "19: unexpected eof token"},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, "pack a: "+ruleFile+":"+c.want, acme.rule(c.body))
		})
	}
}

func TestImportsRefused(t *testing.T) {
	for imported, name := range map[string]string{
		"data.verdict": "data.verdict", "data.rules.mass.front_tyres": "data.rules.mass.front_tyres",
		"input": "input", "input.build as b": "input.build", "data": "data",
	} {
		body := "import " + imported + "\n\nfindings contains judge.present_at(\"build.chassis.vin\", \"plan\")"
		refused(t, "pack a: "+ruleFile+":18:1: imports "+name+": a rule may import data.lib only", acme.rule(body))
	}
	refused(t, "pack a: "+ruleFile+":16:1: import data.lib.judge unused", acme.rule("applies := true"))
}

func TestPlacesRefused(t *testing.T) {
	const body = `findings contains judge.present_at("build.chassis.vin", "plan")`
	const depth = ": a rule lies in rules/<area>/<rule>/rule.rego or regions/<code>/<rule>/rule.rego"
	for name, c := range map[string]struct{ file, text, want string }{
		"too shallow":     {"rules/cab/rule.rego", ruleOf("local.acme.cab", body), "rules/cab/rule.rego" + depth},
		"too deep":        {"rules/cab/a/b/rule.rego", ruleOf("local.acme.cab.a.b", body), "rules/cab/a/b/rule.rego" + depth},
		"another name":    {"rules/cab/a/helper.rego", "package local.acme.cab.a", "rules/cab/a/helper.rego" + depth},
		"a library":       {"lib/helper.rego", "package lib.judge", "lib/helper.rego" + depth},
		"at the root":     {"rule.rego", "package verdict", "rule.rego" + depth},
		"other folder":    {"rules/cab/a/rule.rego", ruleOf("local.acme.cab.b", body), "rules/cab/a/rule.rego:14:1: its package is data.local.acme.cab.b, its folder says data.local.acme.cab.a"},
		"other pack":      {"rules/cab/a/rule.rego", ruleOf("local.bcme.cab.a", body), "rules/cab/a/rule.rego:14:1: its package is data.local.bcme.cab.a, its folder says data.local.acme.cab.a"},
		"shipped rule":    {"rules/mass/front_tyres/rule.rego", ruleOf("rules.mass.front_tyres", body), "rules/mass/front_tyres/rule.rego:14:1: its package is data.rules.mass.front_tyres, its folder says data.local.acme.mass.front_tyres"},
		"the verdict":     {"rules/cab/a/rule.rego", ruleOf("verdict", body), "rules/cab/a/rule.rego:14:1: its package is data.verdict, its folder says data.local.acme.cab.a"},
		"the judge":       {"rules/cab/a/rule.rego", ruleOf("lib.judge", body), "rules/cab/a/rule.rego:14:1: its package is data.lib.judge, its folder says data.local.acme.cab.a"},
		"area's name":     {"rules/The Cab/a/rule.rego", ruleOf(`local.acme["The Cab"].a`, body), `rules/The Cab/a/rule.rego:14:1: area is called "The Cab", needs lower-case letters, digits and _`},
		"rule's name":     {"rules/cab/a-b/rule.rego", ruleOf(`local.acme.cab["a-b"]`, body), `rules/cab/a-b/rule.rego:14:1: rule is called "a-b", needs lower-case letters, digits and _`},
		"nothing written": {"rules/cab/a/rule.rego", "# later\n", "rules/cab/a/rule.rego: empty module"},
		"rego of old":     {"rules/cab/a/rule.rego", "package local.acme.cab.a\n\nfindings[x] { x := 1 }", "rules/cab/a/rule.rego:3:1: `contains` keyword is required for partial set rules"},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, "pack a: "+c.want, acme.with(files{c.file: c.text}))
		})
	}
}

// A judgement that takes too long names the packs that may be to blame.
func TestPatience(t *testing.T) {
	// 16 to the power of 12 combinations.
	endless := acme.rule(`xs := split("a b c d e f g h i j k l m n o p", " ")

findings contains judge.always if count([1 | ` + strings.Repeat("some _ in xs; ", 12) + `false]) > 0`)
	b, err := openPacks(endless)
	require.NoError(t, err)
	b.patience = time.Millisecond
	e, err := b.Prepare(t.Context(), nil)
	require.NoError(t, err)
	_, err = e.Decide(t.Context(), smallInput())
	require.EqualError(t, err, "pack a: judging the build takes more than 1ms: one of its rules does not come to an end")
	var fault *PackError
	require.ErrorAs(t, err, &fault)

	cancelled, cancel := context.WithCancel(t.Context())
	cancel()
	_, err = e.Decide(cancelled, smallInput())
	require.ErrorIs(t, err, context.Canceled)
}

// A rule that contradicts itself stops the run; it is not passed over.
func TestRuleStops(t *testing.T) {
	b, err := openPacks(acme.rule(`findings := set() if judge.ids("build.work") == set()

findings := {judge.always}`))
	require.NoError(t, err)
	e, err := b.Prepare(t.Context(), nil)
	require.NoError(t, err)
	_, err = e.Decide(t.Context(), smallInput())
	require.EqualError(t, err, "pack a: "+ruleFile+":20:1: rule data.local.acme.cab.wheelbase_kept.findings produced conflicting values")
}

// smallInput is an input document of a build that says nothing.
func smallInput() map[string]any {
	return map[string]any{
		"build": map[string]any{
			"waivers": map[string]any{"missing": "waivers"}, "work": map[string]any{"missing": "work"},
		},
		"figures": map[string]any{}, "evidence": map[string]any{}, "regions": []any{},
		"hold": "plan", "today": "2026-11-25", "block_on": []string{"must"},
	}
}
