package dossier

import (
	"fmt"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report/figuresheet"
	"trialfit/internal/report/pictures"
	"trialfit/internal/schema"
	"trialfit/internal/verdict"
)

// matters says whether a finding holds its figure against a limit that weighs
// in an approval.
func matters(i verdict.Item) bool {
	return i.Finding.Outcome != verdict.NotApplicable && (i.Rule.Region != "" || i.Due && i.Level == "must")
}

// figuresThatMatter shows the figures an inspector would ask for, how they
// were computed, and the pictures.
func (a *author) figuresThatMatter() []Block {
	values := Table{
		Caption: captionFigures, Head: []string{colFigure, colValue, colNeeded, colMargin, colOutcome},
		Shares: []float64{6, 4.4, 5, 3.6, 2.2},
	}
	working := Table{Caption: captionWorking, Head: []string{colFigure, colWorking, colSource}, Shares: []float64{4, 10, 5}}
	var last *figures.Figure
	for _, l := range (figuresheet.Sheet{Build: a.Build}).Lines() {
		shown := false
		for _, i := range l.Held {
			if !matters(i) || l.Result == nil || !l.Result.Ok() {
				continue
			}
			values.Rows = append(values.Rows, Row{Cells: []Cell{a.figure(l), a.figureValue(l), a.needed(i), a.margin(i), a.state(i)}})
			shown = true
		}
		if !shown {
			continue
		}
		if last != l.Figure {
			formula := cell(say(fmt.Sprintf(formulaIs, l.Figure.Formula)))
			working.Rows = append(working.Rows, Row{Cells: []Cell{cell(say(l.Figure.Title), code(l.Figure.ID)), formula, source(l.Figure)}})
			last = l.Figure
		}
		at := &working.Rows[len(working.Rows)-1].Cells[1]
		*at = append(*at, a.working(l)...)
	}
	var blocks []Block
	if len(values.Rows) > 0 {
		blocks = append(blocks, Paragraph{Text: say(figuresNote)}, values)
	} else {
		blocks = append(blocks, Paragraph{Text: say(noFigure)})
	}
	blocks = append(blocks, a.drawings()...)
	if len(working.Rows) > 0 {
		blocks = append(blocks, working)
	}
	return blocks
}

func (a *author) drawings() []Block {
	blocks := []Block{Heading{captionDrawn}}
	var lacking []Text
	for _, p := range pictures.All(a.m, a.Report.Computed) {
		if p.Drawn() {
			blocks = append(blocks, Drawing{p})
			continue
		}
		var names []string
		for _, path := range p.Missing {
			names = append(names, a.plain(path))
		}
		lacking = append(lacking, say(fmt.Sprintf(pictureLacks, p.Title, strings.Join(names, ", "))))
	}
	if lacking != nil {
		blocks = append(blocks, List{lacking})
	}
	return blocks
}

// figure names a figure, what it is of, and its id.
func (a *author) figure(l figuresheet.Line) Cell {
	c := cell(say(l.Figure.Title))
	if l.Subject != "build" {
		c = append(c, say(fmt.Sprintf(onSubject, a.name(l.Subject))))
	}
	return append(c, code(l.Figure.ID))
}

func (a *author) figureValue(l figuresheet.Line) Cell {
	r := l.Result
	c := cell(strong(a.units.print(r.Low, r.High, r.Figure.Kind, l.Unit)))
	if r.Basis != "" {
		c = append(c, say(fmt.Sprintf(weakest, r.Basis)))
	}
	return c
}

// needed is the limit as the report words it, and in the region's units.
func (a *author) needed(i verdict.Item) Cell {
	return cell(say(a.inBoth(a.plain(i.Needed), i.Finding.LimitPath, i.Finding.Limit)))
}

func (a *author) margin(i verdict.Item) Cell {
	room, kind, ok := i.Finding.Room()
	if !ok || i.Margin == "" {
		return cell(say(i.Margin))
	}
	if room < 0 {
		room = -room
	}
	return cell(say(a.inBoth(i.Margin, i.Finding.Path, &verdict.Shown{Low: &room, High: &room, Kind: string(kind)})))
}

// inBoth puts the value at a path into the units of the region, behind the words
// for it in a sentence, which are in those of the builder.
func (a *author) inBoth(sentence, path string, s *verdict.Shown) string {
	if !s.Numeric() {
		return sentence
	}
	kind := quantity.Kind(s.Kind)
	unit := written(sentence, kind)
	if unit == "" {
		return sentence
	}
	printed := quantity.Print(*s.Low, *s.High, kind, unit)
	before, after, found := strings.Cut(sentence, printed)
	if !found {
		return sentence
	}
	return before + printed + a.units.of(path).beside(*s.Low, *s.High, kind, unit) + after
}

// written is the unit of a kind that a sentence uses first, "" for none.
func written(sentence string, kind quantity.Kind) string {
	words := strings.FieldsFunc(sentence, func(r rune) bool { return strings.ContainsRune(" ,;()", r) })
	for at, word := range words {
		if at == 0 || word == "" || !strings.ContainsAny(words[at-1], "0123456789") {
			continue
		}
		for _, unit := range quantity.Symbols(kind) {
			if word == unit || at+1 < len(words) && word+" "+words[at+1] == unit {
				return unit
			}
		}
	}
	return ""
}

// working is the formula with its numbers, and the inputs.
func (a *author) working(l figuresheet.Line) Cell {
	var c Cell
	if l.Subject != "build" {
		c = cell(strong(a.name(l.Subject)))
	}
	if l.Numbers != "" {
		c = append(c, say(a.plain(fmt.Sprintf(numbersAre, l.Numbers))))
	}
	var inputs Text
	for _, leaf := range l.Result.Inputs {
		if leaf.Path == figures.Today {
			continue
		}
		n := a.m.Node(input.Written(a.m, leaf.Path))
		if n == nil || n.Shape.Type != schema.Leaf || n.State == manifest.Missing {
			continue
		}
		if inputs == nil {
			inputs = say(fmt.Sprintf(inputsAre, ""))
		} else {
			inputs = inputs.and(say("; "))
		}
		inputs = inputs.and(say(a.shortName(n, l.Subject)+" "), a.value(n))
	}
	if inputs != nil {
		c = append(c, inputs)
	}
	return c
}

// source names where a formula comes from.
func source(f *figures.Figure) Cell {
	text := f.Source.Title + " (" + f.Source.Basis + ")"
	if f.Source.URL != "" {
		return cell(link(text, f.Source.URL))
	}
	return cell(say(text))
}
