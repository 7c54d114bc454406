// Package text writes reports for people at a terminal or on paper.
package text

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"trialfit/internal/check"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
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

// most is the number of findings printed in one section without All.
const most = 20

type page struct {
	w     io.Writer
	o     Options
	items []verdict.Item
	r     *check.Report
	err   error
}

// Write prints the report of one build.
func Write(w io.Writer, r *check.Report, items []verdict.Item, o Options) error {
	if o.Width == 0 {
		o.Width = 80
	}
	p := &page{w: w, o: o, items: items, r: r}
	p.head()
	p.section("What stands in the way", func(i verdict.Item) bool { return p.blocks(i) && i.Finding.Outcome == verdict.NotMet })
	p.section("What is unproven, and what would settle it", func(i verdict.Item) bool { return p.blocks(i) && i.Finding.Outcome == verdict.Unproven })
	p.section("Set aside by a waiver", func(i verdict.Item) bool { return i.Due && i.Finding.Outcome == verdict.Waived })
	p.section("Advice", func(i verdict.Item) bool { return i.Due && i.Level != "note" && !p.blocks(i) && open(i) })
	if o.All {
		p.section("Met", func(i verdict.Item) bool { return i.Due && i.Finding.Outcome == verdict.Met })
		p.section("Due later", func(i verdict.Item) bool { return !i.Due && open(i) })
	}
	p.waivers()
	p.foot()
	return p.err
}

func open(i verdict.Item) bool {
	return i.Finding.Outcome == verdict.NotMet || i.Finding.Outcome == verdict.Unproven
}

func (p *page) blocks(i verdict.Item) bool {
	if !i.Due || !open(i) {
		return false
	}
	return slices.Contains(p.r.Verdict.Blocking, i.Rule.ID)
}

func (p *page) line(format string, args ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.w, format+"\n", args...)
	}
}

func (p *page) bold(s string) string {
	if !p.o.Emphasis {
		return s
	}
	return "\x1b[1m" + s + "\x1b[0m"
}

func (p *page) head() {
	v := p.r.Verdict
	p.line("%s", p.bold(fmt.Sprintf("%s: %s at %s", p.r.Manifest.Name(), v.Headline, v.Hold)))
	region := "no region given"
	if len(v.Regions) > 0 {
		region = "region " + strings.Join(v.Regions, " > ")
	}
	clock := ", the clock's date"
	if p.o.Given {
		clock = ""
	}
	p.line("%s, judged as of %s%s", region, v.Today, clock)
	p.line("%s", p.counts())
}

// counts sums up the rules that are due, by level.
func (p *page) counts() string {
	var parts []string
	for _, level := range []string{"must", "should"} {
		c := p.r.Verdict.Counts[level]
		total := c[verdict.Met] + c[verdict.NotMet] + c[verdict.Unproven] + c[verdict.Waived] + c[verdict.NotApplicable]
		if total == 0 {
			continue
		}
		part := fmt.Sprintf("%s: %d due", level, total)
		for _, outcome := range []string{verdict.Met, verdict.NotMet, verdict.Unproven, verdict.Waived, verdict.NotApplicable} {
			if c[outcome] > 0 {
				part += fmt.Sprintf(", %d %s", c[outcome], outcome)
			}
		}
		parts = append(parts, part)
	}
	return strings.Join(parts, "\n")
}

func (p *page) section(title string, pick func(verdict.Item) bool) {
	var chosen []verdict.Item
	for _, i := range p.items {
		if pick(i) {
			chosen = append(chosen, i)
		}
	}
	if len(chosen) == 0 {
		return
	}
	p.line("\n%s", p.bold(fmt.Sprintf("%s (%d)", title, len(chosen))))
	shown := chosen
	if !p.o.All && len(shown) > most {
		shown = shown[:most]
	}
	for _, i := range shown {
		p.item(i)
	}
	if rest := len(chosen) - len(shown); rest > 0 {
		p.line("\n  … and %d more; --all shows them", rest)
	}
}

func (p *page) item(i verdict.Item) {
	p.line("\n  %s", p.bold(i.Rule.Title))
	p.line("  %s · %s at %s · %s", i.Rule.ID, i.Level, i.Rule.Hold, i.Finding.Outcome)
	p.field("where", fmt.Sprintf("%s:%d:%d %s", p.r.Manifest.File, i.At.Line, i.At.Column, i.Finding.Subject))
	found := i.Found
	if i.Reason != "" && i.Reason != i.Found {
		found += "; " + i.Reason
	}
	if i.Finding.Reason == "missing" && strings.HasPrefix(i.Found, "not known") {
		found = i.Found
	}
	p.field("found", found)
	p.field("needed", i.Needed)
	if i.Margin != "" && i.Finding.Outcome != verdict.Unproven {
		p.field("margin", i.Margin)
	}
	for _, do := range i.Do {
		p.field("do", do)
	}
	if open(i) && i.Rule.Caution != "" {
		p.field("caution", i.Rule.Caution)
	}
	if i.Finding.Waiver != "" {
		p.waiver(i.Finding.Waiver)
	}
	if open(i) {
		p.field("source", fmt.Sprintf("%s (%s, reviewed %s)", i.Rule.Source, i.Rule.Basis, i.Rule.Reviewed))
	}
}

