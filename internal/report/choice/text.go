package choice

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"trialfit/internal/prebuy"
	"trialfit/internal/report"
	"trialfit/internal/report/lines"
)

// narrow is the width below which a table is told as a list.
const narrow = 72

// fewDetails is how many combinations are told of closely unless all are asked for.
const fewDetails = 2

// mostRows is how many rows are printed unless all are asked for.
const mostRows = 20

// mostOpen is how many open musts of one are printed unless all are asked for.
const mostOpen = 5

// Text writes the answer for a terminal of a number of columns.
func Text(w io.Writer, r *prebuy.Result, columns int, all bool) error {
	p := &printer{lines.Printer{W: w, Columns: columns}, all}
	v := view(r)
	p.Wrap("", "", report.Plain(v.Name)+": what to buy")
	p.Wrap("", "", fmt.Sprintf("judged at %s as of %s in %s; money in %s", v.Hold, v.Today, strings.Join(v.Regions, ", "), v.Currency))
	p.Wrap("", "", v.Count)
	p.Line("")
	p.Wrap("", "", v.First)
	p.rows(v)
	p.ruled(v)
	p.details(v)
	p.asks(v)
	p.even(v)
	p.blanks(v)
	p.notes(v)
	p.head("How it was compared", 0)
	for _, c := range v.Compared {
		p.Wrap("  - ", "    ", c)
	}
	p.Line("")
	p.Wrap("", "", v.Deferral)
	return p.Err
}

type printer struct {
	lines.Printer
	all bool
}

func (p *printer) head(text string, count int) {
	p.Line("")
	if count > 0 {
		text = fmt.Sprintf("%s (%d)", text, count)
	}
	p.Wrap("", "", text)
	p.Line("")
}

// shown cuts a list unless all of it is asked for; the rest is counted.
func shown[T any](p *printer, list []T, most int) (cut []T, rest int) {
	if p.all || len(list) <= most {
		return list, 0
	}
	return list[:most], len(list) - most
}

func (p *printer) more(n int, what string) {
	if n > 1 {
		what += "s"
	}
	if n > 0 {
		p.Line("  … and %d more %s (--all)", n, what)
	}
}

func (r row) rank() string {
	if r.Shared {
		return fmt.Sprintf("%d, shared", r.Rank)
	}
	return fmt.Sprint(r.Rank)
}

// Open is what stands in the way at plan; regions of which the same is said are
// told together.
func (r row) Open() []string {
	var words []string
	regions := map[string][]string{}
	for _, v := range r.Regions {
		if regions[v.Words] == nil {
			words = append(words, v.Words)
		}
		regions[v.Words] = append(regions[v.Words], v.Region)
	}
	var out []string
	for _, w := range words {
		out = append(out, strings.Join(regions[w], ", ")+": "+w)
	}
	return append(out, r.Wishes...)
}

func (p *printer) rows(v *page) {
	if len(v.Rows) == 0 {
		return
	}
	p.head("May work, by the cost to finish", len(v.Rows))
	rows, rest := shown(p, v.Rows, mostRows)
	if p.Columns < narrow {
		for _, r := range rows {
			p.Wrap("  "+fmt.Sprint(r.Rank)+"  ", "     ", r.Chassis+" + "+r.Donor)
			p.Wrap("     ", "     ", r.Cost.Text)
			if r.Shared {
				p.Wrap("     ", "     ", "shares its rank")
			}
			for _, o := range r.Open() {
				p.Wrap("     - ", "       ", o)
			}
		}
		p.more(rest, "combination")
		return
	}
	wide := 12
	for _, r := range rows {
		wide = max(wide, utf8.RuneCountInString(r.Chassis+" + "+r.Donor))
	}
	p.Line("  %-9s  %-*s  %s", "rank", wide, "combination", "cost to finish")
	for _, r := range rows {
		p.Line("  %-9s  %-*s  %s", r.rank(), wide, report.Plain(r.Chassis+" + "+r.Donor), r.Cost.Text)
		for _, o := range r.Open() {
			p.Wrap(strings.Repeat(" ", 13)+"- ", strings.Repeat(" ", 15), o)
		}
	}
	p.more(rest, "combination")
}

