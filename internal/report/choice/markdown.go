package choice

import (
	"fmt"
	"io"
	"strings"

	"trialfit/internal/prebuy"
	"trialfit/internal/report/markdown"
)

// Markdown writes the answer for a page of notes or a letter.
func Markdown(w io.Writer, r *prebuy.Result) error {
	v := view(r)
	m := &marker{}
	m.line("## %s: what to buy", v.Name)
	m.line("Judged at %s as of %s in %s; money in %s. %s.", v.Hold, v.Today, strings.Join(v.Regions, ", "), v.Currency, v.Count)
	m.line("%s", v.First)
	if len(v.Rows) > 0 {
		m.line("### May work, by the cost to finish")
		m.table("rank", "combination", "cost to finish", "open at plan")
		for _, x := range v.Rows[:min(mostListed, len(v.Rows))] {
			m.row(x.rank(), x.Chassis+" + "+x.Donor, x.Cost.Text, strings.Join(x.Open(), "; "))
		}
		m.end()
		m.more(len(v.Rows))
	}
	if len(v.Ruled) > 0 {
		m.line("### Can't work, and the first reason")
		m.table("combination", "why", "rule", "where")
		for _, u := range v.Ruled[:min(mostListed, len(v.Ruled))] {
			m.row(strings.TrimSpace(few(u.Who, mostListed)+" "+u.with), u.words(), u.Rule, u.Where)
		}
		m.end()
		m.more(len(v.Ruled))
	}
	for _, d := range v.Details {
		m.line("### %s: what to take from which", d.ID)
		m.table("from", "what")
		for _, g := range d.Takes {
			m.row(g.From, strings.Join(g.Parts, "; "))
		}
		for _, l := range d.Left {
			m.row("left over of "+l.From, l.What+" ("+l.Value+")")
		}
		m.end()
		m.table("cost", "amount")
		for _, c := range d.Costs {
			m.row(c.Head, c.Text)
		}
		m.row("cost to finish", d.Total.Text)
		m.end()
		for _, x := range d.Margins {
			m.item("margin: %s; %s: %s", x.Found, x.Need, x.State)
		}
		for _, o := range d.Open {
			m.item("unproven: %s", o)
		}
		m.end()
	}
	if len(v.Asks) > 0 {
		m.line("### Ask and measure, what decides most first")
		m.table("", "question or measurement", "tool", "decides", "then", "answer")
		for i, a := range v.Asks {
			m.row(fmt.Sprint(i+1), a.Text, a.Tool, a.Settles+": "+a.Share, strings.Join(a.If, "; "), "")
		}
		m.end()
	}
	if len(v.Offices) > 0 {
		m.line("### Ask the authority, before paying")
		m.table("office", "question", "raised by", "rule")
		for _, o := range v.Offices {
			m.row(o.Office, o.Ask, strings.Join(o.Concerns, ", "), o.Rule)
		}
		m.end()
	}
	m.list("Where the choice turns", len(v.Even), func(i int) string { return v.Even[i].Text })
	m.list("Next to nothing is known of", len(v.Blanks), func(i int) string {
		b := v.Blanks[i]
		return b.Candidate + ", " + b.Words + ". Find out first: " + strings.Join(b.First, "; ")
	})
	m.list("Look at these lines again", len(v.Notes), func(i int) string { return v.Notes[i].Where + " " + v.Notes[i].Text })
	m.list("How it was compared", len(v.Compared), func(i int) string { return v.Compared[i] })
	m.line("%s", v.Deferral)
	_, err := io.WriteString(w, strings.TrimRight(m.b.String(), "\n")+"\n")
	return err
}

// marker writes Markdown; every text from outside is escaped on its way.
type marker struct{ b strings.Builder }

func escaped(args []any) []any {
	out := make([]any, len(args))
	for i, a := range args {
		out[i] = markdown.Escape(fmt.Sprint(a))
	}
	return out
}

func (m *marker) line(format string, args ...any) {
	fmt.Fprintf(&m.b, format+"\n\n", escaped(args)...)
}

func (m *marker) item(format string, args ...any) {
	fmt.Fprintf(&m.b, "- "+format+"\n", escaped(args)...)
}

// more counts what a list leaves out.
func (m *marker) more(of int) {
	if of > mostListed {
		m.line("And %d more, in the answer as json.", of-mostListed)
	}
}

func (m *marker) end() { m.b.WriteByte('\n') }

func (m *marker) table(head ...string) {
	m.b.WriteString("| " + strings.Join(head, " | ") + " |\n|" + strings.Repeat(" --- |", len(head)) + "\n")
}

func (m *marker) row(cells ...string) {
	for i := range cells {
		cells[i] = markdown.Escape(cells[i])
	}
	m.b.WriteString("| " + strings.Join(cells, " | ") + " |\n")
}

func (m *marker) list(head string, n int, text func(int) string) {
	if n == 0 {
		return
	}
	m.line("### " + head)
	for i := range n {
		m.item("%s", text(i))
	}
	m.end()
}
