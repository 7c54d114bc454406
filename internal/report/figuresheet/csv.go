package figuresheet

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/report"
)

// columns of the table; a number has a cell of its own, and its unit another.
var columns = []string{
	"id", "title", "subject", "low", "high", "unit", "low_si", "high_si", "unit_si",
	"limit", "comparator", "margin", "outcome", "rule", "formula", "inputs", "missing", "source",
}

// CSV writes the sheet as a table, a row for each figure and subject. Limits and
// margins are in the unit of the row. Where several rules hold one figure, their
// cells are divided by "; " in the same order.
func (s Sheet) CSV(w io.Writer) error {
	rows := [][]string{columns}
	for _, e := range s.entries() {
		rows = append(rows, s.row(e))
	}
	return report.CSV(w, rows)
}

func (s Sheet) row(e entry) []string {
	f := s.figure(e)
	var shown span
	if f.span != nil {
		shown = *f.span
	}
	var limits, comparators, margins, outcomes, rules []string
	for _, l := range f.Limits {
		number := ""
		if l.Limit != nil {
			number = ends(l.Limit.Low, l.Limit.High)
		}
		room := ""
		if l.Margin != nil {
			room = string(l.Margin.Value)
		}
		limits, comparators, margins = append(limits, number), append(comparators, l.Comparator), append(margins, room)
		outcomes, rules = append(outcomes, l.Outcome), append(rules, l.Rule)
	}
	inputs := make([]string, len(f.Inputs))
	for i, l := range f.Inputs {
		switch {
		case l.Line == 0: // the day of the judgement
			inputs[i] = l.Path + ": " + l.Text
		case l.State == leafStates[figures.Missing]:
			inputs[i] = l.Path + ": not known"
		case l.State == leafStates[figures.None]:
			inputs[i] = fmt.Sprintf("%s (line %d): none", l.Path, l.Line)
		default:
			inputs[i] = fmt.Sprintf("%s (line %d): %s", l.Path, l.Line, l.Text)
		}
	}
	together := func(list []string) string { return strings.Join(list, "; ") }
	return []string{
		f.ID, f.Title, f.Subject, string(shown.Low), string(shown.High), shown.Unit,
		string(shown.SI.Low), string(shown.SI.High), shown.SI.Unit,
		together(limits), together(comparators), together(margins), together(outcomes), together(rules),
		f.Formula, together(inputs), together(e.lacking()), source(e.figure),
	}
}

// lacking tells why a figure has no value.
func (e entry) lacking() []string {
	var list []string
	for _, path := range e.lacks {
		if e.state == none {
			path += " (none)"
		}
		list = append(list, path)
	}
	return append(list, e.excess...)
}

func ends(low, high json.Number) string {
	if low == high {
		return string(low)
	}
	return string(low) + ".." + string(high)
}
