// Package text writes reports for people at a terminal or on paper.
package text

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"trialfit/internal/report"
	"trialfit/internal/report/lines"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// Options say how much is printed and how.
type Options struct {
	// Width is the number of columns, 80 when it is 0.
	Width int
	// All lifts the cap on the number of findings and prints those met too.
	All bool
	// Given says that the date of the judgement was given, not read off the clock.
	Given bool
	// Spreads are printed so that a reader knows what was laid on values
	// without a range of their own.
	Spreads []*rulebook.Limit
	// Emphasis marks words on a terminal; state is always said in words as well.
	Emphasis bool
}

// What is printed without All: findings in one section, findings of one rule
// in it, and places to find out for one hold point.
const (
	most     = 20
	mostRule = 5
	mostAsks = 10
)

// few is the number of findings that may lack values and still be told one by
// one; more become a list of what to find out, and one of the rules that wait.
const few = 10

type page struct {
	lines.Printer
	o Options
	b report.Build
}

// Form is the report of a run.
type Form struct {
	body *report.Spool
	o    Options
	some bool
}

// New keeps the builds in body until the report is written.
func New(body *report.Spool, o Options) *Form {
	if o.Width == 0 {
		o.Width = 80
	}
	return &Form{body: body, o: o}
}

// Add writes one more build.
func (f *Form) Add(b report.Build) error {
	if f.some {
		fmt.Fprint(f.body, "\n", strings.Repeat("─", 40), "\n\n")
	}
	f.some = true
	return write(f.body, b, f.o)
}

// End writes the report, with the total where there is more than one build.
func (f *Form) End(w io.Writer, s report.Summary) error {
	if _, err := io.Copy(w, f.body); err != nil {
		return fmt.Errorf("writing the report: %w", err)
	}
	if s.Judged() > 0 && s.All() > 1 {
		if _, err := fmt.Fprintf(w, "\n%s\n", s.Total()); err != nil {
			return fmt.Errorf("writing the report: %w", err)
		}
	}
	return nil
}

// write prints the report of one build.
func write(w io.Writer, b report.Build, o Options) error {
	p := &page{lines.Printer{W: w, Columns: o.Width}, o, b}
	p.head()
	p.section("What stands in the way", func(i verdict.Item) bool { return b.Blocks(i) && i.Finding.Outcome == verdict.NotMet })
	p.unproven()
	p.section("Set aside by a waiver", func(i verdict.Item) bool { return i.Due && i.Finding.Outcome == verdict.Waived })
	p.advice()
	if o.All {
		p.section("Met", func(i verdict.Item) bool { return i.Due && i.Finding.Outcome == verdict.Met })
		p.section("Due later", func(i verdict.Item) bool { return !i.Due && report.Open(i) })
	}
	p.waivers()
	p.overdue()
	p.foot()
	return p.Err
}

func (p *page) bold(s string) string {
	if !p.o.Emphasis {
		return s
	}
	return "\x1b[1m" + s + "\x1b[0m"
}

func (p *page) head() {
	p.Line("%s", p.bold(p.b.Headline()))
	clock := ", the clock's date"
	if p.o.Given {
		clock = ""
	}
	p.Line("%s, judged as of %s%s", p.b.Region(), p.b.Report.Verdict.Today, clock)
	p.Line("%s", strings.Join(p.b.Counts(), "\n"))
}

func (p *page) section(title string, pick func(verdict.Item) bool) {
	chosen := p.b.Pick(pick)
	if len(chosen) == 0 {
		return
	}
	p.Line("\n%s", p.bold(fmt.Sprintf("%s (%d)", title, len(chosen))))
	shown := 0
	var rest tally
	of := map[string]int{}
	for _, i := range chosen {
		if !p.o.All && (shown == most || of[i.Rule.ID] == mostRule) {
			rest.add(i.Rule.ID)
			continue
		}
		of[i.Rule.ID]++
		shown++
		p.item(i)
	}
	if rest.all > 0 {
		p.Line("")
		p.Wrap("  ", "    ", fmt.Sprintf("… and %d more: %s; --all shows them", rest.all, rest))
	}
}

// unproven tells what blocks because it is not known for certain. Where many
// values are missing, what to find out is more use than every finding that
// waits for it.
func (p *page) unproven() {
	open := func(i verdict.Item) bool { return p.b.Blocks(i) && i.Finding.Outcome == verdict.Unproven }
	const title = "What is unproven, and what would settle it"
	waiting := p.b.Pick(func(i verdict.Item) bool { return open(i) && report.Lacking(i) })
	if p.o.All || len(waiting) <= few {
		p.section(title, open)
		return
	}
	p.section(title, func(i verdict.Item) bool { return open(i) && !report.Lacking(i) })
	p.findOut()
	p.waiting(waiting)
}

