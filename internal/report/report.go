// Package report holds what every form of a report is made from, and the
// choices they share: what blocks, what is open, how a finding is worded. Each
// form is a package of its own below it.
package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/verdict"
)

// Form is one report in the making. It takes one judged build after the other
// and holds none of them, so that a run over many needs no more memory than one
// over few.
type Form interface {
	Add(Build) error
	// End writes the report once every build is added.
	End(io.Writer, Summary) error
}

// Summary is what a run came to.
type Summary struct {
	Pass, Fail int
	// Unread holds the problems of each manifest that could not be judged. A
	// report that left them out would look as if those builds had passed.
	Unread []manifest.Problems
}

// Count takes up a judged build.
func (s *Summary) Count(b Build) {
	if b.Report.Verdict.Verdict == verdict.Pass {
		s.Pass++
	} else {
		s.Fail++
	}
}

// Judged is the number of builds that were added to each form.
func (s Summary) Judged() int { return s.Pass + s.Fail }

// All is the number of builds, those too that could not be judged.
func (s Summary) All() int { return s.Judged() + len(s.Unread) }

// Total sums up a run in one line.
func (s Summary) Total() string {
	line := fmt.Sprintf("%d builds: %d PASS, %d FAIL", s.All(), s.Pass, s.Fail)
	if s.All() == 1 {
		line = strings.Replace(line, "builds", "build", 1)
	}
	if unread := len(s.Unread); unread > 0 {
		line += fmt.Sprintf(", %d could not be read", unread)
	}
	return line
}

// Build is one judged build with its findings explained.
type Build struct {
	Report *check.Report
	Items  []verdict.Item
}

// Severities, the heaviest first: what stands in the way, advice, and what is
// only told.
const (
	Error   = "error"
	Warning = "warning"
	Note    = "note"
)

// Open says whether a finding is neither met nor set aside.
func Open(i verdict.Item) bool {
	return i.Finding.Outcome == verdict.NotMet || i.Finding.Outcome == verdict.Unproven
}

// Blocks says whether a finding stands in the way at the hold point judged.
func (b Build) Blocks(i verdict.Item) bool {
	return i.Due && Open(i) && slices.Contains(b.Report.Verdict.Blocking, i.Rule.ID)
}

// Severity is what a finding weighs, or would weigh were it not waived.
func (b Build) Severity(i verdict.Item) string {
	switch {
	case b.Blocks(i) || i.Level == "must":
		return Error
	case i.Level == "should":
		return Warning
	default:
		return Note
	}
}

// Pick returns the items for which pick holds, in their order.
func (b Build) Pick(pick func(verdict.Item) bool) []verdict.Item {
	var chosen []verdict.Item
	for _, i := range b.Items {
		if pick(i) {
			chosen = append(chosen, i)
		}
	}
	return chosen
}

// Headline is the verdict in one line.
func (b Build) Headline() string {
	v := b.Report.Verdict
	return fmt.Sprintf("%s: %s at %s", b.Report.Manifest.Name(), v.Headline, v.Hold)
}

// Counts sums up the rules that are due, a line for each level that can block.
func (b Build) Counts() []string {
	var lines []string
	for _, level := range []string{"must", "should"} {
		c := b.Report.Verdict.Counts[level]
		total := c[verdict.Met] + c[verdict.NotMet] + c[verdict.Unproven] + c[verdict.Waived] + c[verdict.NotApplicable]
		if total == 0 {
			continue
		}
		line := fmt.Sprintf("%s: %d due", level, total)
		for _, outcome := range []string{verdict.Met, verdict.NotMet, verdict.Unproven, verdict.Waived, verdict.NotApplicable} {
			if c[outcome] > 0 {
				line += fmt.Sprintf(", %d %s", c[outcome], outcome)
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// Region names the regions whose rules were in force, and the zone within them
// as it was read: a rule does not know a misspelt one.
func (b Build) Region() string {
	regions := b.Report.Verdict.Regions
	if len(regions) == 0 {
		return "no region given"
	}
	said := "region " + strings.Join(regions, " > ")
	if zone := b.Report.Manifest.Root.Word("registration.zone"); zone != "" {
		said += ", zone " + Plain(zone)
	}
	return said
}

// Where is the place of a finding as file:line:column.
func (b Build) Where(i verdict.Item) string {
	return fmt.Sprintf("%s:%d:%d", b.Report.Manifest.File, i.At.Line, i.At.Column)
}

// Found says what was found, with the reason where that adds something.
func Found(i verdict.Item) string {
	missing := i.Finding.Reason == "missing" && strings.HasPrefix(i.Found, "not known")
	if i.Reason == "" || i.Reason == i.Found || missing {
		return i.Found
	}
	return i.Found + "; " + i.Reason
}

// Waiver words the waiver that sets a finding aside: id, reason, who, until
// when. It is empty where there is none.
func (b Build) Waiver(i verdict.Item) string {
	id := i.Finding.Waiver
	w := b.Report.Manifest.Node("waivers." + id)
	if id == "" || w == nil {
		return ""
	}
	return fmt.Sprintf("%s: %s; %s, until %s", id, w.Word("reason"), w.Word("by"), w.Word("until"))
}

var idle = map[string]string{
	"unused":          "is not needed: nothing it names stands in the way",
	"expired":         "has run out",
	"unknown-subject": "names a subject that the rule has no finding on",
	"unknown-rule":    "names a rule that does not exist",
	"not-waivable":    "names a rule that can't be waived",
	"needs-document":  "needs the authority's document, because the rule rests on law",
}

// IdleWaiver is a waiver that did nothing: a stale one is a trap.
type IdleWaiver struct {
	Waiver *manifest.Node
	// Rule is the id it names, Why says what keeps it from doing anything.
	Rule, Why string
}

// Idle lists the waivers that did nothing, in manifest order.
func (b Build) Idle() []IdleWaiver {
	var list []IdleWaiver
	for _, w := range b.Report.Manifest.Node("waivers").Items {
		if state, ok := b.Report.Verdict.Waivers[w.ID]; ok && state.State != "used" {
			list = append(list, IdleWaiver{w, state.Rule, idle[state.State]})
		}
	}
	return list
}

// IdleWaivers words them, a line for each with its place.
func (b Build) IdleWaivers() []string {
	var lines []string
	for _, i := range b.Idle() {
		at := i.Waiver.At
		lines = append(lines, fmt.Sprintf("%s:%d:%d %s (%s) %s", b.Report.Manifest.File, at.Line, at.Column, i.Waiver.ID, i.Rule, i.Why))
	}
	return lines
}

// Plain makes text from a manifest safe to show: what is not seen, or would
// turn the direction of writing, becomes visible, and a line stays one line.
func Plain(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return ' '
		case r < ' ' || r >= 0x7F && r < 0xA0 || r == 0x200E || r == 0x200F ||
			r >= 0x2028 && r <= 0x202E || r >= 0x2066 && r <= 0x2069 || r == 0xFFFE || r == 0xFFFF:
			return '\uFFFD'
		default:
			return r
		}
	}, s)
}
