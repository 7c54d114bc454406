// Package markdown writes the summary of a CI job in GitHub-flavoured
// Markdown.
package markdown

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// most is the size of a summary in bytes. Sites refuse one over 1 MiB as a
// whole, and another step may write to the same file.
const most = 1_000_000

// cell is the number of characters of one table cell.
const cell = 500

// Write writes the summary of a run. One that would grow too big is cut at a
// whole row, and says how many more there are.
func Write(w io.Writer, run report.Run) error { return write(w, run, most) }

func write(w io.Writer, run report.Run, size int) error {
	end := "\n_" + Escape(wording.Deferral) + "_\n"
	p := &page{left: size - len(end) - len(note(1<<30))}
	if len(run.Builds)+len(run.Unread) > 1 {
		p.overview(run)
	}
	for _, problems := range run.Unread {
		var rows []string
		for _, problem := range problems {
			rows = append(rows, row(problem.String()))
		}
		p.section(section{head: "\n## " + Escape(problems[0].File) + ": could not be judged\n\n" + header("problem"), rows: rows})
	}
	for _, b := range run.Builds {
		p.build(b)
	}
	if p.cut > 0 {
		p.b.WriteString(note(p.cut))
	}
	p.b.WriteString(end)
	if _, err := io.WriteString(w, strings.TrimLeft(p.b.String(), "\n")); err != nil {
		return fmt.Errorf("writing the Markdown summary: %w", err)
	}
	return nil
}

// page collects the summary. What is left is the room for sections; once a row
// does not fit, nothing more is added and all that follows is counted.
type page struct {
	b    strings.Builder
	left int
	cut  int
}

func note(rows int) string {
	return fmt.Sprintf("\n**Cut here: %d more rows.** The other reports have them all.\n", rows)
}

// section is a table with what stands before and after it, which is kept
// whole: without its head and foot no row is shown.
type section struct {
	head, foot string
	rows       []string
}

func (p *page) section(s section) {
	if p.cut > 0 || len(s.head)+len(s.foot) > p.left {
		p.cut += max(1, len(s.rows))
		return
	}
	p.left -= len(s.head) + len(s.foot)
	p.b.WriteString(s.head)
	for n, r := range s.rows {
		if len(r) > p.left {
			p.cut += len(s.rows) - n
			break
		}
		p.left -= len(r)
		p.b.WriteString(r)
	}
	p.b.WriteString(s.foot)
}

func (p *page) overview(run report.Run) {
	var rows []string
	for _, problems := range run.Unread {
		rows = append(rows, row(problems[0].File, "could not be judged"))
	}
	for _, b := range run.Builds {
		v := b.Report.Verdict
		rows = append(rows, row(b.Report.Manifest.File, v.Headline+" at "+v.Hold))
	}
	p.section(section{head: "\n## " + Escape(run.Total()) + "\n\n" + header("build", "verdict"), rows: rows})
}

func (p *page) build(b report.Build) {
	v := b.Report.Verdict
	var head strings.Builder
	fmt.Fprintf(&head, "\n## %s\n\n%s, judged as of %s, %s\n\n", Escape(b.Headline()), Escape(b.Region()), Escape(v.Today), Escape(b.Report.Manifest.File))
	list(&head, b.Counts())
	var care strings.Builder
	if cautions := wording.Cautions(v.Hold); len(cautions) > 0 {
		care.WriteString("\n### Take care\n\n")
		list(&care, cautions)
	}
	// The cautions are laid aside first, so that no number of rows pushes them out.
	shown := p.cut == 0 && head.Len()+care.Len() <= p.left
	p.section(section{head: head.String()})
	if shown {
		p.left -= care.Len()
	}
	p.findings("What stands in the way", false, b, func(i verdict.Item) bool {
		return b.Blocks(i) && i.Finding.Outcome == verdict.NotMet
	})
	p.findings("What is unproven, and what would settle it", false, b, func(i verdict.Item) bool {
		return b.Blocks(i) && i.Finding.Outcome == verdict.Unproven
	})
	p.findings("Set aside by a waiver", true, b, func(i verdict.Item) bool {
		return i.Due && i.Finding.Outcome == verdict.Waived
	})
	p.findings("Advice", true, b, func(i verdict.Item) bool {
		return i.Due && i.Level != "note" && report.Open(i) && !b.Blocks(i)
	})
	if idle := b.IdleWaivers(); len(idle) > 0 {
		var rows []string
		for _, line := range idle {
			rows = append(rows, row(line))
		}
		p.section(section{head: "\n### Waivers not used\n\n" + header("waiver"), rows: rows})
	}
	if overdue := b.Overdue(); len(overdue) > 0 {
		var rows []string
		for _, line := range overdue {
			rows = append(rows, row(line))
		}
		p.section(section{head: "\n### Read too long ago; look at the source again\n\n" + header("rule"), rows: rows})
	}
	if shown {
		p.b.WriteString(care.String())
	}
}

// findings adds a table of findings, folded away or not.
func (p *page) findings(title string, folded bool, b report.Build, pick func(verdict.Item) bool) {
	chosen := b.Pick(pick)
	if len(chosen) == 0 {
		return
	}
	title = fmt.Sprintf("%s (%d)", title, len(chosen))
	s := section{head: "\n### " + title + "\n\n"}
	if folded {
		s.head, s.foot = "\n<details><summary>"+title+"</summary>\n\n", "\n</details>\n"
	}
	s.head += header("rule", "where", "found", "needed", "do")
	for _, i := range chosen {
		do := i.Do
		if i.Rule.Caution != "" {
			do = append(slices.Clip(do), "take care: "+i.Rule.Caution)
		}
		if waiver := b.Waiver(i); waiver != "" {
			do = []string{"waiver " + waiver}
		}
		where := fmt.Sprintf("%s:%d", b.Report.Manifest.File, i.At.Line)
		s.rows = append(s.rows, row(i.Rule.ID+"\n"+i.Rule.Title, where+"\n"+i.Finding.Subject, report.Found(i), i.Needed, strings.Join(do, "\n")))
	}
	p.section(s)
}

func list(b *strings.Builder, lines []string) {
	for _, line := range lines {
		fmt.Fprintf(b, "- %s\n", Escape(line))
	}
}

func header(names ...string) string {
	return "| " + strings.Join(names, " | ") + " |\n|" + strings.Repeat(" --- |", len(names)) + "\n"
}

// row is a line of a table; a line break in a cell is kept.
func row(cells ...string) string {
	var b strings.Builder
	b.WriteByte('|')
	for _, c := range cells {
		if r := []rune(c); len(r) > cell {
			c = string(r[:cell-1]) + "…"
		}
		lines := strings.Split(c, "\n")
		for i := range lines {
			lines[i] = Escape(lines[i])
		}
		b.WriteString(" " + strings.Join(lines, "<br>") + " |")
	}
	b.WriteByte('\n')
	return b.String()
}
