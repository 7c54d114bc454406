// Package check runs the whole of trialfit on one manifest: load, compute,
// judge.
package check

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"slices"

	"trialfit/internal/evidence"
	"trialfit/internal/figures"
	"trialfit/internal/figures/sheet"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// Options say how builds are judged.
type Options struct {
	// Hold is the hold point to judge at; "" means the one that comes next.
	Hold string
	// Region stands in for the one in the manifest.
	Region string
	// Today is the date of the judgement.
	Today string
	// BlockOn is the lowest level that blocks: "must" or "should".
	BlockOn string
	// TakeRefused judges a build whose evidence files are refused as if they
	// were not there, and keeps why in the report, instead of stopping.
	TakeRefused bool
}

// Checker judges manifests against one rulebook.
type Checker struct {
	Book    *rulebook.Book
	Figures []*figures.Figure
	Loader  *manifest.Loader
	Options Options
}

// Report is everything known of one build after it was judged.
type Report struct {
	Manifest *manifest.Manifest
	Computed []input.Computed
	Evidence map[string]evidence.File
	// Refused says of evidence files that may not be read why, by evidence id.
	Refused map[string]string
	Input   map[string]any
	// Decision is the verdict document as canonical JSON.
	Decision []byte
	Verdict  *verdict.Verdict
	Chain    []rulebook.Region
}

// New opens the shipped rules and the local packs in the given folders.
func New(o Options, packs ...string) (*Checker, error) {
	all := sheet.All()
	book, err := rulebook.Open(all, packs...)
	if err != nil {
		return nil, err
	}
	return &Checker{
		Book:    book,
		Figures: all,
		Loader:  &manifest.Loader{Validator: book.Form, Spread: book.Spread, TakePaths: o.TakeRefused},
		Options: o,
	}, nil
}

// File loads and judges the manifest at path.
func (c *Checker) File(ctx context.Context, path string) (*Report, error) {
	m, err := c.Loader.File(path)
	if err != nil {
		return nil, err
	}
	return c.Check(ctx, m)
}

// Check judges a loaded manifest.
func (c *Checker) Check(ctx context.Context, m *manifest.Manifest) (*Report, error) {
	r, err := c.Prepare(m)
	if err != nil {
		return nil, err
	}
	return r, c.Judge(ctx, r)
}

// Judge adds the decision to a report whose input document is assembled.
func (c *Checker) Judge(ctx context.Context, r *Report) error {
	judge, err := c.Book.Prepare(ctx, r.Chain)
	if err != nil {
		return err
	}
	return r.decide(ctx, judge)
}

func (r *Report) decide(ctx context.Context, judge *rulebook.Evaluator) (err error) {
	if r.Decision, err = judge.Decide(ctx, r.Input); err != nil {
		return fmt.Errorf("%s: %w", r.Manifest.File, err)
	}
	r.Verdict, err = verdict.Read(r.Decision)
	return err
}

// Prepare assembles the input document without judging it.
func (c *Checker) Prepare(m *manifest.Manifest) (*Report, error) {
	r := &Report{Manifest: m}
	var problems manifest.Problems
	code := c.Options.Region
	if code == "" {
		code = m.Root.Word("registration.region")
	}
	chain, err := c.Book.Chain(code)
	switch {
	case err != nil && c.Options.Region != "":
		return nil, err // not the manifest's fault
	case err != nil:
		problems = append(problems, m.ProblemAt("registration.region", "%v", err))
	}
	r.Chain = chain
	var faults manifest.Problems
	r.Evidence, r.Refused, faults = inspect(m)
	if !c.Options.TakeRefused || len(r.Refused) < len(faults) {
		problems = append(problems, faults...)
	}
	if len(problems) > 0 {
		return nil, problems.Sorted()
	}
	r.Computed = input.Compute(c.Figures, m, c.Options.Today)
	states := make(map[string]evidence.State, len(r.Evidence))
	for id, f := range r.Evidence {
		states[id] = f.State
	}
	block := []string{"must"}
	if c.Options.BlockOn == "should" {
		block = append(block, "should")
	}
	r.Input = input.Document(input.Parts{
		Manifest: m,
		Figures:  r.Computed,
		Evidence: states,
		Chain:    chain,
		Hold:     c.hold(m),
		Today:    c.Options.Today,
		BlockOn:  block,
	})
	return r, nil
}

// hold is the hold point that comes after the last one passed.
func (c *Checker) hold(m *manifest.Manifest) string {
	if c.Options.Hold != "" {
		return c.Options.Hold
	}
	next := slices.Index(rulebook.HoldPoints, m.Root.Word("build.hold")) + 1
	return rulebook.HoldPoints[min(next, len(rulebook.HoldPoints)-1)]
}

// inspect looks at the file of every evidence item. A file that may not be read
// is told as a problem and in refused, where it counts as missing.
func inspect(m *manifest.Manifest) (files map[string]evidence.File, refused map[string]string, problems manifest.Problems) {
	list := m.Node("evidence")
	if list == nil || len(list.Items) == 0 {
		return nil, nil, nil
	}
	sums, err := evidence.ReadSums(sumFile(m))
	if err != nil {
		return nil, nil, sumProblems(m, err)
	}
	files, refused = make(map[string]evidence.File, len(list.Items)), map[string]string{}
	for _, item := range list.Items {
		path := item.Field("file")
		if path.Value == nil {
			continue
		}
		file, err := evidence.Inspect(m.Dir, path.Value.Text, sums)
		if err != nil {
			problems = append(problems, m.ProblemAt(path.Path, "%v", err))
			file, refused[item.ID] = evidence.File{Path: path.Value.Text, State: evidence.Missing}, err.Error()
		}
		files[item.ID] = file
	}
	return files, refused, problems
}

// sumProblems words the faults of a side file, one line each.
func sumProblems(m *manifest.Manifest, err error) manifest.Problems {
	var faults evidence.SumsErrors
	if !errors.As(err, &faults) {
		return manifest.Problems{{File: m.File, Message: err.Error()}}
	}
	problems := make(manifest.Problems, len(faults))
	for i, f := range faults {
		at := manifest.Position{Line: f.Line, Column: f.Column}
		problems[i] = manifest.Problem{File: filepath.ToSlash(f.File), Position: at, Message: f.Message}
	}
	return problems
}

// Record writes the digests of a manifest's evidence into its side file and
// returns the file's name, "" where no evidence has a file. Nothing is written
// when a file is missing.
func Record(m *manifest.Manifest) (string, error) {
	list := m.Node("evidence")
	var paths []string
	for _, item := range list.Items {
		if f := item.Field("file"); f.Value != nil {
			paths = append(paths, f.Value.Text)
		}
	}
	if len(paths) == 0 {
		return "", nil
	}
	sums, err := evidence.Record(m.Dir, paths)
	if err != nil {
		return "", err
	}
	name := sumFile(m)
	return name, evidence.WriteSums(name, sums)
}

// sumFile is the side file with the digests of a manifest's evidence. A
// manifest from standard input has no name to go by: the folder must hold one
// side file only.
func sumFile(m *manifest.Manifest) string {
	if m.File != manifest.Stdin {
		return evidence.SumFile(filepath.Join(m.Dir, filepath.Base(m.File)))
	}
	if found, err := filepath.Glob(filepath.Join(m.Dir, "*"+evidence.SumSuffix)); err == nil && len(found) == 1 {
		return found[0]
	}
	return evidence.SumFile(filepath.Join(m.Dir, "stdin"+manifest.Suffix))
}
