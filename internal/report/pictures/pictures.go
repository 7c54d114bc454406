// Package pictures draws what is easier to see than to read: loads on a number
// line, speeds in every gear, what changes along a pipe or a cable. They are
// drawn from the same values as the calculation sheet and show them as ranges.
//
// Each picture is one SVG element without script or style sheet, in the colour
// of the text around it, with a title and a description that says every number
// in words. The same values give the same bytes.
package pictures

import (
	"slices"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
)

// Picture is one drawing, or what it lacks.
type Picture struct {
	// Name is short, for files and anchors: "axle-loads".
	Name string
	// Title says what is shown.
	Title string
	// Missing lists what keeps it from being drawn: the manifest paths that are
	// not known, or not within the range of a formula.
	Missing []string

	// Drawing is nil where something is missing.
	Drawing *Drawing
}

// Drawn says whether there is a drawing.
func (p Picture) Drawn() bool { return len(p.Missing) == 0 && p.Drawing != nil }

// Element is the drawing as an element to stand in a page.
func (p Picture) Element() string {
	return strings.Replace(p.Drawing.svg(), `<svg `, `<svg style="max-width:100%;height:auto" `, 1)
}

// File is the drawing as a document of its own, dark on white.
func (p Picture) File() string {
	return `<?xml version="1.0" encoding="UTF-8"?>` + "\n" +
		strings.Replace(p.Drawing.svg(), `<svg `, `<svg style="color:#111;background:#fff" `, 1)
}

// All draws every picture of a build, in a fixed order. One of a part that the
// build has not got, such as charge air in an engine that breathes by itself,
// is left out.
func All(m *manifest.Manifest, computed []input.Computed) []Picture {
	f := facts{manifest: m, results: map[string]figures.Result{}}
	for _, c := range computed {
		for _, r := range c.Results {
			f.results[key(r.Figure.ID, r.IDs...)] = r
		}
	}
	var all []Picture
	for _, draw := range []func(facts) Picture{
		axleLoads, speeds, jointAngles, temperatures, crankingVoltage, exhaustPressure,
	} {
		if p := draw(f); !slices.ContainsFunc(p.Missing, f.none) {
			all = append(all, p)
		}
	}
	return all
}

// facts is where pictures find their values.
type facts struct {
	manifest *manifest.Manifest
	results  map[string]figures.Result
}

func key(id string, ids ...string) string { return strings.Join(append([]string{id}, ids...), "/") }

// value is a range in SI units and how the sheet prints it.
type value struct {
	low, high float64
	kind      quantity.Kind
	unit      string
}

func (v value) text() string { return quantity.Print(v.low, v.high, v.kind, v.unit) }

// lines is the value as the sheet prints it, and in the unit of the picture
// where that is another.
func (v value) lines(unit string) []string {
	own := v.text()
	if other := quantity.Print(v.low, v.high, v.kind, unit); other != own {
		return []string{own, "= " + other}
	}
	return []string{own}
}

// in is that on one line.
func (v value) in(unit string) string { return strings.Join(v.lines(unit), " ") }

// figure returns the value of a figure, or what it lacks.
func (f facts) figure(id string, ids ...string) (value, []string) {
	r, ok := f.results[key(id, ids...)]
	if !ok {
		return value{}, []string{"figure " + id}
	}
	var lacks []string
	for _, path := range append(append([]string{}, r.Missing...), r.None...) {
		lacks = append(lacks, input.Written(f.manifest, path))
	}
	for _, e := range r.Outside {
		lacks = append(lacks, input.Written(f.manifest, e.Path)+" within the range of the formula")
	}
	return value{r.Low, r.High, r.Figure.Kind, input.Unit(f.manifest, r)}, lacks
}

// leaf returns the value at a manifest path, or the path where there is none.
func (f facts) leaf(path string) (value, []string) {
	n := f.manifest.Node(path)
	if n == nil || n.Value == nil || !n.Value.Numeric || n.Value.Kind == "" {
		return value{}, []string{path}
	}
	v := n.Value
	return value{v.Low, v.High, v.Kind, v.Unit}, nil
}

// none says that the manifest says there is none at a path.
func (f facts) none(path string) bool {
	n := f.manifest.Node(path)
	return n != nil && n.State == manifest.None
}

// items returns the ids of a list, in manifest order.
func (f facts) items(list string) []string {
	n := f.manifest.Node(list)
	if n == nil {
		return nil
	}
	var ids []string
	for _, item := range n.Items {
		ids = append(ids, item.ID)
	}
	return ids
}

// heading is the title of a picture with the name of its build.
func (f facts) heading(title string) string {
	return title + ": " + report.Plain(f.manifest.Name())
}

// distinct lists each text once, in its first place.
func distinct(lists ...[]string) []string {
	var all []string
	seen := map[string]bool{}
	for _, list := range lists {
		for _, text := range list {
			if !seen[text] {
				all = append(all, text)
			}
			seen[text] = true
		}
	}
	return all
}

// lacking is a note on what a picture leaves out.
func lacking(what string, paths []string) string {
	return what + " is not shown; lacking: " + strings.Join(paths, ", ")
}
