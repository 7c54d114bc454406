// Package reporttest holds the runs that the tests of every form of report
// share, and the comparison with their expected output.
package reporttest

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"weak"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

var checker = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Today: "2026-11-25"})
})

// Run is a run over a few builds.
type Run struct {
	Builds []report.Build
	Unread []manifest.Problems
}

// Write gives what a form makes of a run.
func (r Run) Write(t *testing.T, f report.Form) []byte {
	t.Helper()
	s := report.Summary{Unread: r.Unread}
	for _, b := range r.Builds {
		s.Count(b)
		require.NoError(t, f.Add(b))
	}
	var out bytes.Buffer
	require.NoError(t, f.End(&out, s))
	return out.Bytes()
}

// HoldsNone fails where a form still holds a build after it was added: memory
// would grow with every build.
func HoldsNone(t *testing.T, f report.Form) {
	t.Helper()
	var held []func() bool
	r := Sample(t)
	for _, b := range r.Builds {
		held = append(held, Held(b.Report), Held(b.Report.Manifest), Held(b.Report.Verdict), Held(&b.Report.Manifest.Data[0]), Held(&b.Items[0]))
		require.NoError(t, f.Add(b))
	}
	r = Run{}
	runtime.GC()
	for n, still := range held {
		require.False(t, still(), n)
	}
	runtime.KeepAlive(f)
}

// Held says whether something is still held after a collection.
func Held[T any](p *T) func() bool {
	w := weak.Make(p)
	return func() bool { return w.Value() != nil }
}

// Example is the run over the example that README shows.
func Example(t *testing.T) Run {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	const file = "examples/patrol-truck/patrol-truck.build.yaml"
	r, err := c.File(context.Background(), filepath.Join("../../..", filepath.FromSlash(file)))
	require.NoError(t, err)
	r.Manifest.File = file
	items := verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	return Run{Builds: []report.Build{{Report: r, Items: items}}}
}

// Hostile is text that means something in every form it may be written into:
// markup, cells, mentions, links, commands, line ends, and characters that no
// XML can hold.
const Hostile = "50% off: a|b, <b>x</b> & `rm` *y* @all #1 [z](http://example.com) www.example.com ]]> {0} $1 $2 ~~c~~\r\n::error::no\x00\x1b[1m\u202e\ufffe"

// File is the name of the manifest with hostile text.
const File = "shop, 50%/#2 one|two.build.yaml"

// Sample is a run made by hand: a build with a finding of every outcome and
// hostile text, one that passes with a waiver, and a manifest that could not
// be read. Everything in it is invented.
func Sample(t *testing.T) Run {
	t.Helper()
	first := build(t, File, verdict.Fail, "FAIL", "install", []verdict.Item{
		item(brakes, verdict.NotMet, "brakes.front", "missing"),
		item(hose, verdict.Unproven, "cooling.hose", ""),
		item(fuse, verdict.Waived, "electrical.circuits.pump", ""),
		item(strap, verdict.NotMet, "electrical.grounds.body", ""),
		item(strap, verdict.Met, "electrical.grounds.frame", ""),
		item(label, verdict.Unproven, "build", ""),
		item(sender, verdict.NotMet, "fittings.oil", ""),
	})
	first.Report.Verdict.Rules["sample/absent"] = verdict.Rule{Level: "must", Hold: "plan", Due: true, Outcome: verdict.NotApplicable}
	second := build(t, "plain.build.yaml", verdict.Pass, "PASS with 1 waiver", "install", []verdict.Item{
		item(fuse, verdict.Waived, "electrical.circuits.pump", ""),
	})
	return Run{
		Builds: []report.Build{first, second},
		Unread: []manifest.Problems{{
			{File: "bad.build.yaml", Position: manifest.Position{Line: 3, Column: 7}, Message: `"12 furlongs" is not a length: in, mm`},
			{File: "bad.build.yaml", Message: "holds no build"},
		}},
	}
}

var (
	brakes = meta("sample/brake_lines", "brake lines clear the exhaust", "must", "install", "work on brakes is for people licensed for it")
	hose   = meta("sample/hose_size", "the hose fits its neck", "must", "install", "")
	fuse   = meta("sample/fuse_size", "the fuse carries its load", "must", "install", "")
	strap  = meta("sample/strap", "body and frame are tied", "should", "install", "")
	label  = meta("sample/label", "the label is in place", "note", "install", "")
	sender = meta("sample/sender_seals", "the sender seals", "must", "road-test", "")
)

