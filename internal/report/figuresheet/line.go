package figuresheet

import (
	"trialfit/internal/figures"
	"trialfit/internal/verdict"
)

// Line is one figure for one subject in the words of the sheet, for a document
// that shows some of them.
type Line struct {
	Figure *figures.Figure
	// Subject is "build", or the manifest path of the list item.
	Subject string
	// Result is nil where the list of subjects is missing or none.
	Result *figures.Result
	// Unit is the one its numbers are printed in.
	Unit string
	// Value says what it is or why there is none, Numbers is the formula with
	// the numbers put in, "" without a value.
	Value, Numbers string
	// Held lists the findings that hold it against a limit.
	Held []verdict.Item
}

// Lines are the figures of the sheet, in the order of ids and of the manifest.
func (s Sheet) Lines() []Line {
	var lines []Line
	for _, e := range s.entries() {
		l := Line{Figure: e.figure, Subject: e.subject, Result: e.result, Unit: e.unit, Value: s.value(e), Numbers: s.numbers(e)}
		for _, h := range e.held {
			l.Held = append(l.Held, h.Item)
		}
		lines = append(lines, l)
	}
	return lines
}
