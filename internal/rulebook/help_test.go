package rulebook

import (
	"io/fs"
	"maps"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
	"trialfit/policies"
)

// files are those of a pack, by path. All packs here are invented.
type files map[string]string

const acmePack = "name: acme\nversion: \"1.0\"\n"

// acme is a whole small pack; tests break it in one place at a time.
var acme = files{
	"pack.yaml":                          acmePack,
	"rules/cab/wheelbase_kept/rule.rego": ruleOf("local.acme.cab.wheelbase_kept", `findings contains judge.present_at("build.chassis.wheelbase", "plan")`),
}

// with returns the pack with files replaced, or taken away where the text is "".
func (f files) with(changes files) files {
	out := maps.Clone(f)
	for name, text := range changes {
		out[name] = text
		if text == "" {
			delete(out, name)
		}
	}
	return out
}

// rule returns acme with another body of its rule.
func (f files) rule(body string) files {
	return f.with(files{"rules/cab/wheelbase_kept/rule.rego": ruleOf("local.acme.cab.wheelbase_kept", body)})
}

// replaced returns acme with a text of its rule replaced.
func (f files) replaced(t *testing.T, old, new string) files {
	const name = "rules/cab/wheelbase_kept/rule.rego"
	require.Equal(t, 1, strings.Count(f[name], old), "%q in the rule", old)
	return f.with(files{name: strings.Replace(f[name], old, new, 1)})
}

// ruleOf writes a rule with metadata that is whole; its body starts on line 18.
func ruleOf(pkg, body string) string {
	return `# METADATA
# title: the wheelbase is written down
# description: Nothing can be placed on a frame whose length nobody knows.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: common practice of an invented shop
#   outcomes: [met, not met, unproven, not applicable]
#   remedy: measure the wheelbase
#   reviewed: 2026-11-25
#   since: "1.0"
#   waivable: true
package ` + pkg + `

import data.lib.judge

` + body + "\n"
}

func (f files) fs() fs.FS {
	out := fstest.MapFS{}
	for name, text := range f {
		out[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return out
}

// openPacks opens the shipped rules with local packs in folders "a", "b" …
func openPacks(packs ...files) (*Book, error) {
	var locals []fs.FS
	var names []string
	for i, p := range packs {
		locals = append(locals, p.fs())
		names = append(names, string(rune('a'+i)))
	}
	return open(sheet.All(), policies.FS, locals, names)
}

// refused demands that a pack is refused with exactly this message, on one line.
func refused(t *testing.T, want string, packs ...files) {
	t.Helper()
	_, err := openPacks(packs...)
	require.EqualError(t, err, want)
	var fault *PackError
	require.ErrorAs(t, err, &fault)
	require.NotContains(t, err.Error(), "\n")
}
