package mutation

import (
	"bytes"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"trialfit/internal/check"
	"trialfit/internal/figures"
	"trialfit/internal/figures/sheet"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
	"trialfit/internal/verdict"
)

const (
	passing    = "testdata/passing/passing.build.yaml"
	unreadFile = "testdata/unread.txt"
)

// TestDeletion takes every value, every basis, every reference to evidence, and
// every list and section out of a build that passes, one at a time; in a list
// from the first item that has it. Without it the build no longer passes. What
// may go unnoticed is listed in testdata/unread.txt, so that the list is looked
// at when it changes: a must never stops reading a value unseen.
func TestDeletion(t *testing.T) {
	t.Parallel()
	c := checker(t, "inspection")
	text, err := os.ReadFile(passing)
	require.NoError(t, err)
	m, err := c.Loader.File(passing)
	require.NoError(t, err)
	whole, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	require.Empty(t, strings.Join(unmet(whole), "\n"), "a new rule? let %s meet it", passing)
	require.Equal(t, verdict.Pass, whole.Verdict.Verdict)

	d := deletion{t: t, checker: c, text: text, whole: whole, law: read(t, c.Book), courts: map[string]*court{}}
	d.asked = d.named()
	all := places(m)
	listed := lines(t, unreadFile)
	var unread []string
	for _, name := range listed {
		require.Contains(t, all, name, "%s lists what is not in the build", unreadFile)
		unread = append(unread, all[name])
	}
	var fresh, stale []string
	together := d.passes(unread...)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		switch {
		case !slices.Contains(listed, name) && d.passes(all[name]):
			fresh = append(fresh, name)
		case slices.Contains(listed, name) && !together && !d.passes(all[name]):
			stale = append(stale, name)
		}
	}
	assert.Empty(t, strings.Join(fresh, "\n"), "passes without it, and is not in %s", unreadFile)
	require.Empty(t, strings.Join(stale, "\n"), "is noticed when it is taken away, and must leave %s", unreadFile)
	require.True(t, together, "what is listed may each be taken away, but not all at once")
	for _, name := range listed {
		if enough[name] == "" {
			require.Empty(t, d.asked[all[name]], "a must reads %s by name, and passes without it", name)
		}
	}
}

// enough says why a must that reads a place may pass without it all the same.
var enough = map[string]string{
	"engine.induction":        "only to say that it breathes by itself leaves a rule out",
	"bay.zones.*.also_wanted": "what else wanted the place has found another, whatever it was",
}

// deletion is the passing build about to be taken apart.
type deletion struct {
	t       *testing.T
	checker *check.Checker
	text    []byte
	whole   *check.Report
	law     *law
	// asked holds the musts that name a place, themselves or through a figure.
	asked    map[string][]string
	compiler *ast.Compiler
	courts   map[string]*court
}

// passes says whether the build passes without some places. One that can't be
// read does not. The musts that name a place are asked first, because one that
// is no longer met settles it, and the whole verdict takes longest.
func (d *deletion) passes(places ...string) bool {
	m, err := d.checker.Loader.Read(bytes.NewReader(less(d.t, d.text, places...)), passing, filepath.Dir(passing))
	if err != nil {
		require.ErrorAs(d.t, err, &manifest.Problems{})
		return false
	}
	r, err := d.checker.Prepare(m)
	require.NoError(d.t, err)
	input, err := ast.InterfaceToValue(r.Input)
	require.NoError(d.t, err)
	for _, place := range places {
		for _, rule := range d.suspects(place) {
			v, err := d.court(rule).judge(d.t.Context(), input)
			require.NoError(d.t, err)
			judged, inForce := v.Rules[rule] // those of a region are not where none is named
			if inForce && judged.Outcome != verdict.Met {
				require.Contains(d.t, []string{verdict.NotMet, verdict.Unproven}, judged.Outcome, "%s without %s", rule, place)
				return false
			}
		}
	}
	require.NoError(d.t, d.checker.Judge(d.t.Context(), r))
	return r.Verdict.Verdict == verdict.Pass
}

// suspects are the rules that name a place, or something in it.
func (d *deletion) suspects(place string) []string {
	path, _, _ := strings.Cut(place, " ")
	var rules []string
	for _, named := range slices.Sorted(maps.Keys(d.asked)) {
		if named == path || strings.HasPrefix(named, path+".") {
			rules = append(rules, d.asked[named]...)
		}
	}
	slices.Sort(rules)
	return slices.Compact(rules)
}

