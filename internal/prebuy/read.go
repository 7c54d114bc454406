package prebuy

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// Read reads the shortlist at path. The error is manifest.Problems, all of
// them, where the fault is in the file.
func Read(path string, book *rulebook.Book) (*Shortlist, error) {
	form, err := schema.ShortlistValidator()
	if err != nil {
		return nil, err
	}
	loader := &manifest.Loader{Validator: form, Unlinked: true}
	m, err := loader.File(path)
	if err != nil {
		return nil, err
	}
	return readAll(m, book)
}

func readAll(m *manifest.Manifest, book *rulebook.Book) (*Shortlist, error) {
	var doc yaml.Node
	if err := yaml.Unmarshal(bytes.TrimPrefix(m.Data, []byte("\xEF\xBB\xBF")), &doc); err != nil {
		return nil, fmt.Errorf("reading %s: %w", m.File, err)
	}
	s := &Shortlist{
		File: m.File, Name: m.Root.Word("name"), Currency: m.Root.Word("currency"),
		wanted: m.Root.Field("intent"), root: doc.Content[0], dir: m.Dir,
	}
	r := &reader{s: s, book: book}
	r.all(m.Root)
	if len(r.problems) > 0 {
		return nil, r.problems.Sorted()
	}
	return s, nil
}

// reader turns the places of a shortlist into values.
type reader struct {
	s        *Shortlist
	book     *rulebook.Book
	problems manifest.Problems
}

func (r *reader) fault(n *manifest.Node, format string, args ...any) {
	r.problems = append(r.problems, manifest.Problem{File: r.s.File, Position: n.At, Message: fmt.Sprintf(format, args...)})
}

func (r *reader) all(root *manifest.Node) {
	s := r.s
	if err := checkCurrency(s.Currency); err != nil {
		r.fault(root.Field("currency"), "%v", err)
		return
	}
	r.intent(s.wanted)
	for _, item := range root.Field("chassis").Items {
		s.Chassis = append(s.Chassis, r.candidate(item, false, len(s.Chassis)))
	}
	for _, item := range root.Field("donors").Items {
		s.Donors = append(s.Donors, r.candidate(item, true, len(s.Donors)))
	}
	r.needs(root.Field("needs"))
	for _, c := range slices.Concat(s.Chassis, s.Donors) {
		for _, p := range c.Brings {
			if p.Meets != "" && s.need(p.Meets) == nil {
				r.fault(c.node.Field("brings").Item(p.ID).Field("meets"), "%s is no need of this build%s", schema.Quote(p.Meets), r.orNeed(p.Meets))
			}
		}
	}
}

func (r *reader) orNeed(word string) string {
	var ids []string
	for _, n := range r.s.Needs {
		ids = append(ids, n.ID)
	}
	if near := schema.Nearest(word, ids); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ": list it under needs, or take one of " + strings.Join(ids, ", ")
}

func (s *Shortlist) need(id string) *Need {
	for _, n := range s.Needs {
		if n.ID == id {
			return n
		}
	}
	return nil
}

func (r *reader) intent(n *manifest.Node) {
	in := &r.s.Intent
	regions := n.Field("regions")
	for code := range strings.SplitSeq(regions.Value.Text, ",") {
		code = strings.TrimSpace(code)
		if code == "all" {
			in.Regions = r.book.Regions()
			break
		}
		if _, err := r.book.Chain(code); err != nil || code == "" {
			r.fault(regions, "%s is not a list of ISO 3166 codes: write it as \"US-CA, US-NV\"", schema.Quote(regions.Value.Text))
			break
		}
		if !slices.Contains(in.Regions, code) {
			in.Regions = append(in.Regions, code)
		}
	}
	for _, item := range n.Field("engines").Items {
		in.Engines = append(in.Engines, item.Word("family"))
	}
	in.Wishes = map[string]bool{}
	for _, wish := range []string{"rear_heating", "air_conditioning"} {
		in.Wishes[wish] = n.Word(wish) == "true"
	}
	if v := n.Field("cruising_speed"); v.Value != nil {
		in.Cruising = &Figure{v.Value.Low, v.Value.High, v.Value.Text, v.At}
	}
	in.Budget = r.money(n.Field("budget"), "the budget", KindMoney)
	in.Rate = r.money(n.Field("hourly_rate"), "the hourly rate", KindRate)
	if in.Rate == nil {
		in.Rate = missing("intent.hourly_rate", "the hourly rate", KindRate, n.At)
	}
	if f := n.Field("fetching"); f.Value != nil {
		span, unit, err := parseRate(f.Value.Text, r.s.Currency)
		if err != nil {
			r.fault(f, "%v", err)
			return
		}
		in.Fetching, in.FetchingUnit = &Leaf{Path: f.Path, What: "the rate for fetching", Kind: KindRate, At: f.At, Span: span}, unit
	}
}

// money reads a place that holds an amount, nil where nothing is said there.
func (r *reader) money(n *manifest.Node, what string, kind Kind) *Leaf {
	if n == nil || n.Value == nil {
		return nil
	}
	span, ranged, err := parseMoney(n.Value.Text, r.s.Currency)
	if err != nil {
		r.fault(n, "%v", err)
		return missing(n.Path, what, kind, n.At)
	}
	// A price is what is asked; only what somebody guessed is wider than it is
	// written.
	if !ranged && n.Value.Basis == "estimated" {
		if share, _ := r.book.Spread(quantity.Ratio, "estimated"); share != nil {
			by := zero().Mul(share, span.Low)
			span = Span{zero().Sub(span.Low, by), zero().Add(span.High, by)}
		}
	}
	return &Leaf{Path: n.Path, What: what, Kind: kind, At: n.At, Span: span}
}

