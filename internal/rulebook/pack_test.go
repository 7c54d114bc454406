package rulebook

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
	"trialfit/policies"
)

func TestPackOpens(t *testing.T) {
	shipped, err := openPacks()
	require.NoError(t, err)
	b, err := openPacks(acme, files{"pack.yaml": "name: limits_only\nversion: 1.2.3\nneeds: 0.1\n", "limits.yaml": "limits: {mass.axle_margin: 6 %}"})
	require.NoError(t, err)
	require.Len(t, b.Rules, len(shipped.Rules)+1)
	m := b.Rules["local/acme/cab/wheelbase_kept"]
	require.NotNil(t, m)
	require.Equal(t, []string{"local", "acme", "cab", "wheelbase_kept"}, m.At)
	require.Equal(t, "acme", m.Pack)
	require.Equal(t, "cab", m.Area)
	require.Empty(t, m.Region)
	require.Equal(t, []string{"build.chassis.wheelbase"}, m.Reads)
}

// What a pack holds beside its slots is the author's own.
func TestPackKeepsItsOwnFiles(t *testing.T) {
	_, err := openPacks(acme.with(files{
		"README.md":                               "how we work",
		".git/limits.yaml":                        "not: ours",
		"docs/limits.yaml.txt":                    "notes",
		"examples/sheet.yaml":                     "a: b",
		"rules/cab/wheelbase_kept/rule_test.rego": "not even Rego",
		"rules/cab/wheelbase_kept/cases.yaml":     "cases: []",
	}))
	require.NoError(t, err)
}

func TestPackFileRefused(t *testing.T) {
	for name, c := range map[string]struct{ pack, want string }{
		"missing":        {"", "has no pack.yaml"},
		"empty":          {"# nothing\n", "pack.yaml: is empty"},
		"no name":        {"version: 1.0\n", `pack.yaml: name is "", needs lower-case letters, digits and _`},
		"bad name":       {"name: Acme-Shop\nversion: 1.0\n", `pack.yaml: name is "Acme-Shop", needs lower-case letters, digits and _`},
		"name of ours":   {"name: trialfit\nversion: 1.0\n", `the name "trialfit" is taken by another pack`},
		"name of limits": {"name: mass\nversion: 1.0\n", `the name "mass" is taken by an area of shipped limits`},
		"no version":     {"name: acme\n", `pack.yaml: version is "", needs a version such as 1.0`},
		"bad version":    {"name: acme\nversion: v1\n", `pack.yaml: version is "v1", needs a version such as 1.0`},
		"bad needs":      {"name: acme\nversion: 1.0\nneeds: latest\n", `pack.yaml: needs is "latest", needs a version of trialfit such as 0.1.0`},
		"too new":        {"name: acme\nversion: 1.0\nneeds: 0.10\n", `pack.yaml: needs trialfit 0.10 or newer, this is 0.1.0`},
		"unknown key":    {"name: acme\nversion: 1.0\nneed: 0.1\n", `pack.yaml:3:1: unknown key "need", did you mean "needs"?`},
		"strange key":    {"name: acme\nlicence_holder: me\n", `pack.yaml:2:1: unknown key "licence_holder": accepted are name, version, contact, needs, evidence_kinds`},
		"twice":          {"name: acme\nversion: 1.0\nname: bcme\n", `pack.yaml:3:1: key "name" stands twice`},
		"a list":         {"[name, acme]\n", "pack.yaml:1:1: found a list, needed keys such as name"},
		"list as name":   {"name: [acme]\n", "pack.yaml:1:7: found a list, needed text"},
		"text as list":   {"evidence_kinds: spray-card\n", `pack.yaml:1:17: found "spray-card", needed a list`},
		"no YAML":        {"name: acme\n\tversion: 1.0\n", "pack.yaml:2: found a tab character that violates indentation"},
		"two documents":  {acmePack + "---\nname: other\n", "pack.yaml: holds more than one YAML document"},
		"evidence kind":  {acmePack + "evidence_kinds: [Spray Card]\n", `pack.yaml: evidence kind is "Spray Card", needs lower-case words joined by hyphens`},
		"shipped kind":   {acmePack + "evidence_kinds: [photograph]\n", `pack.yaml: evidence kind "photograph" is there already`},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, "pack a: "+c.want, acme.with(files{"pack.yaml": c.pack}))
		})
	}
}

