// Package figuresheet writes the calculation sheet of a build.
package figuresheet

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report/text"
	"trialfit/internal/report/wording"
)

// Sheet is the computed figures of one build.
type Sheet struct {
	Manifest *manifest.Manifest
	Computed []input.Computed
}

// Text prints the sheet for people, discipline by discipline.
func (s Sheet) Text(w io.Writer, columns int) error {
	if _, err := fmt.Fprintf(w, "%s: calculation sheet\n", s.Manifest.Name()); err != nil {
		return err
	}
	area := ""
	for _, c := range s.Computed {
		if a, _, _ := strings.Cut(c.Figure.ID, "."); a != area {
			area = a
			if _, err := fmt.Fprintf(w, "\n%s\n", strings.ToUpper(a[:1])+a[1:]); err != nil {
				return err
			}
		}
		if err := s.figure(w, columns, c); err != nil {
			return err
		}
	}
	_, err := fmt.Fprintf(w, "\n%s\n", wording.Deferral)
	return err
}

func (s Sheet) figure(w io.Writer, columns int, c input.Computed) error {
	f := c.Figure
	if _, err := fmt.Fprintf(w, "\n%s (%s)\n", f.Title, f.ID); err != nil {
		return err
	}
	rows := [][2]string{{"formula", f.Formula}}
	if len(c.Results) == 0 {
		list, _, _ := strings.Cut(f.Per, ".*")
		rows = append(rows, [2]string{"value", map[figures.State]string{
			figures.Missing: "not known: " + list,
			figures.None:    "none: " + list + " says there is nothing to compute",
			figures.Given:   "nothing to compute",
		}[c.State]})
	}
	for _, r := range c.Results {
		label := "value"
		if f.Per != "" {
			rows = append(rows, [2]string{"for", r.Subject})
		}
		rows = append(rows, [2]string{label, s.value(r)})
		for _, l := range r.Inputs {
			rows = append(rows, [2]string{"from", s.input(l)})
		}
	}
	source := f.Source.Title + " (" + f.Source.Basis + ")"
	if f.Source.URL != "" {
		source += " " + f.Source.URL
	}
	rows = append(rows, [2]string{"source", source})
	return text.Rows(w, columns, rows)
}

func (s Sheet) value(r figures.Result) string {
	switch {
	case len(r.Missing) > 0:
		return "not known: " + strings.Join(s.written(r.Missing), ", ")
	case len(r.None) > 0:
		return "none: " + strings.Join(s.written(r.None), ", ")
	case len(r.Outside) > 0:
		var parts []string
		for _, e := range r.Outside {
			parts = append(parts, s.outside(e))
		}
		return "outside the range the formula holds for: " + strings.Join(parts, "; ")
	}
	out := quantity.Print(r.Low, r.High, r.Figure.Kind, input.Unit(s.Manifest, r))
	if si := quantity.Print(r.Low, r.High, r.Figure.Kind, ""); si != out {
		out += " = " + si
	}
	return out
}

func (s Sheet) written(paths []string) []string {
	out := make([]string, len(paths))
	for i, p := range paths {
		out[i] = input.Written(s.Manifest, p)
	}
	return out
}

func (s Sheet) outside(e figures.Excess) string {
	n := s.Manifest.Node(input.Written(s.Manifest, e.Path))
	if n == nil || n.Value == nil {
		return e.Path
	}
	return fmt.Sprintf("%s is %s, needs %s", n.Path, quantity.Print(e.Low, e.High, n.Value.Kind, n.Value.Unit),
		quantity.Print(e.Bounds.Low, e.Bounds.High, n.Value.Kind, n.Value.Unit))
}

