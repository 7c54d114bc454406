package choice

import (
	"fmt"
	"iter"
	"math/big"
	"slices"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/prebuy"
	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// view puts a result into words and numbers, once for all forms.
func view(r *prebuy.Result) *page {
	p := &page{
		Name: r.Name, File: r.File, Hold: "plan", Today: r.Today, Currency: r.Currency, Regions: r.Intent.Regions,
		Rows: []row{}, Details: []detail{}, Ruled: []ruled{}, Asks: []ask{}, Offices: []office{}, Even: []turn{}, Blanks: []blank{}, Notes: []note{},
		Deferral: wording.Deferral,
	}
	p.Count = fmt.Sprintf("%s, %s: %s, %d may work", many(len(r.Chassis), "chassis", "chassis"), many(len(r.Donors), "donor", "donors"), many(r.Combinations, "combination", "combinations"), len(r.Ranked))
	p.First = answer(r)
	for _, x := range r.Ranked {
		p.Rows = append(p.Rows, rowOf(x, r.Currency))
	}
	for _, c := range r.Close {
		p.Details = append(p.Details, detailOf(c, r))
	}
	for _, u := range r.Ruled {
		out := ruled{Who: u.Who, Rule: u.Rule, Reason: u.Text, Source: u.Source, Where: where(r, u.At)}
		if u.Alone != "" {
			out.with = "with anything"
		}
		if u.Differs() {
			out.Own = u.Own
		}
		p.Ruled = append(p.Ruled, out)
	}
	for _, a := range r.Asks {
		p.Asks = append(p.Asks, ask{a.Way, a.Of, a.Text, a.Tool, a.Paths, fmt.Sprintf("%.0f %%", 100*a.Decides), a.Settles, a.Share, some(a.If), some(a.Concerns)})
	}
	for _, o := range r.Offices {
		p.Offices = append(p.Offices, office{o.Office, o.Ask, o.Rule, o.Regions, o.Concerns})
	}
	for _, e := range r.Even {
		t := turn{Candidate: e.Candidate, Rises: e.Rises, Never: e.Never, Text: e.Text}
		if !e.Never {
			m := moneyOf(e.At, r.Currency)
			t.At = &m
		}
		p.Even = append(p.Even, t)
	}
	for _, b := range r.Blanks {
		out := blank{Candidate: b.Candidate, Words: fmt.Sprintf("%d of %d first things known", b.Known, b.Of)}
		for _, f := range b.First {
			out.First = append(out.First, fmt.Sprintf("%s (%s)", f.What, f.Tool))
		}
		p.Blanks = append(p.Blanks, out)
	}
	for _, n := range r.Notes {
		p.Notes = append(p.Notes, note{where(r, n.At), n.Text})
	}
	p.Compared = compared(r)
	p.Bars = scaleOf(p.Rows, r)
	return p
}

func some(list []string) []string {
	if list == nil {
		return []string{}
	}
	return list
}

func many(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

func where(r *prebuy.Result, at manifest.Position) string {
	if at.Line == 0 {
		return r.File
	}
	return fmt.Sprintf("%s:%d:%d", r.File, at.Line, at.Column)
}

// words is a reason that may be told of several combinations at once.
func (u ruled) words() string {
	if u.Own == nil {
		return u.Reason
	}
	return u.Reason + ". These are the numbers of " + u.Who[0] + "; the others fail by their own"
}

// answer is what it comes to in one or two sentences.
func answer(r *prebuy.Result) string {
	if len(r.Ranked) == 0 {
		return "Nothing on this list can work as it is wanted."
	}
	first := r.Ranked[0]
	var beside []string
	for _, x := range r.Ranked[1:] {
		if x.Rank == first.Rank {
			beside = append(beside, words(x))
		}
	}
	text := fmt.Sprintf("%s costs least to finish, %s", words(first), first.Total.Print(r.Currency))
	switch {
	case first.Total.OpenHigh:
		text = fmt.Sprintf("%s comes first, %s: prices are missing, so this is no more than a beginning", words(first), first.Total.Print(r.Currency))
	case len(beside) == 1:
		text = fmt.Sprintf("%s comes first, %s, and shares its rank with %s: which of them costs less is not certain yet", words(first), first.Total.Print(r.Currency), beside[0])
	case len(beside) > 1:
		text = fmt.Sprintf("%s comes first, %s, and shares its rank with %d others: which of them costs less is not certain yet", words(first), first.Total.Print(r.Currency), len(beside))
	}
	return text + "."
}

func words(x *prebuy.Combination) string { return x.Chassis.ID + " + " + x.Donor.ID }

func rowOf(x *prebuy.Combination, code string) row {
	out := row{
		Rank: x.Rank, Shared: x.Shared, ID: x.ID, Chassis: x.Chassis.ID, Donor: x.Donor.ID,
		Cost: moneyOf(x.Total, code), Regions: []verdic{}, Wishes: some(x.Wishes),
	}
	for _, j := range x.Regions {
		v := verdic{Region: j.Region, NotMet: some(j.NotMet), Unproven: some(j.Unproven), Questions: j.Questions}
		switch {
		case j.Out != nil:
			v.Words = "can't work: " + j.Out.Text
		default:
			musts := len(j.Unproven) - j.Collected
			var parts []string
			if musts > 0 {
				parts = append(parts, many(musts, "must", "musts")+" unproven")
			}
			if j.Questions > 0 {
				parts = append(parts, many(j.Questions, "question", "questions")+" to the authority")
			}
			if v.Words = strings.Join(parts, ", "); v.Words == "" {
				v.Words = "nothing open at plan"
			}
		}
		out.Regions = append(out.Regions, v)
	}
	return out
}

func detailOf(c *prebuy.Close, r *prebuy.Result) detail {
	d := detail{
		ID: c.ID, Rank: c.Rank, Shared: c.Shared, Total: moneyOf(c.Total, r.Currency),
		Costs: costsOf(c, r), Needs: []needed{}, Left: []leftover{}, Open: openOf(c), Margins: marginsOf(c),
	}
	by := map[prebuy.By][]string{}
	for _, t := range c.Takes {
		n := needed{Need: t.Need.ID, What: t.Need.What, By: string(t.By)}
		name := t.Need.What
		if t.Part != nil {
			n.From, n.Part = t.Part.Of.ID, t.Part.What
			name = t.Part.What
			if t.Part.Worn {
				name += " (worn, to make good)"
			}
		}
		if t.Perhaps != nil {
			name += " (perhaps: " + t.Perhaps.What + " is not known)"
		}
		by[t.By] = append(by[t.By], name)
		d.Needs = append(d.Needs, n)
	}
	from := map[prebuy.By]string{
		prebuy.ByVehicle: "from " + c.Chassis.ID, prebuy.ByDonor: "from " + c.Donor.ID, prebuy.ByBought: "to buy",
		prebuy.ByMade: "to make", prebuy.ByNobody: "from nobody yet", prebuy.ByNotNeeded: "not needed, by the shortlist",
	}
	for _, way := range []prebuy.By{prebuy.ByVehicle, prebuy.ByDonor, prebuy.ByBought, prebuy.ByMade, prebuy.ByNobody, prebuy.ByNotNeeded} {
		if len(by[way]) > 0 {
			d.Takes = append(d.Takes, group{from[way], by[way]})
		}
	}
	for _, l := range c.Left {
		value := "value not known"
		if l.Value != nil {
			value = l.Value.Span.Print(r.Currency)
		}
		d.Left = append(d.Left, leftover{l.Part.Of.ID, l.Part.What, value})
	}
	return d
}

// costsOf are the heads of a reckoning that come to something.
func costsOf(c *prebuy.Close, r *prebuy.Result) []cost {
	costs := []cost{}
	for _, head := range prebuy.Heads {
		sum := c.Cost.Under(head)
		if !sum.OpenHigh && sum.Low.Sign() == 0 && sum.High.Sign() == 0 {
			continue
		}
		m := moneyOf(sum, r.Currency)
		if head == prebuy.HeadLeft {
			m.Text = "less " + prebuy.Span{Low: new(big.Rat).Neg(sum.High), High: new(big.Rat).Neg(sum.Low)}.Print(r.Currency)
		}
		costs = append(costs, cost{head, m})
	}
	return costs
}

// due are the musts that count at plan, in the regions where the combination
// may work.
func due(c *prebuy.Close) iter.Seq[verdict.Item] {
	return func(yield func(verdict.Item) bool) {
		for region, items := range c.Items {
			if c.Regions[region].Out != nil {
				continue
			}
			for _, i := range items {
				if i.Level == "must" && i.Due && !yield(i) {
					return
				}
			}
		}
	}
}

// openOf words the musts that are unproven, each once with all that is not known.
// Questions to the authority are asked for elsewhere, and a number that lies
// across its limit is told as a margin.
func openOf(c *prebuy.Close) []string {
	var order []string
	said := map[string][]string{}
	missing := map[string][]string{}
	for i := range due(c) {
		if i.Finding.Outcome != verdict.Unproven || i.Finding.Comparator == "answered" || i.Finding.Reason == "straddles" && i.Finding.Value.Numeric() {
			continue
		}
		title := i.Rule.Title
		if !slices.Contains(order, title) {
			order = append(order, title)
		}
		if report.Lacking(i) {
			missing[title] = append(missing[title], i.Finding.Missing...)
		} else if text := report.Found(i); !slices.Contains(said[title], text) {
			said[title] = append(said[title], text)
		}
	}
	open := []string{}
	for _, title := range order {
		if paths := missing[title]; len(paths) > 0 {
			slices.Sort(paths)
			said[title] = append(said[title], "not known: "+strings.Join(slices.Compact(paths), ", "))
		}
		open = append(open, title+": "+strings.Join(said[title], "; "))
	}
	return open
}

// marginsOf are the numbers of the musts against their limits, each once.
func marginsOf(c *prebuy.Close) []margin {
	margins := []margin{}
	for i := range due(c) {
		m, ok := marginOf(i)
		if ok && !slices.ContainsFunc(margins, func(n margin) bool { return n.Rule == m.Rule && n.Found == m.Found }) {
			margins = append(margins, m)
		}
	}
	return margins
}

// marginOf is a number of a must against its limit.
func marginOf(i verdict.Item) (margin, bool) {
	f := i.Finding
	if !f.Value.Numeric() || !f.Limit.Numeric() || *f.Limit.Low <= 0 || f.Comparator != "at most" && f.Comparator != "at least" {
		return margin{}, false
	}
	limit := *f.Limit.Low
	return margin{
		Rule: i.Rule.ID, Title: i.Rule.Title, Found: i.Found, Need: i.Needed, State: f.Outcome,
		low: *f.Value.Low / limit, high: *f.Value.High / limit, upper: f.Comparator == "at most",
	}, true
}

// compared says how the order came about, in words that a buyer can check.
func compared(r *prebuy.Result) []string {
	out := []string{
		"Cost to finish is purchase and fetching, putting right, what is bought and made, and hours at the hourly rate, less what is left over. What the vehicle has and nothing takes the place of stays on it. A price nobody has named is not nothing: the total is then told as at least so much. A part left over whose value is not known brings nothing.",
		"The rank of a combination is one more than the number of those that certainly cost less. Where two may go either way they share a rank.",
		"Two combinations are compared by what differs: a price, an hourly rate or a part that both have moves both alike and cancels.",
		"Each need is met in the way that is cheapest in the middle of its range; the vehicle's own part comes before the donor's where they cost the same.",
	}
	if r.Intent.Fetching == nil && slices.ContainsFunc(slices.Concat(r.Chassis, r.Donors), func(c *prebuy.Candidate) bool { return c.Away() }) {
		out = append(out, "Fetching is not counted: the intent names no rate for it.")
	}
	return out
}