func TestPackRefused(t *testing.T) {
	other := acme.with(files{"pack.yaml": acmePack + "contact: another shop\n"})
	refused(t, `pack b: the name "acme" is taken by another pack`, acme, other)
	refused(t, "pack a: is empty: it holds no rules, limits, manifest extension or evidence kinds", files{"pack.yaml": acmePack})
	refused(t, `pack a: limits.yml: a pack has no such file, did you mean "limits.yaml"?`, acme.with(files{"limits.yml": "limits: {}"}))
	refused(t, `pack a: rules/cab/readings.yaml: a pack has no such file, did you mean "region.yaml"?`,
		acme.with(files{"rules/cab/readings.yaml": "front_axle_mass: {depends: []}"}))
}

func TestPackFolderRefused(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "acme")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	for folder, want := range map[string]string{file: "is not a folder", filepath.Join(dir, "nowhere"): "does not exist"} {
		_, err := Open(sheet.All(), folder)
		require.EqualError(t, err, "pack "+folder+": "+want)
		var fault *PackError
		require.ErrorAs(t, err, &fault)
	}
}

func TestPackHoldsItsOwnFiles(t *testing.T) {
	for mode, want := range map[fs.FileMode]string{
		fs.ModeSymlink:   "rules/other is a symbolic link: a pack holds its own files",
		fs.ModeNamedPipe: "rules/other is not a regular file",
	} {
		local := acme.fs().(fstest.MapFS)
		local["rules/other"] = &fstest.MapFile{Mode: mode, Data: []byte("../..")}
		_, err := open(sheet.All(), policies.FS, []fs.FS{local}, []string{"a"})
		require.EqualError(t, err, "pack a: "+want)
	}
	// The same on disk, where the link is followed by whoever opens it.
	dir := t.TempDir()
	require.NoError(t, os.CopyFS(dir, acme.fs()))
	require.NoError(t, os.Symlink(t.TempDir(), filepath.Join(dir, "rules", "elsewhere")))
	_, err := Open(sheet.All(), dir)
	require.EqualError(t, err, "pack "+dir+": rules/elsewhere is a symbolic link: a pack holds its own files")
}

func TestExtensionRefused(t *testing.T) {
	closed := func(properties string) string {
		return `{"type": "object", "additionalProperties": false, "properties": {` + properties + `}}`
	}
	for name, c := range map[string]struct{ schema, want string }{
		"no JSON":        {"{\n  \"type\": object}", "manifest.json:2:11: is not JSON: invalid character 'o' looking for beginning of value"},
		"cut off":        {"{", "manifest.json:1:1: is not JSON: unexpected end of JSON input"},
		"a list":         {"[]", "manifest.json: needs a JSON object: the schema of x-acme"},
		"null":           {"null", "manifest.json: needs a JSON object: the schema of x-acme"},
		"open":           {`{"type": "object", "properties": {}}`, "manifest.json: the schema of x-acme: x-acme: an object that is not closed"},
		"open below":     {closed(`"a": {"type": "object", "properties": {}}`), "manifest.json: the schema of x-acme: x-acme: a: an object that is not closed"},
		"own defs":       {`{"$defs": {}, ` + closed("")[1:], "manifest.json: the schema of x-acme has its own $defs; use those of the manifest"},
		"leaf":           {`{"$ref": "#/$defs/mass"}`, "manifest.json: the schema of x-acme is not an object"},
		"unknown ref":    {closed(`"a": {"$ref": "#/$defs/mas"}`), `manifest.json: the schema of x-acme: x-acme: a: unknown definition "#/$defs/mas"`},
		"number":         {closed(`"a": {"type": "number"}`), "manifest.json: the schema of x-acme: x-acme: a: is neither an object, a list nor a leaf"},
		"key twice":      {closed(`"a": {"$ref": "#/$defs/mass"}, "a": {"$ref": "#/$defs/text"}`), `manifest.json: the schema of x-acme: key "a" stands twice`},
		"reserved field": {closed(`"missing": {"$ref": "#/$defs/mass"}`), "manifest.json: x-acme.missing: a field is called by lower-case letters, digits and _, and not missing, none or joints"},
		"dotted field":   {closed(`"a.b": {"$ref": "#/$defs/mass"}`), "manifest.json: x-acme.a.b: a field is called by lower-case letters, digits and _, and not missing, none or joints"},
		"items, no id": {closed(`"list": {"type": "array", "items": ` + closed(`"a": {"$ref": "#/$defs/mass"}`) + `}`),
			"manifest.json: x-acme.list: items of a list need an id: name it under required"},
	} {
		t.Run(name, func(t *testing.T) {
			refused(t, "pack a: "+c.want, acme.with(files{"manifest.json": c.schema}))
		})
	}
}
