package figuresheet

import (
	"encoding/json"
	"io"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/quantity"
	"trialfit/internal/report/wording"
)

// Version of the form of the sheet for programs.
const Version = 1

type document struct {
	Version  int     `json:"trialfit_figures"`
	Builds   []build `json:"builds"`
	Deferral string  `json:"deferral"`
}

type build struct {
	Build   string         `json:"build"`
	File    string         `json:"file"`
	Hold    string         `json:"hold"`
	Today   string         `json:"today"`
	Regions []string       `json:"regions"`
	Counts  map[string]int `json:"counts"`
	Figures []figure       `json:"figures"`
}

type figure struct {
	ID      string `json:"id"`
	Title   string `json:"title"`
	Subject string `json:"subject"`
	State   string `json:"state"`
	*span
	Basis   string   `json:"basis,omitempty"`
	Limits  []limit  `json:"limits,omitempty"`
	WouldDo []would  `json:"would_do,omitempty"`
	Formula string   `json:"formula"`
	Numbers string   `json:"numbers,omitempty"`
	Inputs  []leaf   `json:"inputs"`
	Missing []string `json:"missing,omitempty"`
	None    []string `json:"none,omitempty"`
	Outside []string `json:"outside,omitempty"`
	Source  cited    `json:"source"`
}

// span is a range in the unit that people read it in, and in SI.
type span struct {
	Low  json.Number `json:"low"`
	High json.Number `json:"high"`
	Unit string      `json:"unit"`
	SI   si          `json:"si"`
}

type si struct {
	Low  json.Number `json:"low"`
	High json.Number `json:"high"`
	Unit string      `json:"unit"`
}

type limit struct {
	Rule       string `json:"rule"`
	Level      string `json:"level"`
	Hold       string `json:"hold"`
	Due        bool   `json:"due"`
	Comparator string `json:"comparator"`
	Limit      *span  `json:"limit,omitempty"`
	Needed     string `json:"needed"`
	Outcome    string `json:"outcome"`
	Reason     string `json:"reason,omitempty"`
	// Margin is at the nearer ends, negative where the limit is passed.
	Margin *margin `json:"margin,omitempty"`
}

type margin struct {
	Value json.Number `json:"value"`
	Unit  string      `json:"unit"`
	SI    json.Number `json:"si"`
	Text  string      `json:"text"`
}

type would struct {
	Path string `json:"path"`
	Size string `json:"size"`
	Rule string `json:"rule"`
}

type leaf struct {
	Name  string `json:"name"`
	Path  string `json:"path"`
	Line  int    `json:"line,omitempty"`
	State string `json:"state"`
	Text  string `json:"text,omitempty"`
	Basis string `json:"basis,omitempty"`
}

var leafStates = map[figures.State]string{figures.Given: "given", figures.Missing: "missing", figures.None: "none"}

type cited struct {
	Title string `json:"title"`
	URL   string `json:"url,omitempty"`
	Basis string `json:"basis"`
}

// JSON writes the sheets of several builds for other programs.
func JSON(w io.Writer, sheets []Sheet) error {
	doc := document{Version: Version, Builds: []build{}, Deferral: wording.Deferral}
	for _, s := range sheets {
		doc.Builds = append(doc.Builds, s.document())
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(doc)
}

func (s Sheet) document() build {
	m, v := s.Build.Report.Manifest, s.Build.Report.Verdict
	b := build{
		Build: m.Name(), File: m.File, Hold: v.Hold, Today: v.Today, Regions: v.Regions,
		Counts: map[string]int{computed: 0, missing: 0, none: 0, outside: 0}, Figures: []figure{},
	}
	for _, e := range s.entries() {
		b.Counts[e.state]++
		b.Figures = append(b.Figures, s.figure(e))
	}
	return b
}

func (s Sheet) figure(e entry) figure {
	f := e.figure
	out := figure{
		ID: f.ID, Title: f.Title, Subject: e.subject, State: e.state, Formula: f.Formula, Numbers: s.numbers(e),
		Inputs: s.leaves(e), Outside: e.excess, Source: cited{f.Source.Title, f.Source.URL, f.Source.Basis},
	}
	switch e.state {
	case computed:
		out.Basis = e.result.Basis
		out.span = spanOf(e.result.Low, e.result.High, f.Kind, e.unit)
	case missing:
		out.Missing = e.lacks
	case none:
		out.None = e.lacks
	}
	for _, h := range e.held {
		out.Limits = append(out.Limits, h.limit(e))
	}
	for _, w := range e.enough {
		out.WouldDo = append(out.WouldDo, would{w.path, w.label, w.rule})
	}
	return out
}

func (h held) limit(e entry) limit {
	f := h.Finding
	out := limit{
		Rule: h.Rule.ID, Level: h.Level, Hold: h.Rule.Hold, Due: h.Due, Comparator: f.Comparator,
		Needed: h.Needed, Outcome: f.Outcome, Reason: h.Reason,
	}
	if f.Limit.Numeric() {
		out.Limit = spanOf(*f.Limit.Low, *f.Limit.High, e.figure.Kind, e.unit)
	}
	if room, kind, ok := f.Room(); ok {
		value, unit := in(room, kind, e.unit)
		out.Margin = &margin{value, unit, json.Number(quantity.Canonical(room)), h.Margin}
	}
	return out
}

func spanOf(low, high float64, kind quantity.Kind, unit string) *span {
	a, shown := in(low, kind, unit)
	b, _ := in(high, kind, unit)
	return &span{a, b, shown, si{json.Number(quantity.Canonical(low)), json.Number(quantity.Canonical(high)), quantity.SI(kind)}}
}

// in is an SI value in a unit, or in SI where the kind does not have the unit.
func in(x float64, kind quantity.Kind, unit string) (json.Number, string) {
	if number, err := quantity.In(x, kind, unit); err == nil {
		return json.Number(quantity.Canonical(number)), unit
	}
	return json.Number(quantity.Canonical(x)), quantity.SI(kind)
}

// leaves lists the inputs of a figure with their symbols and where they stand.
func (s Sheet) leaves(e entry) []leaf {
	m := s.Build.Report.Manifest
	list := []leaf{}
	if e.result == nil {
		return list
	}
	for _, l := range e.result.Inputs {
		at := input.Written(m, l.Path)
		out := leaf{Path: at, State: leafStates[l.State], Basis: l.Basis}
		if at == figures.Today {
			out.Text = s.Build.Report.Verdict.Today
		} else {
			out.Line = m.Position(at).Line
		}
		for i := range e.figure.Inputs {
			for _, own := range leaves(e.result, &e.figure.Inputs[i]) {
				if own.Path == l.Path && out.Name == "" {
					out.Name = e.figure.Inputs[i].Name
				}
			}
		}
		if n := m.Node(at); n != nil && n.Value != nil {
			out.Text = n.Value.Text
		}
		list = append(list, out)
	}
	return list
}