// court sits for one rule.
func (d *deletion) court(rule string) *court {
	if d.compiler == nil {
		var faults ast.Errors
		d.compiler, faults = d.law.compile(nil)
		require.Empty(d.t, faults)
	}
	if d.courts[rule] == nil {
		k, err := d.law.court(d.t.Context(), d.compiler, map[string]any{"catalogue": d.law.alone(rule, d.checker.Book.Rules[rule].At)})
		require.NoError(d.t, err)
		d.courts[rule] = k
	}
	return d.courts[rule]
}

// unmet lists the requirements and the advice that a build does not meet yet,
// each with what it lacks.
func unmet(r *check.Report) []string {
	var all []string
	for _, id := range slices.Sorted(maps.Keys(r.Verdict.Rules)) {
		rule := r.Verdict.Rules[id]
		if !rule.Due || rule.Level == "note" || rule.Outcome == verdict.Met || rule.Outcome == verdict.NotApplicable {
			continue
		}
		for _, f := range rule.Findings {
			if f.Outcome == verdict.NotMet || f.Outcome == verdict.Unproven {
				all = append(all, fmt.Sprintf("%s %s: %s %s %v", rule.Level, id, f.Subject, f.Outcome, append(f.Missing, f.Weak...)))
			}
		}
	}
	return all
}

// places returns what can be taken away, by its pattern: the path of a leaf,
// list or section that is given, and of a leaf in its long form "PATH basis" and
// "PATH evidence". List items stay: a build with one fuse less is another build,
// not the same one less well known.
func places(m *manifest.Manifest) map[string]string {
	first := map[string]string{}
	add := func(path, field string) {
		if name := m.Pattern(path) + field; first[name] == "" {
			first[name] = path + field
		}
	}
	m.Root.Walk(func(n *manifest.Node) {
		if above := m.Node(n.Path[:max(0, strings.LastIndexByte(n.Path, '.'))]); above != nil && above.State == manifest.None {
			return // nothing is written below none
		}
		derived := n.WrittenAt != "" || slices.Contains(strings.Split(n.Path, "."), schema.Joints.Name)
		if n.State == manifest.Missing || derived || n.Path == "" || n.ID != "" || n.Shape.Leaf == schema.LeafVersion || n.Shape.Name == "id" {
			return
		}
		add(n.Path, "")
		if n.Value == nil {
			return
		}
		if n.Value.Basis != "" && n.Value.Basis != manifest.DefaultBasis && n.Shape.QuantityOf == "" {
			add(n.Path, " basis")
		}
		if len(n.Value.Evidence) > 0 {
			add(n.Path, " evidence")
		}
	})
	return first
}

// less is a manifest with some places taken away.
func less(t *testing.T, text []byte, places ...string) []byte {
	t.Helper()
	var doc yaml.Node
	require.NoError(t, yaml.Unmarshal(text, &doc))
	for _, place := range places {
		steps := strings.FieldsFunc(place, func(r rune) bool { return r == '.' || r == ' ' })
		gone := cut(doc.Content[0], steps)
		require.True(t, gone || len(places) > 1, "%s is not in the file", place) // it may lie in another
	}
	left, err := yaml.Marshal(&doc)
	require.NoError(t, err)
	return left
}

// cut takes what lies at a path of keys and item ids out of a tree.
func cut(at *yaml.Node, steps []string) bool {
	if at.Kind == yaml.SequenceNode {
		for _, item := range at.Content {
			if i := key(item, "id"); i >= 0 && item.Content[i+1].Value == steps[0] {
				return cut(item, steps[1:])
			}
		}
		return false
	}
	i := key(at, steps[0])
	switch {
	case i < 0:
		return false
	case len(steps) > 1:
		return cut(at.Content[i+1], steps[1:])
	}
	at.Content = slices.Delete(at.Content, i, i+2)
	return true
}

// key is where a key stands in a mapping, -1 when it does not.
func key(mapping *yaml.Node, name string) int {
	for i := 0; i+1 < len(mapping.Content); i += 2 {
		if mapping.Kind == yaml.MappingNode && mapping.Content[i].Value == name {
			return i
		}
	}
	return -1
}

