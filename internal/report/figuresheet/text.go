package figuresheet

import (
	"fmt"
	"io"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/report/lines"
	"trialfit/internal/report/wording"
)

// Text prints the sheet for people, discipline by discipline.
func (s Sheet) Text(w io.Writer, columns int) error {
	p := &lines.Printer{W: w, Columns: columns}
	v := s.Build.Report.Verdict
	p.Line("%s: calculation sheet", report.Plain(s.Build.Report.Manifest.Name()))
	p.Line("limits as of %s, at %s; %s", v.Today, v.Hold, s.Build.Region())
	list := s.entries()
	area := ""
	for i, e := range list {
		if a, _, _ := strings.Cut(e.figure.ID, "."); a != area {
			area = a
			p.Line("\n%s", strings.ToUpper(a[:1])+a[1:])
		}
		if i == 0 || list[i-1].figure != e.figure {
			p.Line("\n%s (%s)", e.figure.Title, e.figure.ID)
			p.Rows([][2]string{{"formula", e.figure.Formula}})
		}
		p.Rows(s.rows(e))
		if i == len(list)-1 || list[i+1].figure != e.figure {
			p.Rows([][2]string{{"source", source(e.figure)}})
		}
	}
	p.Line("")
	for _, c := range counts(list) {
		p.Line("%s", c)
	}
	p.Line("%s", wording.Deferral)
	return p.Err
}

// mostRows is the number of inputs that get a row each.
const mostRows = 8

func source(f *figures.Figure) string {
	out := f.Source.Title + " (" + f.Source.Basis + ")"
	if f.Source.URL != "" {
		out += " " + f.Source.URL
	}
	return out
}

func (s Sheet) rows(e entry) [][2]string {
	var rows [][2]string
	add := func(label, text string) { rows = append(rows, [2]string{label, text}) }
	if e.figure.Per != "" && e.result != nil {
		add("for", e.subject)
	}
	add("numbers", s.numbers(e))
	add("value", s.value(e))
	for _, h := range e.held {
		limit := h.Needed + ": " + h.Finding.Outcome
		if h.Margin != "" {
			limit += ", " + h.Margin
		}
		due := h.Level + " at " + h.Rule.Hold
		if !h.Due {
			due += ", due later"
		}
		add("limit", limit+" ("+h.Rule.ID+", "+due+")")
	}
	for _, would := range e.enough {
		text := would.label + " for " + would.path
		if len(e.held) > 1 {
			text += ", to meet " + would.rule
		}
		add("would do", text)
	}
	var parts []string
	if e.result != nil {
		for _, l := range e.result.Inputs {
			if e.state != missing || l.State != figures.Missing { // those are told already
				parts = append(parts, s.input(e, l))
			}
		}
	}
	if e.figure.Per != "" || e.state == missing || len(parts) > mostRows {
		// A list prints compactly: the inputs of an item in one row.
		parts = []string{strings.Join(parts, "; ")}
	}
	for _, part := range parts {
		add("from", part)
	}
	return rows
}

func (s Sheet) value(e entry) string {
	paths := strings.Join(e.lacks, ", ")
	switch e.state {
	case missing:
		return "not known: " + paths
	case none:
		return "none: " + paths
	case outside:
		return "outside the range the formula holds for: " + strings.Join(e.excess, "; ")
	}
	r := e.result
	out := quantity.Print(r.Low, r.High, r.Figure.Kind, input.Unit(s.Build.Report.Manifest, *r))
	if si := quantity.Print(r.Low, r.High, r.Figure.Kind, ""); si != out && r.Figure.Kind != quantity.Ratio {
		out += " = " + si
	}
	if r.Basis != "" {
		out += "; weakest input " + r.Basis
	}
	return out
}

// input tells where an input stands, what is written there and what it was
// taken as.
func (s Sheet) input(e entry, l figures.Leaf) string {
	m := s.Build.Report.Manifest
	n := m.Node(input.Written(m, l.Path))
	if l.Path == figures.Today {
		return l.Path + ": " + s.Build.Report.Verdict.Today
	}
	if n == nil {
		return l.Path
	}
	path := strings.TrimPrefix(n.Path, e.subject+".")
	at := fmt.Sprintf("%s (line %d)", path, n.At.Line)
	switch {
	case n.State == manifest.None:
		return at + ": none"
	case n.Value == nil:
		return path + ": not known"
	case !n.Value.Numeric || n.Value.Kind == "":
		return at + ": " + n.Value.Text
	}
	out := at + ": " + n.Value.Text
	if n.Value.Basis != "" {
		out += ", " + n.Value.Basis
	}
	if n.Value.Low != n.Value.High {
		out += ", taken as " + quantity.Print(n.Value.Low, n.Value.High, n.Value.Kind, n.Value.Unit)
	}
	return out
}