func (p *page) findOut() {
	stages := p.b.ToFindOut()
	all := 0
	for _, s := range stages {
		all += len(s.Asks)
	}
	p.Line("\n%s", p.bold(fmt.Sprintf("What to find out next, hold point by hold point (%d)", all)))
	for _, s := range stages {
		p.Line("\n  for %s (%d)", s.Hold, len(s.Asks))
		for n, ask := range s.Asks {
			if n == mostAsks {
				p.Line("    … and %d more", len(s.Asks)-n)
				break
			}
			p.Wrap("    ", "      ", ask.Path+" — "+ask.What)
		}
	}
}

// waiting names the rules that lack values, each once.
func (p *page) waiting(items []verdict.Item) {
	var rules []string
	for _, i := range items {
		if row := i.Rule.ID + " — " + i.Rule.Title; !slices.Contains(rules, row) {
			rules = append(rules, row)
		}
	}
	p.Line("\n%s\n", p.bold(fmt.Sprintf("Requirements that wait for these values (%d)", len(rules))))
	for _, row := range rules[:min(len(rules), most)] {
		p.Wrap("  ", "      ", row)
	}
	if rest := len(rules) - most; rest > 0 {
		p.Line("  … and %d more", rest)
	}
	p.Line("  --all shows each with what it lacks")
}

// advice tells what does not block. What only waits for values is counted, for
// the values are asked for where they block.
func (p *page) advice() {
	open := func(i verdict.Item) bool {
		return i.Due && i.Level != "note" && !p.b.Blocks(i) && report.Open(i)
	}
	lacking := len(p.b.Pick(func(i verdict.Item) bool { return open(i) && report.Lacking(i) }))
	if p.o.All || lacking <= few {
		p.section("Advice", open)
		return
	}
	p.section("Advice", func(i verdict.Item) bool { return open(i) && !report.Lacking(i) })
	p.Line("\n%s", p.bold(fmt.Sprintf("Advice that waits for values not known yet (%d); --all shows it", lacking)))
}

// tally counts findings by rule, in the order in which rules were first met.
type tally struct {
	all   int
	rules []string
	of    map[string]int
}

func (t *tally) add(rule string) {
	if t.of == nil {
		t.of = map[string]int{}
	}
	if t.of[rule] == 0 {
		t.rules = append(t.rules, rule)
	}
	t.of[rule]++
	t.all++
}

// String names the rules with the most first, ten at most.
func (t tally) String() string {
	rules := slices.Clone(t.rules)
	slices.SortStableFunc(rules, func(a, b string) int { return cmp.Compare(t.of[b], t.of[a]) })
	var parts []string
	for n, rule := range rules {
		if n == mostAsks {
			parts = append(parts, fmt.Sprintf("and %d rules more", len(rules)-n))
			break
		}
		parts = append(parts, fmt.Sprintf("%d of %s", t.of[rule], rule))
	}
	return strings.Join(parts, ", ")
}

func (p *page) item(i verdict.Item) {
	p.Line("\n  %s", p.bold(i.Rule.Title))
	p.Line("  %s · %s at %s · %s", i.Rule.ID, i.Level, i.Rule.Hold, i.Finding.Outcome)
	p.Field("where", p.b.Where(i)+" "+i.Finding.Subject)
	p.Field("found", report.Found(i))
	p.Field("needed", i.Needed)
	if i.Margin != "" && i.Finding.Outcome != verdict.Unproven {
		p.Field("margin", i.Margin)
	}
	for _, do := range i.Do {
		p.Field("do", do)
	}
	if report.Open(i) && i.Rule.Caution != "" {
		p.Field("caution", i.Rule.Caution)
	}
	if waiver := p.b.Waiver(i); waiver != "" {
		p.Field("waiver", waiver)
	}
	if report.Open(i) {
		p.Field("source", fmt.Sprintf("%s (%s, reviewed %s)", i.Rule.Source, i.Rule.Basis, i.Rule.Reviewed))
	}
}

func (p *page) waivers() {
	for n, line := range p.b.IdleWaivers() {
		if n == 0 {
			p.Line("\n%s", p.bold("Waivers not used"))
		}
		p.Line("  %s", line)
	}
}

// overdue tells which rules of law may have changed since they were read.
func (p *page) overdue() {
	lines := p.b.Overdue()
	if len(lines) == 0 {
		return
	}
	p.Line("\n%s", p.bold(fmt.Sprintf("Read too long ago; look at the source again (%d)", len(lines))))
	for _, line := range lines {
		p.Wrap("  ", "    ", line)
	}
}

func (p *page) foot() {
	if cautions := wording.Cautions(p.b.Report.Verdict.Hold); len(cautions) > 0 {
		p.Line("\n%s", p.bold("Take care"))
		for _, c := range cautions {
			p.Wrap("  - ", "    ", c)
		}
	}
	if spreads := report.Spreads(p.o.Spreads); spreads != "" {
		p.Line("")
		p.Wrap("", "", spreads)
	}
	p.Line("")
	p.Wrap("", "", wording.Deferral)
}
