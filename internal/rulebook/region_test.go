package rulebook

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const xz = `code: XZ
name: Invented waters
reviewed: 2026-11-25
review_months: 12
authorities:
  - name: Harbour office (invented)
    decides: everything
`

// harbour adds the regions XZ and, below it, XZ-N. XZ is an ISO 3166-1 code
// that users may assign.
var harbour = files{
	"pack.yaml":                  "name: acme\nversion: \"1.0\"\n",
	"regions/xz/region.yaml":     xz,
	"regions/xz-n/region.yaml":   strings.Replace(xz, "code: XZ\n", "code: XZ-N\ninherits: XZ\n", 1),
	"regions/xz/vin/rule.rego":   must("local.acme.xz.vin"),
	"regions/xz-n/vin/rule.rego": must(`local.acme["xz-n"].vin`),
}

func must(pkg string) string {
	text := ruleOf(pkg, `findings contains judge.present_at("build.chassis.vin", "plan")`)
	return strings.NewReplacer("level: should", "level: must", "basis: common-practice", "basis: own-record").Replace(text)
}

func TestChain(t *testing.T) {
	b, err := openPacks(harbour)
	require.NoError(t, err)
	for code, want := range map[string]string{
		"":      "",
		"US":    "US",
		"XZ":    "XZ",
		"XZ-N":  "XZ XZ-N",  // most general first
		"XZ-S":  "XZ -XZ-S", // no pack describes it, what it lies in is known
		"US-ZZ": "US -US-ZZ",
		"QQ":    "-QQ",
		"QQ-1":  "-QQ-1",
	} {
		chain, err := b.Chain(code)
		require.NoError(t, err)
		var got []string
		for _, r := range chain {
			if r.Pack {
				got = append(got, r.Code)
			} else {
				got = append(got, "-"+r.Code)
			}
		}
		require.Equal(t, want, strings.Join(got, " "), code)
	}
	for _, code := range []string{"us", "USA", "US_CA", "US-", "US-CALI", "California", "US-CA ", "-CA"} {
		_, err := b.Chain(code)
		require.EqualError(t, err, `"`+code+`" is not an ISO 3166 code: write a state or province such as US-CA, or a country such as GB`)
	}
}

func TestRegionRefused(t *testing.T) {
	for name, c := range map[string]struct {
		change files
		want   string
	}{
		"code":          {files{"regions/xz/region.yaml": strings.Replace(xz, "XZ", "Xz", 1)}, `regions/xz/region.yaml: code is "Xz", needs an ISO 3166 code such as US or US-CA`},
		"no name":       {files{"regions/xz/region.yaml": strings.Replace(xz, "name: Invented waters", "", 1)}, "regions/xz/region.yaml: region XZ needs a name and at least one authority"},
		"reviewed":      {files{"regions/xz/region.yaml": strings.Replace(xz, "2026-11-25", "soon", 1)}, `regions/xz/region.yaml: reviewed is "soon", needs a date such as 2026-11-25`},
		"review age":    {files{"regions/xz/region.yaml": strings.Replace(xz, "months: 12", "months: 0", 1)}, "regions/xz/region.yaml: review_months is 0, needs the months from 1 to 60 after which the sources are read again"},
		"paper":         {files{"regions/xz/region.yaml": xz + "paper: legal\n"}, `regions/xz/region.yaml: paper is "legal", needs a4 or letter`},
		"units":         {files{"regions/xz/region.yaml": xz + "units: metric\n"}, `regions/xz/region.yaml: units is "metric", needs si, customary or both`},
		"zones":         {files{"regions/xz/region.yaml": xz + "zones: {names: [North quay]}\n"}, "regions/xz/region.yaml: zones need names, what they mean, the list they were read from and the day it was reviewed"},
		"unknown key":   {files{"regions/xz/region.yaml": xz + "    office: x\n"}, `regions/xz/region.yaml:8:5: unknown key "office": accepted are name, decides`},
		"folder":        {files{"regions/xy/region.yaml": xz, "regions/xz/region.yaml": ""}, "regions/xy/region.yaml: region XZ is described in regions/xz/region.yaml"},
		"elsewhere":     {files{"rules/region.yaml": xz, "regions/xz/region.yaml": ""}, "rules/region.yaml: region XZ is described in regions/xz/region.yaml"},
		"a shipped one": {files{"regions/us/region.yaml": strings.Replace(xz, "XZ", "US", 1)}, "regions/us/region.yaml: region US is defined already: a pack may add rules to it, not replace it"},
		"inherits":      {files{"regions/xz/region.yaml": xz + "inherits: usa\n"}, `regions/xz/region.yaml: inherits "usa", needs an ISO 3166 code such as US`},
		"of nobody":     {files{"regions/xz/region.yaml": xz + "inherits: QQ\n"}, "region XZ inherits QQ, which no pack describes"},
		"itself":        {files{"regions/xz/region.yaml": xz + "inherits: XZ-N\n"}, "region XZ inherits itself"},
		"no region":     {files{"regions/xy/vin/rule.rego": must("local.acme.xy.vin")}, "regions/xy/vin/rule.rego:14:1: no region.yaml defines XY"},
		"capitals":      {files{"regions/XZ/vin/rule.rego": must("local.acme.XZ.vin")}, "regions/XZ/vin/rule.rego:14:1: no region.yaml defines XZ"},
		"no must":       {files{"regions/xz/vin/rule.rego": ""}, "region XZ has no rule at level must: nothing there could stop a build"},
		"not collected": {files{"regions/xz/asked/rule.rego": question("local.acme.xz.asked")}, "local/acme/xz/asked is a question, and no rule of region XZ collects questions"},
	} {
		t.Run(name, func(t *testing.T) { refused(t, "pack a: "+c.want, harbour.with(c.change)) })
	}
	refused(t, "pack b: regions/xz/region.yaml: region XZ is defined already: a pack may add rules to it, not replace it",
		harbour, files{"pack.yaml": "name: other\nversion: 1.0\n", "regions/xz/region.yaml": xz})
}

func question(pkg string) string {
	text := ruleOf(pkg, "applies := judge.always")
	return strings.NewReplacer("level: should", "level: note",
		"#   waivable: true", "#   question: {ask: \"May we do this at all?\", office: Harbour office (invented)}\n#   waivable: true").Replace(text)
}