func (p *page) waiver(id string) {
	w := p.r.Manifest.Node("waivers." + id)
	if w == nil {
		return
	}
	p.field("waiver", fmt.Sprintf("%s: %s; %s, until %s", id, w.Word("reason"), w.Word("by"), w.Word("until")))
}

var waiverStates = map[string]string{
	"unused":          "is not needed: nothing it names stands in the way",
	"expired":         "has run out",
	"unknown-subject": "names a subject that the rule has no finding on",
	"unknown-rule":    "names a rule that does not exist",
	"not-waivable":    "names a rule that can't be waived",
	"needs-document":  "needs the authority's document, because the rule rests on law",
}

// waivers lists those that did nothing, and why: a stale waiver is a trap.
func (p *page) waivers() {
	list := p.r.Manifest.Node("waivers")
	head := false
	for _, w := range list.Items {
		state, ok := p.r.Verdict.Waivers[w.ID]
		if !ok || state.State == "used" {
			continue
		}
		if !head {
			p.line("\n%s", p.bold("Waivers not used"))
			head = true
		}
		p.line("  %s:%d:%d %s (%s) %s", p.r.Manifest.File, w.At.Line, w.At.Column, w.ID, state.Rule, waiverStates[state.State])
	}
}

func (p *page) foot() {
	if cautions := wording.Cautions(p.r.Verdict.Hold); len(cautions) > 0 {
		p.line("\n%s", p.bold("Take care"))
		for _, c := range cautions {
			p.wrapped("  - ", "    ", c)
		}
	}
	if spreads := p.spreads(); spreads != "" {
		p.line("")
		p.wrapped("", "", spreads)
	}
	p.line("")
	p.wrapped("", "", wording.Deferral)
}

// spreads says in one sentence how far values without a range may be off.
func (p *page) spreads() string {
	var parts []string
	for _, l := range p.o.Spreads {
		if basis := strings.TrimPrefix(l.Path, "limits.spread."); slices.Contains(schema.Bases, basis) {
			parts = append(parts, basis+" ± "+l.Value.Text)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "Values without a range of their own were taken as " + strings.Join(parts, ", ") + ", with a floor for small ones (common practice)."
}

// field prints a label and its text, wrapped under itself.
func (p *page) field(label, text string) {
	p.wrapped(fmt.Sprintf("    %-8s", label), strings.Repeat(" ", 12), text)
}

func (p *page) wrapped(first, rest, text string) {
	lead, width := first, p.o.Width
	var row strings.Builder
	used := 0
	flush := func() {
		p.line("%s%s", lead, row.String())
		lead = rest
		row.Reset()
		used = 0
	}
	for _, word := range glued(strings.Fields(Plain(text))) {
		n := utf8.RuneCountInString(word)
		if used > 0 && utf8.RuneCountInString(lead)+used+1+n > width {
			flush()
		}
		if used > 0 {
			row.WriteByte(' ')
			used++
		}
		row.WriteString(word)
		used += n
	}
	flush()
}

// glued joins a number to the word after it, so that a line never ends between
// a value and its unit.
func glued(words []string) []string {
	var out []string
	for _, word := range words {
		if n := len(out); n > 0 && endsInNumber(out[n-1]) && len(word) <= 8 {
			out[n-1] += " " + word
			continue
		}
		out = append(out, word)
	}
	return out
}

func endsInNumber(s string) bool {
	r, _ := utf8.DecodeLastRuneInString(s)
	return r >= '0' && r <= '9' || r == '±'
}

// Plain makes text from a manifest safe for a terminal: control characters
// become visible.
func Plain(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return ' '
		case r < ' ' || r == 0x7F || r >= 0x80 && r < 0xA0 || r >= 0x202A && r <= 0x202E || r >= 0x2066 && r <= 0x2069:
			return '\uFFFD'
		default:
			return r
		}
	}, s)
}

// Total prints the line that closes a run over several builds.
func Total(w io.Writer, reports []*check.Report, unreadable int) error {
	pass := 0
	for _, r := range reports {
		if r.Verdict.Verdict == verdict.Pass {
			pass++
		}
	}
	line := fmt.Sprintf("%d builds: %d PASS, %d FAIL", len(reports)+unreadable, pass, len(reports)-pass)
	if unreadable > 0 {
		line += fmt.Sprintf(", %d could not be read", unreadable)
	}
	_, err := fmt.Fprintln(w, line)
	return err
}

// Rows prints label and text pairs, leaving out those without text.
func Rows(w io.Writer, columns int, rows [][2]string) error {
	p := &page{w: w, o: Options{Width: columns}}
	for _, row := range rows {
		if row[1] != "" {
			p.wrapped(fmt.Sprintf("  %-10s", row[0]), strings.Repeat(" ", 12), row[1])
		}
	}
	return p.err
}
