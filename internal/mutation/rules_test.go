package mutation

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// testRules puts one fault after the other into each shipped rule: a comparator
// turned round, another value of the same kind, another word, a line lost. A
// case of the rule must notice.
func testRules(t *testing.T, l *law, cases map[string][]trial) {
	lookup := paths(l.book)
	var all []variant
	for _, meta := range l.book.Catalogue() {
		faults := append(slices.Clone(logic), lookup, words(meta),
			exchange(`\blimit_m(?:ax|in)\b`, "limit_max", "limit_min"),
			exchange(`\b(?:true|false)\b`, "true", "false"))
		for _, m := range mutants(file(meta), l.text[file(meta)], faults...) {
			all = append(all, variant{mutant: m, rule: meta})
		}
	}
	var tried, left []variant
	for some := range slices.Chunk(all, together) {
		compiler, some := l.sideBySide(t, some)
		tried = append(tried, some...)
		left = append(left, survivors(some, func(v variant) bool {
			k, err := l.court(t.Context(), compiler, map[string]any{"catalogue": l.alone(v.rule.ID, v.at)})
			return err != nil || slices.ContainsFunc(cases[v.rule.ID], func(c trial) bool { return c.notices(t.Context(), k) })
		})...)
	}
	requireNoticed(t, plain(tried), plain(left))
}

// together is the number of variants compiled at once: few take longer, many
// take more memory than a runner has.
const together = 300

func plain(all []variant) []mutant {
	out := make([]mutant, len(all))
	for i, v := range all {
		out[i] = v.mutant
	}
	return out
}

// variant is a mutant of a rule, in a package of its own.
type variant struct {
	mutant
	rule *rulebook.Meta
	at   []string
}

// sideBySide compiles variants side by side, which takes little longer than one
// alone, and leaves out those that are no Rego or do not compile.
func (l *law) sideBySide(t *testing.T, all []variant) (*ast.Compiler, []variant) {
	t.Helper()
	modules := map[string]*ast.Module{}
	byName := map[string]variant{}
	for i, v := range all {
		name := strconv.Itoa(i)
		m, err := ast.ParseModule(name, v.text)
		if err != nil {
			continue
		}
		last := len(m.Package.Path) - 1
		v.at = slices.Clone(v.rule.At)
		v.at[len(v.at)-1] += "_" + name
		m.Package.Path[last] = ast.StringTerm(v.at[len(v.at)-1])
		modules[name], byName[name] = m, v
	}
	for {
		compiler, faults := l.compile(modules)
		if len(faults) == 0 {
			return compiler, slices.Collect(maps.Values(byName))
		}
		for _, fault := range faults {
			require.Contains(t, modules, fault.Location.File, "%v", fault)
			delete(byName, fault.Location.File)
		}
		maps.DeleteFunc(modules, func(name string, _ *ast.Module) bool { _, kept := byName[name]; return !kept })
	}
}

// words exchanges each word of a rule for one that means nothing. The code of a
// reason and the subject of a finding are wording: cases ask for neither.
func words(meta *rulebook.Meta) swap {
	return swap{regexp.MustCompile(`(?:\babout\(\s*)?"[^"]*"`), func(found string) []string {
		word := strings.Trim(found, `"`)
		_, reason := meta.Reasons[word]
		if strings.HasPrefix(found, "about") || reason || strings.Contains(word, ".") {
			return nil
		}
		return []string{`"no-such-word"`}
	}}
}

// paths exchanges each path for another one of the same kind: the next in the
// order of the alphabet.
func paths(book *rulebook.Book) swap {
	kinds := map[string][]string{}
	kind := map[string]string{}
	worth := map[string]float64{} // of limits: one of the same value changes nothing
	add := func(path, k string) {
		kinds[k] = append(kinds[k], path)
		kind[path] = k
	}
	for _, f := range sheet.All() {
		add(rulebook.FigurePath(f), "figure of "+string(f.Kind)+" per "+f.Per)
	}
	for _, limit := range book.Limits() {
		if !strings.HasPrefix(limit.Path, "limits.spread.") {
			add(limit.Path, "limit of "+string(limit.Value.Kind))
			worth[limit.Path], _ = limit.Value.Floats()
		}
	}
	walk(book.Form.Shape(), "build", func(path string, s *schema.Shape) {
		add(path, strings.Join([]string{"leaf", s.Leaf, string(s.Quantity), list(path)}, " "))
	})
	for _, all := range kinds {
		slices.Sort(all)
	}
	return swap{regexp.MustCompile(`"(?:build|figures|limits)\.[^"]*"`), func(found string) []string {
		path := strings.Trim(found, `"`)
		same := kinds[kind[path]]
		at := slices.Index(same, path)
		for step := 1; step < len(same); step++ {
			other := same[(at+step)%len(same)]
			if value, limit := worth[path]; !limit || worth[other] != value {
				return []string{`"` + other + `"`}
			}
		}
		return nil
	}}
}

// list is the path up to its last star.
func list(path string) string {
	return path[:strings.LastIndex(path, "*")+1]
}

// walk calls f for every leaf below a shape, with the path that rules use.
func walk(s *schema.Shape, path string, f func(string, *schema.Shape)) {
	if s.Type == schema.Leaf {
		f(path, s)
		return
	}
	if s.Type == schema.List {
		path += ".*"
	}
	for _, field := range s.Fields {
		walk(field, path+"."+field.Name, f)
	}
}