func (s Sheet) input(l figures.Leaf) string {
	n := s.Manifest.Node(input.Written(s.Manifest, l.Path))
	if n == nil {
		return l.Path
	}
	at := fmt.Sprintf("%s (line %d)", n.Path, n.At.Line)
	switch {
	case n.State == manifest.None:
		return at + ": none"
	case n.Value == nil:
		return n.Path + ": not known"
	case n.Value.Numeric && n.Value.Kind != "":
		out := at + ": " + n.Value.Text
		if n.Value.Basis != "" {
			out += ", " + n.Value.Basis
		}
		if n.Value.Low != n.Value.High {
			out += ", taken as " + quantity.Print(n.Value.Low, n.Value.High, n.Value.Kind, n.Value.Unit)
		}
		return out
	default:
		return at + ": " + n.Value.Text
	}
}

type figure struct {
	ID      string   `json:"id"`
	Title   string   `json:"title"`
	Subject string   `json:"subject"`
	State   string   `json:"state"`
	Low     *float64 `json:"low,omitempty"`
	High    *float64 `json:"high,omitempty"`
	Unit    string   `json:"unit,omitempty"`
	SI      *si      `json:"si,omitempty"`
	Basis   string   `json:"basis,omitempty"`
	Inputs  []leaf   `json:"inputs"`
	Missing []string `json:"missing,omitempty"`
	None    []string `json:"none,omitempty"`
	Outside []string `json:"outside,omitempty"`
	Formula string   `json:"formula"`
	Source  source   `json:"source"`
}

type si struct {
	Low  json.Number `json:"low"`
	High json.Number `json:"high"`
	Unit string      `json:"unit"`
}

type leaf struct {
	Path  string `json:"path"`
	Line  int    `json:"line"`
	Text  string `json:"text,omitempty"`
	Basis string `json:"basis,omitempty"`
}

type source struct {
	Title string `json:"title"`
	URL   string `json:"url,omitempty"`
	Basis string `json:"basis"`
}

// Document is the sheet as it is written in JSON.
func (s Sheet) document() any {
	list := []figure{}
	for _, c := range s.Computed {
		for _, r := range c.Results {
			list = append(list, s.entry(r))
		}
	}
	return map[string]any{"build": s.Manifest.Name(), "file": s.Manifest.File, "figures": list}
}

// JSON writes the sheets of several builds for other programs.
func JSON(w io.Writer, sheets []Sheet) error {
	builds := make([]any, len(sheets))
	for i, s := range sheets {
		builds[i] = s.document()
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(map[string]any{"trialfit_figures": 1, "builds": builds, "deferral": wording.Deferral})
}

func (s Sheet) entry(r figures.Result) figure {
	f := r.Figure
	e := figure{
		ID: f.ID, Title: f.Title, Subject: r.Subject, State: "computed", Formula: f.Formula, Inputs: []leaf{},
		Missing: s.written(r.Missing), None: s.written(r.None),
		Source: source{f.Source.Title, f.Source.URL, f.Source.Basis},
	}
	for _, l := range r.Inputs {
		at := input.Written(s.Manifest, l.Path)
		out := leaf{Path: at, Line: s.Manifest.Position(at).Line, Basis: l.Basis}
		if n := s.Manifest.Node(at); n != nil && n.Value != nil {
			out.Text = n.Value.Text
		}
		e.Inputs = append(e.Inputs, out)
	}
	for _, o := range r.Outside {
		e.Outside = append(e.Outside, s.outside(o))
	}
	switch {
	case len(r.Missing) > 0:
		e.State = "missing"
	case len(r.None) > 0:
		e.State = "none"
	case len(r.Outside) > 0:
		e.State = "outside"
	default:
		e.Basis = r.Basis
		e.SI = &si{json.Number(quantity.Canonical(r.Low)), json.Number(quantity.Canonical(r.High)), quantity.SI(f.Kind)}
		e.Unit = input.Unit(s.Manifest, r)
		if low, err := quantity.In(r.Low, f.Kind, e.Unit); err == nil {
			if high, err := quantity.In(r.High, f.Kind, e.Unit); err == nil {
				e.Low, e.High = &low, &high
			}
		}
	}
	return e
}
