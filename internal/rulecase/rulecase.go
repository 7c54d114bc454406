// Package rulecase reads the cases.yaml beside each rule: small manifests with
// the outcome the rule must give and the lines it must point at.
package rulecase

import (
	"context"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/check"
	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
	"trialfit/internal/verdict"
)

// Case is one small manifest and what is expected of it.
type Case struct {
	// Rule is the id of the rule whose folder the case lies in.
	Rule string `yaml:"-"`
	Name string `yaml:"name"`
	// Outcome is that of the rule, all subjects rolled up.
	Outcome string `yaml:"outcome"`
	// Hold is the hold point judged at; the rule's own where it is empty.
	Hold  string `yaml:"hold"`
	Today string `yaml:"today"`
	// Files are the evidence files of the case, by path; their digests are
	// recorded unless Unrecorded names them. Changed ones differ from their digest.
	Files      map[string]string `yaml:"files"`
	Unrecorded []string          `yaml:"unrecorded"`
	Changed    []string          `yaml:"changed"`
	// Manifest is YAML text. A comment "# <- OUTCOME" marks each line that a
	// finding with that outcome must point at; findings that are met or do
	// not apply are not marked.
	Manifest string `yaml:"manifest"`
}

// Today is the date of cases that name none.
const Today = "2026-11-25"

// Load reads every cases.yaml below a pack's rules and regions.
func Load(pack fs.FS) ([]Case, error) {
	var all []Case
	err := fs.WalkDir(pack, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || path.Base(name) != "cases.yaml" {
			return err
		}
		data, err := fs.ReadFile(pack, name)
		if err != nil {
			return err
		}
		var file struct {
			Cases []Case `yaml:"cases"`
		}
		dec := yaml.NewDecoder(strings.NewReader(string(data)))
		dec.KnownFields(true)
		if err := dec.Decode(&file); err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		steps := strings.Split(path.Dir(name), "/")
		for _, c := range file.Cases {
			c.Rule = strings.Join(steps[1:], "/")
			all = append(all, c)
		}
		return nil
	})
	return all, err
}

// Checker returns the checker that judges the case: base with the case's hold
// point and date.
func (c Case) Checker(base *check.Checker) *check.Checker {
	out := *base
	out.Options = check.Options{Hold: c.Hold, Today: c.Today, BlockOn: "must"}
	if out.Options.Hold == "" {
		out.Options.Hold = base.Book.Rules[c.Rule].Hold
	}
	if out.Options.Today == "" {
		out.Options.Today = Today
	}
	return &out
}

// Run judges the case with its evidence laid out in dir.
func (c Case) Run(ctx context.Context, base *check.Checker, dir string) (*check.Report, error) {
	r, err := c.Prepare(base, dir)
	if err != nil {
		return nil, err
	}
	return r, base.Judge(ctx, r)
}

// Alone returns a checker that judges by the rule alone, and by the questions
// it collects.
func Alone(base *check.Checker, rule string) *check.Checker {
	meta := base.Book.Rules[rule]
	ids := []string{rule}
	for id, m := range base.Book.Rules {
		if meta.Collects != "" && m.Question != nil && m.Region == meta.Region {
			ids = append(ids, id)
		}
	}
	out := *base
	out.Book = base.Book.Only(ids...)
	return &out
}

// Prepare assembles the input document of the case without judging it, with
// its evidence laid out in dir.
func (c Case) Prepare(base *check.Checker, dir string) (*check.Report, error) {
	if err := c.lay(dir); err != nil {
		return nil, err
	}
	checker := c.Checker(base)
	m, err := checker.Loader.Read(strings.NewReader(c.Manifest), "case"+manifest.Suffix, dir)
	if err != nil {
		return nil, err
	}
	return checker.Prepare(m)
}

func (c Case) lay(dir string) error {
	var recorded []string
	for _, name := range slices.Sorted(maps.Keys(c.Files)) {
		file := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(file, []byte(c.Files[name]), 0o644); err != nil {
			return err
		}
		if !slices.Contains(c.Unrecorded, name) {
			recorded = append(recorded, name)
		}
	}
	if len(recorded) == 0 {
		return nil
	}
	sums, err := evidence.Record(dir, recorded)
	if err != nil {
		return err
	}
	for _, name := range c.Changed {
		sums[name] = strings.Repeat("0", 64)
	}
	return evidence.WriteSums(filepath.Join(dir, evidence.SumFile("case"+manifest.Suffix)), sums)
}

// Mark is a line and the outcome found or expected there.
type Mark struct {
	Line    int
	Outcome string
}

var marker = regexp.MustCompile(`# <- (not met|unproven|waived)\s*$`)

// Marks returns what the manifest's comments expect.
func (c Case) Marks() []Mark {
	var marks []Mark
	for i, line := range strings.Split(c.Manifest, "\n") {
		if m := marker.FindStringSubmatch(line); m != nil {
			marks = append(marks, Mark{i + 1, m[1]})
		}
	}
	return marks
}

// Found returns what the rule says in a report, in the same form.
func (c Case) Found(r *check.Report) (outcome string, marks []Mark) {
	rule := r.Verdict.Rules[c.Rule]
	for _, f := range rule.Findings {
		if f.Outcome != verdict.Met && f.Outcome != verdict.NotApplicable {
			marks = append(marks, Mark{f.At(r.Manifest).Line, f.Outcome})
		}
	}
	slices.SortFunc(marks, func(a, b Mark) int {
		if a.Line != b.Line {
			return a.Line - b.Line
		}
		return strings.Compare(a.Outcome, b.Outcome)
	})
	return rule.Outcome, slices.Compact(marks)
}
