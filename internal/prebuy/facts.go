package prebuy

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// Office is a question that only an authority settles, and which of the
// leading combinations raise it.
type Office struct {
	Rule, Ask, Office string
	Regions           []string
	Concerns          []string
}

// facts asks for what musts of the leading combinations wait for: values that
// are not known, and values whose range lies across a limit.
func (r *Result) facts(book *rulebook.Book) []Ask {
	byPath := map[string]*Ask{}
	var order []string
	add := func(c *Close, paths []string, fill func(*Ask)) {
		key := strings.Join(r.homes(c, paths), " ")
		a := byPath[key]
		if a == nil {
			a = &Ask{Paths: r.homes(c, paths)}
			r.word(a, c, paths)
			byPath[key] = a
			order = append(order, key)
		}
		if !slices.Contains(a.Concerns, c.ID) {
			a.Concerns = append(a.Concerns, c.ID)
		}
		fill(a)
	}
	for _, c := range r.Close {
		for region, items := range c.Items {
			for _, i := range items {
				if i.Level != "must" || !i.Due || i.Finding.Outcome != verdict.Unproven || c.Regions[region].Out != nil {
					continue
				}
				switch {
				case i.Finding.Comparator == "answered":
					r.office(c, region, i, book)
				case report.Lacking(i):
					share, means := 0.05, justKnown
					if slices.Contains(i.Rule.Outcomes, verdict.NotMet) {
						share, means = 1, openUntil
					}
					for _, path := range i.Finding.Missing {
						add(c, []string{path}, func(a *Ask) {
							if share > a.Decides {
								a.Decides, a.Share = share, means
							}
							a.Settles = settles(a.Settles, i.Rule.Title)
						})
					}
				case i.Finding.Reason == "straddles":
					d, result := decider(c, region, i)
					share, ifs, places := 0.0, []string(nil), []string(nil)
					means := "both narrowed together settle it"
					switch {
					case d == nil:
						places, share = widest(result)
						means = fmt.Sprintf("these two make %.0f %% of its width; no single one and no pair settles it", 200*share)
					case len(d.Paths) == 1:
						places = d.Paths
						share, ifs = r.across(c, i, result, d)
						means = ofRange(share)
					default:
						places, share = d.Paths, 0.5
					}
					if len(places) == 0 {
						continue
					}
					add(c, places, func(a *Ask) {
						if share > a.Decides {
							a.Decides, a.Share = share, means
						}
						a.Settles = settles(a.Settles, i.Rule.Title)
						for _, text := range ifs {
							if !slices.Contains(a.If, text) {
								a.If = append(a.If, text)
							}
						}
					})
				}
			}
		}
	}
	var out []Ask
	for _, key := range order {
		out = append(out, *byPath[key])
	}
	return out
}

func settles(before, title string) string {
	text := "whether " + title
	switch {
	case before == "" || before == text:
		return text
	case strings.Contains(before, title) || strings.HasSuffix(before, ", and more"):
		return before
	case strings.Count(before, "whether") >= 2:
		return before + ", and more"
	}
	return before + "; " + text
}

// office notes a question that a combination raises.
func (r *Result) office(c *Close, region int, i verdict.Item, book *rulebook.Book) {
	q := book.Rules[i.Finding.Subject]
	if q == nil || q.Question == nil {
		return
	}
	n := slices.IndexFunc(r.Offices, func(o Office) bool { return o.Rule == q.ID })
	if n < 0 {
		r.Offices = append(r.Offices, Office{Rule: q.ID, Ask: q.Question.Ask, Office: q.Question.Office})
		n = len(r.Offices) - 1
	}
	o := &r.Offices[n]
	if code := r.Intent.Regions[region]; !slices.Contains(o.Regions, code) {
		o.Regions = append(o.Regions, code)
	}
	if !slices.Contains(o.Concerns, c.ID) {
		o.Concerns = append(o.Concerns, c.ID)
	}
}

// decider finds the values whose uncertainty decides a finding.
func decider(c *Close, region int, i verdict.Item) (*figures.Decider, figures.Result) {
	for _, computed := range c.Reports[region].Computed {
		for _, result := range computed.Results {
			path := strings.Join(append([]string{"figures", result.Figure.ID}, result.IDs...), ".")
			if path == i.Finding.Path && i.Finding.Limit.Numeric() {
				return figures.Decide(result, figures.Comparator(i.Finding.Comparator), *i.Finding.Limit.Low, *i.Finding.Limit.High), result
			}
		}
	}
	return nil, figures.Result{}
}

