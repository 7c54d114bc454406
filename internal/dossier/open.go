package dossier

import (
	"fmt"

	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// open holds in full view what is not met, unproven or waived.
func (a *author) open() []Block {
	var blocks []Block
	add := func(caption string, pick func(verdict.Item) bool) {
		if t := a.findings(caption, a.Pick(pick)); len(t.Rows) > 0 {
			blocks = append(blocks, t)
		}
	}
	add(captionNotMet, func(i verdict.Item) bool { return a.Blocks(i) && i.Finding.Outcome == verdict.NotMet })
	add(captionUnproven, func(i verdict.Item) bool { return a.Blocks(i) && i.Finding.Outcome == verdict.Unproven })
	if t := a.waived(); len(t.Rows) > 0 {
		blocks = append(blocks, t)
	}
	add(captionAdvice, func(i verdict.Item) bool { return i.Due && report.Open(i) && !a.Blocks(i) && i.Level != "note" })
	add(captionLater, func(i verdict.Item) bool { return !i.Due && report.Open(i) && i.Level != "note" })
	for _, list := range []struct {
		caption string
		items   []Text
	}{{captionWork, a.workToDo()}, {captionRefused, a.albums.faults}, {captionIdle, a.idle()}, {captionOverdue, each(a.Overdue())}} {
		if len(list.items) > 0 {
			blocks = append(blocks, Heading{list.caption}, List{list.items})
		}
	}
	if blocks == nil {
		return []Block{Paragraph{Text: say(capital(nothingOpen) + ".")}}
	}
	return blocks
}

func each(lines []string) []Text {
	var list []Text
	for _, line := range lines {
		list = append(list, say(line))
	}
	return list
}

func (a *author) findings(caption string, items []verdict.Item) Table {
	t := Table{
		Caption: caption, Head: []string{colRequirement, colOutcome, colFound, colNeeded, colClause},
		Shares: []float64{5, 2.4, 5, 5, 4.6},
	}
	for _, i := range items {
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			a.requirement(i), a.state(i), append(a.found(i), cell(a.papersOf(i))...), a.needed(i), clause(i.Rule),
		}})
	}
	return t
}

// waived shows each finding set aside with the waiver that does it.
func (a *author) waived() Table {
	t := Table{
		Caption: captionWaived, Head: []string{colRequirement, colOutcome, colFound, colWaiver, colUntil},
		Shares: []float64{5, 2.4, 5, 6, 2.4},
	}
	for _, i := range a.Pick(func(i verdict.Item) bool { return i.Finding.Outcome == verdict.Waived }) {
		w := a.m.Node("waivers." + i.Finding.Waiver)
		if w == nil {
			continue
		}
		says := cell(say(fmt.Sprintf(waiverSays, w.ID, w.Word("reason"))), say(fmt.Sprintf(waiverBy, a.text(w.Field("by")))))
		if papers := a.papers(w.Word("document")); papers != nil {
			says = append(says, say(waiverPaper).and(papers))
		}
		state := append(a.state(i), say(i.Finding.Waived))
		found := append(a.found(i), a.needed(i)...)
		t.Rows = append(t.Rows, Row{Cells: []Cell{a.requirement(i), state, found, says, cell(say(w.Word("until")))}})
	}
	return t
}

func (a *author) workToDo() []Text {
	var list []Text
	for _, w := range a.items("work") {
		if w.Word("done") == "" {
			what := a.cellOf(w, "what")
			line := what[0].and(say(", " + fmt.Sprintf(closeBy, a.text(w.Field("close_by")))))
			if by := w.Word("by"); by != "" {
				line = line.and(say(", " + by))
			}
			list = append(list, line)
		}
	}
	return list
}

// idle tells of waivers that did nothing.
func (a *author) idle() []Text {
	var list []Text
	for _, i := range a.Idle() {
		list = append(list, say(fmt.Sprintf(waiverIdle, i.Waiver.ID, a.name(i.Rule), i.Why, a.text(i.Waiver.Field("reason")), a.text(i.Waiver.Field("by")))))
	}
	return list
}

// cautions are those of the hold point and of what is open.
func (a *author) cautions() []Block {
	lines := append([]string{}, wording.Cautions(a.Report.Verdict.Hold)...)
	for _, i := range a.Items {
		if report.Open(i) && i.Rule.Caution != "" {
			lines = append(lines, i.Rule.Caution)
		}
	}
	return []Block{List{each(distinct(lines))}}
}