// named returns the musts that are met by the whole build, by the places that
// they name.
func (d *deletion) named() map[string][]string {
	byPattern := map[string][]string{}
	for _, meta := range d.checker.Book.Catalogue() {
		rule := d.whole.Verdict.Rules[meta.ID]
		if !rule.Due || rule.Level != "must" || rule.Outcome != verdict.Met {
			continue
		}
		patterns := map[string]bool{}
		for _, path := range meta.Reads {
			if path, ok := strings.CutPrefix(path, "build."); ok {
				patterns[path] = true
			}
			for _, f := range sheet.All() {
				if rulebook.FigurePath(f) == path {
					needs(f, patterns)
				}
			}
		}
		for p := range patterns {
			byPattern[p] = append(byPattern[p], meta.ID)
		}
	}
	byPlace := map[string][]string{}
	d.whole.Manifest.Root.Walk(func(n *manifest.Node) {
		if rules := byPattern[d.whole.Manifest.Pattern(n.Path)]; n.State != manifest.Missing && len(rules) > 0 {
			byPlace[n.Origin()] = append(byPlace[n.Origin()], rules...)
		}
	})
	return byPlace
}

// needs adds the paths that a figure is computed from.
func needs(f *figures.Figure, patterns map[string]bool) {
	for _, in := range f.Inputs {
		patterns[threadPart.ReplaceAllString(in.Path, "")] = true
	}
	for _, condition := range f.Conditions {
		needs(condition.Figure, patterns)
	}
}

var threadPart = regexp.MustCompile(`\.(?:` + strings.Join(schema.ThreadParts, "|") + `)$`)

// still are the places whose absence says something at an early hold point: what
// has not come yet.
var still = map[string]string{
	"mass/baseline_weighed":   "outgoing_engine outgoing_engine.date", // until the mockup the old engine may still be in
	"emissions/smoke_default": "engine engine.smoke_plate",            // emissions/smoke_plate asks for it then
	"records/possible_values": "engine engine.mass",                   // a value that is gone is no longer strange
}

// testLess takes values out of the first case of each rule that is not met. The
// rule may become unproven; it never becomes met, or not applicable.
func testLess(t *testing.T, l *law, base *check.Checker, cases map[string][]trial) {
	compiler, faults := l.compile(nil)
	require.Empty(t, faults)
	tried := 0
	for _, meta := range l.book.Catalogue() {
		k, err := l.court(t.Context(), compiler, map[string]any{"catalogue": l.alone(meta.ID, meta.At)})
		require.NoError(t, err)
		first := slices.IndexFunc(cases[meta.ID], func(c trial) bool { return c.outcome == verdict.NotMet })
		if first < 0 {
			continue
		}
		c := cases[meta.ID][first]
		checker := c.Checker(base)
		for name, place := range places(c.report.Manifest) {
			// Without its basis a value is taken as less exact, and agrees with more.
			if strings.Contains(name, " ") || slices.Contains(strings.Fields(still[meta.ID]), name) {
				continue
			}
			m, err := checker.Loader.Read(bytes.NewReader(less(t, []byte(c.Manifest), place)), c.report.Manifest.File, c.report.Manifest.Dir)
			if err != nil {
				continue
			}
			r, err := checker.Prepare(m)
			if err != nil {
				continue
			}
			input, err := ast.InterfaceToValue(r.Input)
			require.NoError(t, err)
			v, err := k.judge(t.Context(), input)
			require.NoError(t, err)
			rule, inForce := v.Rules[meta.ID]
			if !inForce && strings.HasPrefix(name, "registration") {
				continue // a region's rule; that no region is examined blocks by itself
			}
			require.Contains(t, []string{verdict.NotMet, verdict.Unproven}, rule.Outcome, "%s: %s without %s", meta.ID, c.Name, name)
			tried++
		}
	}
	require.NotZero(t, tried)
}

// lines reads a list from a file, without comments.
func lines(t *testing.T, file string) []string {
	t.Helper()
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	var all []string
	for line := range strings.Lines(string(data)) {
		if line = strings.TrimSpace(line); line != "" && !strings.HasPrefix(line, "#") {
			all = append(all, line)
		}
	}
	return all
}