func (p *printer) ruled(v *page) {
	if len(v.Ruled) == 0 {
		return
	}
	p.head("Can't work, and the first reason", len(v.Ruled))
	list, rest := shown(p, v.Ruled, mostRows)
	for _, u := range list {
		who, more := shown(p, u.Who, 6)
		text := strings.Join(who, ", ")
		if more > 0 {
			text += fmt.Sprintf(" and %d more", more)
		}
		if u.with != "" {
			text += " " + u.with
		}
		p.Wrap("  ", "  ", text)
		p.Field("why", u.words())
		if u.Rule != "" {
			p.Field("rule", u.Rule)
		}
		p.Field("where", u.Where)
	}
	p.more(rest, "reason")
}

func (p *printer) details(v *page) {
	if len(v.Details) == 0 {
		return
	}
	p.head("What to take from which, and what it costs", 0)
	list, rest := shown(p, v.Details, fewDetails)
	for i, d := range list {
		if i > 0 {
			p.Line("")
		}
		p.Wrap("  ", "  ", d.ID)
		for _, g := range d.Takes {
			p.Wrap("    "+g.From+": ", "      ", strings.Join(g.Parts, "; "))
		}
		var left []string
		for _, l := range d.Left {
			left = append(left, fmt.Sprintf("%s of %s (%s)", l.What, l.From, l.Value))
		}
		if len(left) > 0 {
			p.Wrap("    left over, to sell: ", "      ", strings.Join(left, "; "))
		}
		for _, c := range d.Costs {
			p.Line("    %-16s %s", c.Head, c.Text)
		}
		p.Line("    %-16s %s", "cost to finish", d.Total.Text)
		for _, m := range d.Margins {
			p.Wrap("    margin: ", "      ", m.Found+"; "+m.Need+": "+m.State)
		}
		open, more := shown(p, d.Open, mostOpen)
		for _, o := range open {
			p.Wrap("    unproven: ", "      ", o)
		}
		p.more(more, "unproven must")
	}
	p.more(rest, "combination")
}

func (p *printer) asks(v *page) {
	if len(v.Asks)+len(v.Offices) == 0 {
		return
	}
	p.head("Ask and measure, what decides most first", len(v.Asks))
	for i, a := range v.Asks {
		p.Wrap(fmt.Sprintf("  %2d  ", i+1), "      ", a.Text)
		p.Wrap("      tool: ", "      ", a.Tool)
		p.Wrap("      decides: ", "      ", a.Settles+": "+a.Share)
		for _, f := range a.If {
			p.Wrap("      - ", "        ", f)
		}
		p.Wrap("      write: ", "      ", strings.Join(a.Write, " and "))
	}
	if len(v.Offices) == 0 {
		return
	}
	p.head("Ask the authority, before paying", len(v.Offices))
	for _, o := range v.Offices {
		p.Wrap("  - ", "    ", o.Ask)
		p.Wrap("    ", "    ", fmt.Sprintf("%s (%s; %s)", o.Office, o.Rule, strings.Join(o.Regions, ", ")))
		p.Wrap("    raised by: ", "    ", strings.Join(o.Concerns, ", "))
	}
}

func (p *printer) even(v *page) {
	if len(v.Even) == 0 {
		return
	}
	p.head("Where the choice turns", 0)
	for _, e := range v.Even {
		p.Wrap("  - ", "    ", e.Text)
	}
}

func (p *printer) blanks(v *page) {
	if len(v.Blanks) == 0 {
		return
	}
	p.head("Next to nothing is known of", len(v.Blanks))
	for _, b := range v.Blanks {
		p.Wrap("  - ", "    ", b.Candidate+", "+b.Words+". Find out first: "+strings.Join(b.First, "; "))
	}
}

func (p *printer) notes(v *page) {
	if len(v.Notes) == 0 {
		return
	}
	p.head("Look at these lines again", len(v.Notes))
	for _, n := range v.Notes {
		p.Wrap("  - ", "    ", n.Where+" "+n.Text)
	}
}
