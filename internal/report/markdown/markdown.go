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

// Form is the summary of a run. One that would grow too big is cut at a whole
// row, and says how many more there are; so it keeps what fills a summary and
// counts the rest.
type Form struct {
	size int // of the summary

	rows   []string // of the overview
	listed int      // bytes of rows
	more   int      // rows that are not kept

	builds []part
	told   int // bytes of builds
	cut    int // rows of the builds that are not kept
}

// part is what the summary tells of one build.
type part struct {
	sections []section // its head first
	care     string
}

func (p part) size() (bytes int) {
	for _, s := range p.sections {
		bytes += s.size()
	}
	return bytes
}

// count is the number of rows that are missed where the part is left out.
func (p part) count() (rows int) {
	for _, s := range p.sections {
		rows += s.count()
	}
	return rows
}

// New begins with nothing to tell.
func New() *Form { return sized(most) }

func sized(size int) *Form { return &Form{size: size} }

// Add takes up one more build.
func (f *Form) Add(b report.Build) error {
	v := b.Report.Verdict
	if f.listed > f.size {
		f.more++
	} else {
		r := row(b.Report.Manifest.File, v.Headline+" at "+v.Hold)
		f.rows = append(f.rows, r)
		f.listed += len(r)
	}
	p := about(b)
	if f.told > f.size {
		f.cut += p.count()
	} else {
		f.builds = append(f.builds, p)
		f.told += p.size()
	}
	return nil
}

// End writes the summary: all builds in short, what could not be judged, then
// each build.
func (f *Form) End(w io.Writer, s report.Summary) error {
	end := "\n_" + Escape(wording.Deferral) + "_\n"
	p := &page{left: f.size - len(end) - len(note(1<<30))}
	if s.All() > 1 {
		p.section(f.overview(s))
	}
	for _, problems := range s.Unread {
		var rows []string
		for _, problem := range problems {
			rows = append(rows, row(problem.String()))
		}
		p.section(section{head: "\n## " + Escape(problems[0].File) + ": could not be judged\n\n" + header("problem"), rows: rows})
	}
	for _, b := range f.builds {
		p.build(b)
	}
	if p.cut += f.cut; p.cut > 0 {
		p.b.WriteString(note(p.cut))
	}
	p.b.WriteString(end)
	if _, err := io.WriteString(w, strings.TrimLeft(p.b.String(), "\n")); err != nil {
		return fmt.Errorf("writing the Markdown summary: %w", err)
	}
	return nil
}

func (f *Form) overview(s report.Summary) section {
	o := section{head: "\n## " + Escape(s.Total()) + "\n\n" + header("build", "verdict"), more: f.more}
	for _, problems := range s.Unread {
		o.rows = append(o.rows, row(problems[0].File, "could not be judged"))
	}
	o.rows = append(o.rows, f.rows...)
	return o
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
	more       int // rows behind these, too many to be shown
}

func (s section) size() int {
	bytes := len(s.head) + len(s.foot)
	for _, r := range s.rows {
		bytes += len(r)
	}
	return bytes
}

// count is the number of rows that are missed where the section is left out.
func (s section) count() int { return max(1, len(s.rows)+s.more) }

func (p *page) section(s section) {
	if p.cut > 0 || len(s.head)+len(s.foot) > p.left {
		p.cut += s.count()
		return
	}
	p.left -= len(s.head) + len(s.foot)
	p.b.WriteString(s.head)
	for n, r := range s.rows {
		if len(r) > p.left {
			p.cut += len(s.rows) - n + s.more
			break
		}
		p.left -= len(r)
		p.b.WriteString(r)
	}
	p.b.WriteString(s.foot)
}

func (p *page) build(b part) {
	// The cautions are laid aside first, so that no number of rows pushes them out.
	shown := p.cut == 0 && b.sections[0].size()+len(b.care) <= p.left
	p.section(b.sections[0])
	if shown {
		p.left -= len(b.care)
	}
	for _, s := range b.sections[1:] {
		p.section(s)
	}
	if shown {
		p.b.WriteString(b.care)
	}
}

// about words what the summary tells of a build.
func about(b report.Build) part {
	v := b.Report.Verdict
	var head strings.Builder
	fmt.Fprintf(&head, "\n## %s\n\n%s, judged as of %s, %s\n\n", Escape(b.Headline()), Escape(b.Region()), Escape(v.Today), Escape(b.Report.Manifest.File))
	list(&head, b.Counts())
	p := part{sections: []section{{head: head.String()}}}
	if cautions := wording.Cautions(v.Hold); len(cautions) > 0 {
		var care strings.Builder
		care.WriteString("\n### Take care\n\n")
		list(&care, cautions)
		p.care = care.String()
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
	p.lines("Waivers not used", "waiver", b.IdleWaivers())
	p.lines("Read too long ago; look at the source again", "rule", b.Overdue())
	return p
}

// lines adds a table of one column, where there is anything to tell.
func (p *part) lines(title, column string, lines []string) {
	if len(lines) == 0 {
		return
	}
	s := section{head: "\n### " + title + "\n\n" + header(column)}
	for _, line := range lines {
		s.rows = append(s.rows, row(line))
	}
	p.sections = append(p.sections, s)
}

// findings adds a table of findings, folded away or not.
func (p *part) findings(title string, folded bool, b report.Build, pick func(verdict.Item) bool) {
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
	p.sections = append(p.sections, s)
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