// widest are the two values that widen a figure most, where neither one nor a
// pair settles the matter, and half the share of its width that they make.
func widest(r figures.Result) (places []string, share float64) {
	if !r.Ok() || r.High == r.Low {
		return nil, 0
	}
	type gain struct {
		path string
		left float64
	}
	var gains []gain
	exactly := map[string]figures.Range{}
	for _, l := range r.Inputs {
		if l.State != figures.Given || l.Low == l.High {
			continue
		}
		middle := l.Low + (l.High-l.Low)/2
		if low, high, ok := r.At(map[string]figures.Range{l.Path: {Low: middle, High: middle}}); ok {
			gains = append(gains, gain{l.Path, high - low})
		}
		exactly[l.Path] = figures.Range{Low: middle, High: middle}
	}
	slices.SortStableFunc(gains, func(a, b gain) int { return cmp.Compare(a.left, b.left) })
	windows := map[string]figures.Range{}
	for _, g := range gains[:min(2, len(gains))] {
		places = append(places, g.path)
		windows[g.path] = exactly[g.path]
	}
	low, high, ok := r.At(windows)
	if !ok {
		return nil, 0
	}
	return places, (1 - (high-low)/(r.High-r.Low)) / 2
}

// samples is how finely the range of a value is looked at.
const samples = 60

// across finds the share of a value's range in which it settles a finding, and
// says what follows from which answer.
func (r *Result) across(c *Close, i verdict.Item, result figures.Result, d *figures.Decider) (float64, []string) {
	path := d.Paths[0]
	at := slices.IndexFunc(result.Inputs, func(l figures.Leaf) bool { return l.Path == path })
	if at < 0 {
		return 0, nil
	}
	low, high := result.Inputs[at].Low, result.Inputs[at].High
	limit := *i.Finding.Limit.Low
	upper := i.Finding.Comparator == "at most"
	side := func(x float64) int {
		a, b, ok := result.At(map[string]figures.Range{path: {Low: x, High: x}})
		switch {
		case !ok:
			return 0
		case upper && b <= limit, !upper && a >= limit:
			return 1
		case upper && a > limit, !upper && b < limit:
			return -1
		}
		return 0
	}
	settled, ifs := 0, []string{}
	was, from := 0, low
	kind, unit, _ := input.Quantity(c.Manifest, path)
	tell := func(to float64) {
		if was == 0 {
			return
		}
		says := c.ID + " may work"
		if was < 0 {
			says = c.ID + " can't work"
		}
		ifs = append(ifs, fmt.Sprintf("%s: %s", quantity.Print(from, to, kind, unit), says))
	}
	for n := range samples + 1 {
		x := low + (high-low)*float64(n)/samples
		s := side(x)
		if s != 0 {
			settled++
		}
		if s != was {
			tell(low + (high-low)*float64(n-1)/samples)
			was, from = s, x
		}
	}
	tell(high)
	return float64(settled) / (samples + 1), ifs
}

// homes are the places of the shortlist where values of a combination's
// manifest are written.
func (r *Result) homes(c *Close, paths []string) []string {
	out := make([]string, len(paths))
	for i, path := range paths {
		path = input.Written(c.Manifest, path)
		if who := r.teller(c, path); who != nil {
			out[i] = who.node.Path + ".known." + path
		} else {
			out[i] = "intent." + path
		}
	}
	return out
}

// onPapers is what the papers of a chassis say of its registration; the rest is
// for the intent to say.
var onPapers = []string{"registration.title_fuel", "registration.first_registered"}

// teller is the candidate that a place of the manifest belongs to, nil where it
// is the intent.
func (r *Result) teller(c *Close, path string) *Candidate {
	section, _, _ := strings.Cut(path, ".")
	donor, chassis := c.Donor.node.Find("known."+path), c.Chassis.node.Find("known."+path)
	switch {
	case donor != nil && donor.State != manifest.Missing:
		return c.Donor
	case chassis != nil && chassis.State != manifest.Missing:
		return c.Chassis
	case section == "masses", section == "evidence", section == "registration" && !slices.Contains(onPapers, path):
		return nil
	case chassis == nil && donor != nil, slices.Contains(ofEngine, section) && donor != nil && known(c.Donor, section) != nil:
		return c.Donor
	case chassis != nil:
		return c.Chassis
	}
	return nil
}

// word says how to find the values at paths of a combination's manifest.
func (r *Result) word(a *Ask, c *Close, paths []string) {
	var texts, with []string
	for _, path := range paths {
		path = input.Written(c.Manifest, path)
		n := c.Manifest.Node(path)
		if n == nil {
			continue
		}
		way, with1 := tool(n)
		if a.Way == "" {
			a.Way = way
		}
		of := ""
		if who := r.teller(c, path); who != nil {
			of = who.ID
			if a.Of == "" {
				a.Of = who.ID
			}
		}
		text := n.Shape.Noun() + " (" + path + ")"
		if of != "" {
			text = of + ": " + text
		}
		if n.Value != nil {
			text += ", now " + shown(n)
		}
		if d := n.Shape.Description; d != "" {
			text += ". " + strings.TrimSuffix(d, ".")
		}
		texts = append(texts, text+".")
		if !slices.Contains(with, with1) {
			with = append(with, with1)
		}
		a.Lines = append(a.Lines, n.At.Line)
	}
	a.Text, a.Tool = strings.Join(texts, " "), strings.Join(with, "; ")
}

func shown(n *manifest.Node) string {
	if n.Value.Numeric {
		return quantity.Print(n.Value.Low, n.Value.High, n.Value.Kind, n.Value.Unit)
	}
	return n.Value.Text
}
