package dossier

import (
	"fmt"
	"strings"

	"trialfit/internal/input"
	"trialfit/internal/report"
	"trialfit/internal/report/counter"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// region lists what the rules of the region ask for.
func (a *author) region() []Block {
	blocks := []Block{Facts{{leadRegion, a.chain()}}}
	required := Table{
		Caption: captionRequired, Head: []string{colRequirement, colOutcome, colFound, colPapers, colClause},
		Shares: []float64{5, 2.4, 4.4, 1.8, 5.4},
	}
	for _, i := range a.Items {
		if i.Rule.Region == "" || i.Rule.Question != nil || i.Rule.Collects != "" || i.Finding.Outcome == verdict.NotApplicable {
			continue
		}
		required.Rows = append(required.Rows, Row{Cells: []Cell{
			a.requirement(i), a.state(i), a.found(i), cell(a.papersOf(i)), clause(i.Rule),
		}})
	}
	if len(required.Rows) > 0 {
		blocks = append(blocks, required)
	} else {
		blocks = append(blocks, Paragraph{Text: say(noRequirement)})
	}
	if t := a.notApplicable(); len(t.Rows) > 0 {
		blocks = append(blocks, t)
	}
	blocks = append(blocks, Paragraph{Text: say(wording.NotLegal)})
	return blocks
}

// notApplicable lists the rules of the region that do not reach this build,
// and the values that take it out of their reach.
func (a *author) notApplicable() Table {
	t := Table{Caption: captionNot, Head: []string{colRequirement, colBecause, colClause}, Shares: []float64{5, 5, 6}}
	for _, rule := range a.book.Catalogue() {
		judged, ok := a.Report.Verdict.Rules[rule.ID]
		if !ok || judged.Outcome != verdict.NotApplicable || rule.Region == "" || rule.Collects != "" {
			continue
		}
		var because Cell
		for _, path := range judged.Because {
			because = append(because, say(a.name(path)+": "+a.text(a.m.Node(input.Written(a.m, path)))))
		}
		if because == nil {
			because = cell(say(anyReason))
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{cell(say(rule.Title), code(rule.ID)), because, clause(rule)}})
	}
	return t
}

// requirement names the rule of a finding, how heavy it is, and its subject.
func (a *author) requirement(i verdict.Item) Cell {
	c := cell(say(i.Rule.Title))
	if s := i.Finding.Subject; s != "" && s != "build" && i.Rule.Collects == "" {
		c = append(c, say(fmt.Sprintf(onSubject, a.name(s))))
	}
	level := fmt.Sprintf(levelAt, i.Level, i.Rule.Hold)
	return append(c, say(level+" · ").and(code(i.Rule.ID)))
}

// state is the outcome in words.
func (a *author) state(i verdict.Item) Cell {
	c := cell(strong(i.Finding.Outcome))
	if !i.Due {
		c = append(c, say(dueLater))
	}
	return c
}

// found is what was found, with the value in the region's units too.
func (a *author) found(i verdict.Item) Cell {
	return cell(say(a.inBoth(a.plain(report.Found(i)), i.Finding.Path, i.Finding.Value)))
}

// papersOf are the papers that support a finding: those the rules name, and
// those of the value it is about.
func (a *author) papersOf(i verdict.Item) Text {
	ids := append([]string{}, i.Finding.Evidence...)
	for _, path := range append([]string{i.Finding.Path}, i.Finding.RestsOn...) {
		if n := a.m.Node(input.Written(a.m, path)); n != nil && n.Value != nil {
			ids = append(ids, n.Value.Evidence...)
		}
	}
	return a.papers(ids...)
}

// clause is the source of a rule, with links to where it can be read.
func clause(rule *rulebook.Meta) Cell {
	c := cell(say(fmt.Sprintf(reviewed, rule.Source+" ("+rule.Basis+")", rule.Reviewed)))
	for _, l := range rule.Links {
		title := l.Title
		if title == "" {
			title = l.URL
		}
		c = append(c, link(title, l.URL))
	}
	return c
}

// questions lists what only the authority can settle, with its answers.
func (a *author) questions() []Block {
	asked := counter.Questions(a.Build, a.book)
	if len(asked) == 0 {
		return []Block{Paragraph{Text: say(noQuestion)}}
	}
	t := Table{Head: []string{colQuestion, colOffice, colOutcome, colAnswer}, Shares: []float64{7, 4, 2.4, 6}}
	for _, q := range asked {
		state, rest, _ := strings.Cut(q.State, ": ")
		answer := Cell{}
		for _, id := range q.Item.Finding.Evidence {
			answer = append(answer, a.papers(id).and(say(" "+a.about(id))))
		}
		if rest != "" {
			answer = append(answer, say(a.plain(rest)))
		}
		state, _, _ = strings.Cut(state, ",")
		if len(answer) == 0 {
			answer = cell(say(none))
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			cell(say(q.Rule.Question.Ask), code(q.Rule.ID)), cell(say(q.Rule.Question.Office)), cell(strong(state)), answer,
		}})
	}
	return []Block{Paragraph{Text: say(questionsNote)}, t}
}

// about describes a paper in a line: title, issuer, date.
func (a *author) about(id string) string {
	item := a.m.Node("evidence." + id)
	var parts []string
	for _, field := range []string{"title", "issuer", "date"} {
		if word := item.Word(field); word != "" {
			parts = append(parts, word)
		}
	}
	return strings.Join(parts, ", ")
}
