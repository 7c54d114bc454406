// Package matrix tells in which of several regions a build could be put before
// the authority, and what stands in the way first in each.
package matrix

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"trialfit/internal/report"
	"trialfit/internal/report/lines"
	"trialfit/internal/report/markdown"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// Build is one manifest judged in several regions, in the order of the codes.
type Build struct {
	Regions []report.Build
}

// cell is one region of one build.
type cell struct {
	Region   string `json:"region"`
	Name     string `json:"name"`
	Examined bool   `json:"examined"`
	Verdict  string `json:"verdict"`
	Headline string `json:"headline"`
	NotMet   int    `json:"not_met"`
	Unproven int    `json:"unproven"`
	// Obstacle is what to look at first, and whether it stands in the way in
	// every region looked at.
	Obstacle *obstacle `json:"first_obstacle,omitempty"`
}

type obstacle struct {
	Rule       string `json:"rule"`
	Title      string `json:"title"`
	Subject    string `json:"subject"`
	Outcome    string `json:"outcome"`
	Everywhere bool   `json:"everywhere"`
}

// table is what all forms are written from.
type table struct {
	File  string `json:"file"`
	Name  string `json:"build"`
	Hold  string `json:"hold"`
	Today string `json:"today"`
	// Everywhere lists the rules that stand in the way in every region: no
	// move to another one helps against them.
	Everywhere []string `json:"everywhere"`
	Cells      []cell   `json:"regions"`
}

func (b Build) table() table {
	first := b.Regions[0].Report
	t := table{File: first.Manifest.File, Name: first.Manifest.Name(), Hold: first.Verdict.Hold, Today: first.Verdict.Today, Everywhere: []string{}}
	for _, id := range first.Verdict.Blocking {
		if !slices.ContainsFunc(b.Regions, func(r report.Build) bool { return !slices.Contains(r.Report.Verdict.Blocking, id) }) {
			t.Everywhere = append(t.Everywhere, id)
		}
	}
	for _, r := range b.Regions {
		t.Cells = append(t.Cells, t.cell(r))
	}
	return t
}

func (t table) cell(b report.Build) cell {
	v := b.Report.Verdict
	region := b.Report.Chain[len(b.Report.Chain)-1]
	c := cell{Region: region.Code, Name: region.Name, Examined: region.Pack, Verdict: v.Verdict, Headline: v.Headline}
	for _, id := range v.Blocking {
		if v.Rules[id].Outcome == verdict.NotMet {
			c.NotMet++
		} else {
			c.Unproven++
		}
	}
	blocking := b.Pick(b.Blocks)
	// What only this region asks for says more about it than what is open anywhere.
	at := slices.IndexFunc(blocking, func(i verdict.Item) bool { return !slices.Contains(t.Everywhere, i.Rule.ID) })
	if at < 0 && len(blocking) > 0 {
		at = 0
	}
	if at >= 0 {
		i := blocking[at]
		c.Obstacle = &obstacle{i.Rule.ID, title(i), i.Finding.Subject, i.Finding.Outcome, slices.Contains(t.Everywhere, i.Rule.ID)}
	}
	return c
}

// title is the requirement, or for a question that waits for its answer the
// question itself: "questions answered" says nothing.
func title(i verdict.Item) string {
	if i.Finding.Comparator == "answered" {
		return i.Needed
	}
	return i.Rule.Title
}

// words say why, in the room of one line or as long as it is.
func (c cell) words() string {
	switch {
	case c.Obstacle == nil:
		return ""
	case c.Obstacle.Everywhere:
		return "only what stands in the way everywhere"
	default:
		return clip(c.Obstacle.Title) + " (" + c.Obstacle.Rule + ")"
	}
}

// clip keeps a title to two lines of the table; the other forms have it whole.
func clip(s string) string {
	const most = 90
	if r := []rune(s); len(r) > most {
		return strings.TrimRight(string(r[:most-1]), " ") + "…"
	}
	return s
}