func meta(id, title, level, hold, caution string) *rulebook.Meta {
	m := &rulebook.Meta{ID: id, Title: title, Description: "Invented for a test: " + title + ".", Area: "sample", Custom: rulebook.Custom{
		Level: level, Hold: hold, Basis: "manufacturer", Source: "invented for a test, " + Hostile, Remedy: "do " + Hostile,
		Caution: caution, Reviewed: "2026-11-25", Since: "0.1.0",
	}}
	if id == "sample/hose_size" {
		m.Links = []rulebook.Link{{URL: "https://example.com/hose", Title: "an invented sheet"}}
		m.Aliases = []string{"sample/hose"}
	}
	return m
}

// item is a finding on the fourth line of its manifest; the waived ones are
// those that the waiver "lent" sets aside.
func item(m *rulebook.Meta, outcome, subject, reason string) verdict.Item {
	i := verdict.Item{
		Rule: m, Level: m.Level, Due: m.Hold != "road-test", At: manifest.Position{Line: 4, Column: 5},
		Finding: verdict.Finding{Subject: subject, Outcome: outcome, Path: subject + ".size"},
		Found:   "5/8 in, " + Hostile, Needed: "at most 100 % of " + Hostile, Reason: reason, Do: []string{m.Remedy},
	}
	if outcome == verdict.Waived {
		i.Finding.Waiver, i.Finding.Waived = "lent", verdict.NotMet
	}
	return i
}

const written = `trialfit: 1
build: {}
waivers:
  - id: lent
    rule: sample/fuse_size
    subject: electrical.circuits.pump
    reason: "a|b, <i>lent</i> by @shop until the part comes: see #1"
    by: R. Example
    until: 2027-01-31
  - id: stale
    rule: sample/strap
    subject: electrical.grounds.body
    reason: "seen at https://example.com/strap"
    by: R. Example
    until: 2026-01-31
`

func build(t *testing.T, file, decided, headline, hold string, items []verdict.Item) report.Build {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	m, err := c.Loader.Read(strings.NewReader(written), file, ".")
	require.NoError(t, err)
	v := &verdict.Verdict{
		Verdict: decided, Headline: headline, Hold: hold, Today: "2026-11-25", Regions: []string{"US", "US-CA"},
		Counts: map[string]map[string]int{"must": {}, "should": {}, "note": {}}, Rules: map[string]verdict.Rule{},
		Waivers: map[string]verdict.Waiver{
			"lent":  {Rule: "sample/fuse_size", Subject: "electrical.circuits.pump", State: "used"},
			"stale": {Rule: "sample/strap", Subject: "electrical.grounds.body", State: "expired"},
		},
	}
	worst := []string{verdict.Met, verdict.Waived, verdict.Unproven, verdict.NotMet}
	for _, i := range items {
		r, known := v.Rules[i.Rule.ID]
		r.Level, r.Hold, r.Due = i.Level, i.Rule.Hold, i.Due
		if !known || slices.Index(worst, i.Finding.Outcome) > slices.Index(worst, r.Outcome) {
			r.Outcome = i.Finding.Outcome
		}
		r.Findings = append(r.Findings, i.Finding)
		v.Rules[i.Rule.ID] = r
		if i.Level == "must" && i.Due && report.Open(i) {
			v.Blocking = append(v.Blocking, i.Rule.ID)
		}
	}
	for _, r := range v.Rules {
		if r.Due {
			v.Counts[r.Level][r.Outcome]++
		}
	}
	return report.Build{Report: &check.Report{Manifest: m, Verdict: v, Decision: []byte("{}")}, Items: items}
}

// Golden compares output with the file of that name in testdata. With
// UPDATE_GOLDEN=1 the file is rewritten; read the difference before committing.
func Golden(t *testing.T, name string, got []byte) {
	t.Helper()
	name = filepath.Join("testdata", name)
	if os.Getenv("UPDATE_GOLDEN") != "" {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(name, got, 0o644))
	}
	want, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, string(want), string(got))
}