// measured reads a place that holds a number in a unit, nil where nothing is
// said there.
func (r *reader) measured(n *manifest.Node, what string, kind Kind, unit string) *Leaf {
	if n.Value == nil {
		return nil
	}
	v, err := quantity.Parse(n.Value.Text, n.Value.Kind)
	if err != nil {
		r.fault(n, "%v", err)
		return nil
	}
	one, err := quantity.Parse("1 "+unit, n.Value.Kind)
	if err != nil {
		r.fault(n, "%v", err)
		return nil
	}
	if v.Low.Sign() < 0 {
		r.fault(n, "%s is less than nothing", schema.Quote(n.Value.Text))
		return nil
	}
	span := Span{zero().Quo(v.Low, one.Low), zero().Quo(v.High, one.Low)}
	return &Leaf{Path: n.Path, What: what, Kind: kind, At: n.At, Span: span}
}

func (r *reader) candidate(item *manifest.Node, donor bool, index int) *Candidate {
	c := &Candidate{ID: item.ID, Donor: donor, What: item.Word("what"), Index: index, At: item.At, node: item}
	c.Price = r.money(item.Field("price"), "the price of "+c.ID, KindPrice)
	if c.Price == nil {
		c.Price = missing(item.Path+".price", "the price of "+c.ID, KindPrice, item.At)
	}
	if fetching := r.s.Intent.Fetching; fetching != nil {
		c.Road = r.measured(item.Field("distance"), "the way to "+c.ID, KindRoad, r.s.Intent.FetchingUnit)
		if c.Road == nil {
			c.Road = missing(item.Path+".distance", "the way to "+c.ID, KindRoad, item.At)
		}
	}
	for _, n := range item.Field("brings").Items {
		p := &Part{ID: n.ID, What: n.Word("what"), Meets: n.Word("meets"), Worn: n.Word("state") == "worn", Of: c, At: n.At}
		p.What = named(p.What, p.ID)
		p.Cost = r.money(n.Field("cost"), "making good "+p.What+" of "+c.ID, KindQuote)
		p.Hours = r.measured(n.Field("hours"), "the hours for "+p.What+" of "+c.ID, KindHours, "h")
		p.Value = r.money(n.Field("value"), "what "+p.What+" of "+c.ID+" sells for", KindValue)
		if p.Worn && p.Cost == nil {
			p.Cost = missing(n.Path+".cost", "making good "+p.What+" of "+c.ID, KindQuote, n.At)
		}
		c.Brings = append(c.Brings, p)
	}
	for _, n := range item.Field("lacks").Items {
		l := &Lack{ID: n.ID, What: named(n.Word("what"), n.ID), At: n.At}
		way := r.way(n, l.What+" on "+c.ID)
		l.Cost, l.Hours = way.Cost, way.Hours
		c.Lacks = append(c.Lacks, l)
	}
	c.known = child(r.list(donor)[index], "known")
	return c
}

func named(what, id string) string {
	if what == "" {
		return id
	}
	return what
}

// list is the YAML of the chassis or of the donors.
func (r *reader) list(donor bool) []*yaml.Node {
	key := "chassis"
	if donor {
		key = "donors"
	}
	return child(r.s.root, key).Content
}

// way reads cost and hours; money that nobody named is missing, not nothing.
func (r *reader) way(n *manifest.Node, what string) *Way {
	w := &Way{
		Cost:  r.money(n.Field("cost"), what, KindQuote),
		Hours: r.measured(n.Field("hours"), "the hours for "+what, KindHours, "h"),
	}
	if w.Cost == nil {
		w.Cost = missing(n.Path+".cost", what, KindQuote, n.At)
	}
	return w
}

// needs takes the shipped list and what the builder says of it, then his own.
func (r *reader) needs(list *manifest.Node) {
	for _, u := range Forgotten() {
		usual := u
		n := &Need{ID: u.ID, What: u.What, Usual: &usual, At: list.At}
		if item := list.Item(u.ID); item != nil {
			r.need(n, item)
		}
		r.s.Needs = append(r.s.Needs, n)
	}
	for _, item := range list.Items {
		if r.s.need(item.ID) == nil {
			n := &Need{ID: item.ID}
			r.need(n, item)
			if n.What == "" {
				r.fault(item, "what is not given: %s is not on the shipped list, so it needs words%s", schema.Quote(n.ID), r.orShipped(n.ID))
			}
			r.s.Needs = append(r.s.Needs, n)
		}
	}
}

func (r *reader) orShipped(word string) string {
	var ids []string
	for _, u := range Forgotten() {
		ids = append(ids, u.ID)
	}
	if near := schema.Nearest(word, ids); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ""
}

func (r *reader) need(n *Need, item *manifest.Node) {
	if what := item.Word("what"); what != "" {
		n.What = what
	}
	n.At = item.At
	n.NotNeeded = item.Word("needed") == "false"
	if f := item.Field("bought"); f.State == manifest.Given {
		n.Bought = r.way(f, "buying "+n.What)
	}
	if f := item.Field("made"); f.State == manifest.Given {
		n.Made = r.way(f, "making "+n.What)
	}
}
