package prebuy

import (
	"fmt"
	"slices"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/vin"
)

// engine says whether a donor has an engine that is considered: why not, or
// what is not known to be met.
func (s *Shortlist) engine(d *Candidate) (*Reason, string) {
	if len(s.Intent.Engines) == 0 {
		return nil, ""
	}
	family := d.node.Find("known.engine.family")
	if family == nil || family.Value == nil {
		return nil, "whether the engine of " + d.ID + " is one of those considered is not known"
	}
	if slices.Contains(s.Intent.Engines, family.Value.Text) {
		return nil, ""
	}
	return &Reason{Alone: d.ID, Text: fmt.Sprintf("its engine is a %s, which is not among those considered", family.Value.Text), At: family.At}, ""
}

// speed says whether a combination reaches the cruising speed.
func (j *jury) speed(b *subject) (*Reason, string) {
	want := j.s.Intent.Cruising
	if want == nil || j.cruise == nil {
		return nil, ""
	}
	r := j.figure(b, j.cruise).Results[0]
	switch {
	case !r.Ok():
		return nil, "whether it reaches " + want.Text + " in top gear is not known"
	case r.High < want.Low:
		at := manifest.Position{}
		if len(r.Inputs) > 0 {
			at = b.m.Position(r.Inputs[0].Path)
		}
		return &Reason{
			Text:   fmt.Sprintf("it reaches %s in top gear at governed speed, %s is wanted", quantity.Print(r.Low, r.High, quantity.Speed, "km/h"), want.Text),
			Source: r.Figure.Source.Title, At: at,
		}, ""
	case r.Low < want.High:
		return nil, fmt.Sprintf("it may reach %s in top gear or not: %s", want.Text, quantity.Print(r.Low, r.High, quantity.Speed, "km/h"))
	}
	return nil, ""
}

// budget says whether a combination can be finished for what there is.
func (s *Shortlist) budget(x *Combination) (*Reason, string) {
	have := s.Intent.Budget
	if have == nil {
		return nil, ""
	}
	switch t := x.Total; {
	case t.Low.Cmp(have.Span.High) > 0 && !t.OpenLow:
		return &Reason{Text: fmt.Sprintf("it costs %s to finish, the budget is %s", t.Print(s.Currency), have.Span.Print(s.Currency)), At: have.At}, ""
	case t.OpenHigh || t.High.Cmp(have.Span.Low) > 0:
		return nil, fmt.Sprintf("it may cost more than the budget of %s: %s", have.Span.Print(s.Currency), t.Print(s.Currency))
	}
	return nil, ""
}

// contradictions are what can't be true together, each at its line.
func (s *Shortlist) contradictions() []Note {
	var notes []Note
	first := map[string]*Candidate{}
	for _, c := range slices.Concat(s.Chassis, s.Donors) {
		if n := c.node.Find("known.chassis.vin"); n != nil && n.Value != nil {
			if other := first[n.Value.Text]; other != nil {
				notes = append(notes, Note{n.At, fmt.Sprintf("%s has the VIN of %s (line %d): one of the two was copied wrongly, or they are one vehicle", c.ID, other.ID, other.At.Line)})
			} else {
				first[n.Value.Text] = c
			}
			notes = append(notes, digit(c, n)...)
		}
		notes = append(notes, heavy(c)...)
	}
	numbers := map[string]*Candidate{}
	for _, d := range s.Donors {
		if n := d.node.Find("known.engine.number"); n != nil && n.Value != nil {
			if other := numbers[n.Value.Text]; other != nil {
				notes = append(notes, Note{n.At, fmt.Sprintf("%s has the engine number of %s (line %d)", d.ID, other.ID, other.At.Line)})
			}
			numbers[n.Value.Text] = d
		}
	}
	return notes
}

// digit looks at the check digit where the number has the length and the year
// in which it came up: 49 CFR 565.15 (second hand, as in internal/vin).
func digit(c *Candidate, n *manifest.Node) []Note {
	year := c.node.Find("known.chassis.model_year")
	if len(n.Value.Text) != vin.Length || vin.Checks(n.Value.Text) || year == nil || year.Value == nil || year.Value.Low < 1981 {
		return nil
	}
	return []Note{{n.At, fmt.Sprintf("%s: the check digit of VIN %s is wrong; right for vehicles of the North American market: read it again", c.ID, n.Value.Text)}}
}

// heavy looks for a vehicle that weighs more than its plate allows.
func heavy(c *Candidate) []Note {
	var notes []Note
	weighed := func(corners ...string) (low, high float64, n *manifest.Node) {
		for _, corner := range corners {
			w := c.node.Find("known.baseline.corner_weights." + corner)
			if w == nil || w.Value == nil {
				return 0, 0, nil
			}
			low, high, n = low+w.Value.Low, high+w.Value.High, w
		}
		return low, high, n
	}
	for _, plate := range []struct {
		path, what string
		corners    []string
	}{
		{"gross", "gross rating", []string{"front_left", "front_right", "rear_left", "rear_right"}},
		{"front_axle", "front axle rating", []string{"front_left", "front_right"}},
		{"rear_axle", "rear axle rating", []string{"rear_left", "rear_right"}},
	} {
		r := c.node.Find("known.chassis.ratings." + plate.path)
		low, high, n := weighed(plate.corners...)
		if r == nil || r.Value == nil || n == nil || low <= r.Value.High {
			continue
		}
		notes = append(notes, Note{n.At, fmt.Sprintf("%s weighs %s empty, more than its %s of %s (line %d): one of the two is wrong",
			c.ID, quantity.Print(low, high, quantity.Mass, n.Value.Unit), plate.what, r.Value.Text, r.At.Line)})
	}
	return notes
}