// Text writes the tables for a terminal of a number of columns.
func Text(w io.Writer, builds []Build, columns int) error {
	p := &page{lines.Printer{W: w, Columns: columns}}
	for i, b := range builds {
		if i > 0 {
			p.Line("")
		}
		p.table(b.table())
	}
	p.Line("")
	p.Wrap("", "", wording.NotLegal)
	p.Wrap("", "", wording.Deferral)
	return p.Err
}

type page struct{ lines.Printer }

func (p *page) table(t table) {
	p.Line("%s: where could it be registered?", t.Name)
	p.Line("judged at %s as of %s", t.Hold, t.Today)
	if len(t.Everywhere) > 0 {
		p.Line("")
		p.Wrap("", "  ", "In the way everywhere: "+strings.Join(t.Everywhere, ", "))
	}
	p.Line("")
	wide := len("region")
	said := len("verdict")
	for _, c := range t.Cells {
		wide, said = max(wide, len(c.Region)), max(said, len(c.Headline))
	}
	lead := fmt.Sprintf("%-*s  %-*s  %7s  %8s  ", wide, "region", said, "verdict", "not met", "unproven")
	p.Line("%s%s", lead, "first obstacle of its own")
	for _, c := range t.Cells {
		first := fmt.Sprintf("%-*s  %-*s  %7d  %8d  ", wide, c.Region, said, c.Headline, c.NotMet, c.Unproven)
		p.Wrap(first, strings.Repeat(" ", utf8.RuneCountInString(lead)), c.words())
	}
}

// JSON writes the tables for programs.
func JSON(w io.Writer, builds []Build) error {
	doc := struct {
		Builds []table `json:"builds"`
		Note   string  `json:"note"`
		Defers string  `json:"deferral"`
	}{Note: wording.NotLegal, Defers: wording.Deferral}
	for _, b := range builds {
		doc.Builds = append(doc.Builds, b.table())
	}
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(doc)
}

var head = []string{"region", "name", "verdict", "not met", "unproven", "first obstacle of its own", "rule", "subject"}

func (c cell) row() []string {
	row := []string{c.Region, c.Name, c.Headline, strconv.Itoa(c.NotMet), strconv.Itoa(c.Unproven), "", "", ""}
	if o := c.Obstacle; o != nil {
		row[5], row[6], row[7] = o.Title, o.Rule, o.Subject
		if o.Everywhere {
			row[5] = c.words()
		}
	}
	return row
}

// Markdown writes the tables for a job summary or a letter.
func Markdown(w io.Writer, builds []Build) error {
	var b strings.Builder
	for _, build := range builds {
		t := build.table()
		fmt.Fprintf(&b, "## %s: where could it be registered?\n\njudged at %s as of %s\n\n", markdown.Escape(t.Name), t.Hold, t.Today)
		if len(t.Everywhere) > 0 {
			fmt.Fprintf(&b, "In the way everywhere: %s\n\n", markdown.Escape(strings.Join(t.Everywhere, ", ")))
		}
		b.WriteString("| " + strings.Join(head[:7], " | ") + " |\n|" + strings.Repeat(" --- |", 7) + "\n")
		for _, c := range t.Cells {
			row := c.row()[:7]
			for i := range row {
				row[i] = markdown.Escape(row[i])
			}
			b.WriteString("| " + strings.Join(row, " | ") + " |\n")
		}
		b.WriteString("\n")
	}
	fmt.Fprintf(&b, "%s\n\n_%s_\n", markdown.Escape(wording.NotLegal), markdown.Escape(wording.Deferral))
	_, err := io.WriteString(w, b.String())
	return err
}

// CSV writes all tables as one, with the build in the first column.
func CSV(w io.Writer, builds []Build) error {
	rows := [][]string{append([]string{"build", "hold", "as of"}, head...)}
	for _, b := range builds {
		t := b.table()
		for _, c := range t.Cells {
			rows = append(rows, append([]string{t.Name, t.Hold, t.Today}, c.row()...))
		}
	}
	return report.CSV(w, rows)
}
