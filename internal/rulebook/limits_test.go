package rulebook

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
	"trialfit/policies"
)

const ownLimit = `area: acme
limits:
  longest:
    title: longest wheelbase that fits the jig
    value: 130 in
    kind: length
    tighter: lower
    source: the jig
    basis: own-record
    reviewed: 2026-11-25
`

func tightened(text string) files { return files{"pack.yaml": acmePack, "limits.yaml": text} }

func TestTighten(t *testing.T) {
	shipped, err := openPacks()
	require.NoError(t, err)
	require.Equal(t, "5 %", shipped.Limit("limits.mass.axle_margin").Value.Text)
	b, err := openPacks(
		tightened("limits:\n  mass.axle_margin: 5 %\n  mass.front_share: 0.6\n  spread.mass_measured: 2 lb\n"),
		files{"pack.yaml": "name: strict\nversion: 1.0\n", "limits.yaml": "limits: {mass.axle_margin: 7.5 %}"},
	)
	require.NoError(t, err)
	margin := b.Limit("limits.mass.axle_margin")
	require.Equal(t, "7.5 %", margin.Value.Text)
	require.Equal(t, "strict", margin.SetBy)
	require.Equal(t, shipped.Limit("limits.mass.axle_margin").Source, margin.Source)
	require.Equal(t, "0.6", b.Limit("limits.mass.front_share").Value.Text)
	_, floor := b.Spread("mass", "measured")
	kg, _ := floor.Float64()
	require.InDelta(t, 0.90718474, kg, 1e-12) // 2 lb; the international pound is 0.45359237 kg
	data, err := b.data()
	require.NoError(t, err)
	require.Equal(t, "7.5 %", data["limits"].(map[string]any)["mass"].(map[string]any)["axle_margin"].(map[string]any)["text"])
}

func TestTightenRefused(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"nothing":      {"limits: {}", "limits.yaml: sets no limit"},
		"a definition": {ownLimit, `limits.yaml:1:1: unknown key "area": accepted are limits`},
		"looser min":   {"limits:\n  mass.axle_margin: 4 %", "limits.yaml:2:21: mass.axle_margin: 4 % is looser than 5 %: a pack may only set it higher"},
		"looser max":   {"limits:\n  mass.front_share: 63 %", "limits.yaml:2:21: mass.front_share: 63 % is looser than 62 %: a pack may only set it lower"},
		"looser end":   {"limits:\n  mass.axle_margin: 4..6 %", "limits.yaml:2:21: mass.axle_margin: 4..6 % is looser than 5 %: a pack may only set it higher"},
		"spread":       {"limits:\n  spread.claimed: 1 %", "limits.yaml:2:19: spread.claimed: 1 % is looser than 3 %: a pack may only set it higher"},
		"unknown":      {"limits:\n  mass.axle_margins: 6 %", `limits.yaml:2:22: no limit is called "mass.axle_margins", did you mean "mass.axle_margin"?`},
		"section":      {"limits:\n  mass: {axle_margin: 6 %}", "limits.yaml:2:9: found a section, needed text"},
		"number":       {"limits:\n  mass.axle_margin: [6]", "limits.yaml:2:21: found a list, needed text"},
		"dimension":    {"limits:\n  mass.axle_margin: 6 kg", `limits.yaml:2:21: mass.axle_margin: "6 kg" is a mass, not a ratio: a ratio is written with no unit, % or :1`},
	} {
		t.Run(name, func(t *testing.T) { refused(t, "pack a: "+c.want, tightened(c.text)) })
	}
	refused(t, "pack b: limits.yaml:1:28: mass.axle_margin: 6 % is looser than 7 %, set by pack acme: a pack may only set it higher",
		tightened("limits: {mass.axle_margin: 7 %}"),
		files{"pack.yaml": "name: lax\nversion: 1.0\n", "limits.yaml": "limits: {mass.axle_margin: 6 %}"})
}

func TestOwnLimits(t *testing.T) {
	b, err := openPacks(acme.with(files{"rules/cab/limits.yaml": ownLimit}))
	require.NoError(t, err)
	l := b.Limit("limits.acme.longest")
	require.Equal(t, "130 in", l.Value.Text)
	require.Equal(t, "acme", l.SetBy)
}

func TestOwnLimitsRefused(t *testing.T) {
	for name, c := range map[string]struct{ old, new, want string }{
		"shipped area":  {"area: acme", "area: mass", `: area is "mass", needs "acme": the limits of a pack bear its name`},
		"no area":       {"area: acme", "area:", `: area is "", needs "acme": the limits of a pack bear its name`},
		"name":          {"longest:", "Longest-of-all:", `:4:5: limit is called "Longest-of-all", needs lower-case letters, digits and _`},
		"unknown key":   {"tighter:", "tightr:", `:7:5: unknown key "tightr", did you mean "tighter"?`},
		"kind":          {"kind: length", "kind: lenght", `:4:5: kind is "lenght", needs a kind of quantity such as length or ratio`},
		"tighter":       {"tighter: lower", "tighter: down", `:4:5: tighter is "down", needs lower or higher`},
		"no source":     {"source: the jig", "source:", ":4:5: needs a title and a source"},
		"basis":         {"basis: own-record", "basis: gut", `:4:5: basis is "gut", needs one of statute, regulation, agency-guidance, code-of-practice, standard, manufacturer, physics, own-record, handbook, common-practice, second-hand, memory`},
		"reviewed":      {"2026-11-25", "last year", `:4:5: reviewed is "last year", needs a date such as 2026-11-25`},
		"value":         {"130 in", "130", `:4:5: value: "130" has no unit: a length is written with mm, cm, m, in, ft, ...`},
		"defined twice": {"limits:\n", "limits:\n  longest: {}\n", `:4:3: key "longest" stands twice`},
	} {
		t.Run(name, func(t *testing.T) {
			require.Equal(t, 1, strings.Count(ownLimit, c.old))
			broken := strings.Replace(ownLimit, c.old, c.new, 1)
			refused(t, "pack a: rules/cab/limits.yaml"+c.want, acme.with(files{"rules/cab/limits.yaml": broken}))
		})
	}
	refused(t, "pack a: rules/doors/limits.yaml:4:5: limit limits.acme.longest is defined already",
		acme.with(files{"rules/cab/limits.yaml": ownLimit, "rules/doors/limits.yaml": ownLimit}))
}

// Every shipped limit is read by a rule or widens values; one that nobody
// reads would promise what it does not keep.
func TestShippedLimitsAreRead(t *testing.T) {
	b, err := open(sheet.All(), policies.FS, nil, nil)
	require.NoError(t, err)
	read := map[string]bool{}
	for _, m := range b.Catalogue() {
		for _, path := range m.Reads {
			read[path] = true
			if strings.HasPrefix(path, "limits.") {
				require.NotNil(t, b.Limit(path), "%s reads %s", m.ID, path)
			}
		}
	}
	for _, l := range b.Limits() {
		require.True(t, read[l.Path] || strings.HasPrefix(l.Path, "limits.spread."), "nothing reads %s", l.Path)
	}
}
