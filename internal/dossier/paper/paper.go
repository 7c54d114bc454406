// Package paper draws a document as a PDF: fonts inside, text that can be
// selected and searched, bookmarks, links, the files of the document attached.
// The same document gives the same bytes. It claims no conformance beyond PDF
// itself: its pages are not tagged.
package paper

import (
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"trialfit/internal/dossier"
)

// Margins in mm; what stands on every page lies in them.
const (
	side     = 16.0
	top      = 23.0
	bottom   = 20.0
	mostFile = 100 // characters of an attachment's name
)

// sheet is a document being drawn, in mm from the top left corner of a page.
type sheet struct {
	pdf   *fpdf.Fpdf
	d     *dossier.Document
	fonts *fonts
	// width is that of the text, end where it ends below.
	width, end float64
	y          float64
	links      map[string]int
	sections   []placed
	// listed is where the list of sections stands.
	listed struct {
		page int
		y    float64
	}
}

// placed is where a section begins.
type placed struct {
	title string
	link  int
	page  int
}

// Write draws a document. The error is one of writing.
func Write(w io.Writer, d *dossier.Document) error {
	day, err := time.Parse(time.DateOnly, d.Today)
	if err != nil {
		return fmt.Errorf("dating the PDF: %w", err)
	}
	size := "A4"
	if d.Paper == "letter" {
		size = "Letter"
	}
	pdf := fpdf.New("P", "mm", size, "")
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(day)
	pdf.SetModificationDate(day)
	pdf.SetLang(d.Language)
	pdf.SetTitle(d.Title+": "+d.Build, true)
	pdf.SetCreator("trialfit", true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetMargins(0, 0, 0)
	s := &sheet{pdf: pdf, d: d, links: map[string]int{}}
	if s.fonts, err = loadFonts(pdf); err != nil {
		return fmt.Errorf("loading the font: %w", err)
	}
	full, height := pdf.GetPageSize()
	s.width, s.end = full-2*side, height-bottom
	s.front()
	for i, section := range d.Sections {
		s.section(i+1, section)
	}
	if lost := s.fonts.lost(); lost > 0 {
		s.heading(d.Words.Unprinted, 1)
		s.paragraph(dossier.Text{{Text: fmt.Sprintf(d.Words.UnprintedCount, lost)}}, body)
	}
	s.contents()
	s.everyPage()
	s.attach()
	if err := pdf.Output(w); err != nil {
		return fmt.Errorf("writing the PDF: %w", err)
	}
	return nil
}

func (s *sheet) newPage() {
	s.pdf.AddPage()
	s.y = top
}

// room begins a new page unless so much is left on this one.
func (s *sheet) room(needed float64) {
	if s.y+needed > s.end {
		s.newPage()
	}
}

// front is the head of the first page, with room for the contents.
func (s *sheet) front() {
	s.newPage()
	if s.d.Draft != "" {
		lines := s.wrap(dossier.Text{{Text: s.d.Draft, Strong: true}}, s.width, draftLook)
		s.pdf.SetLineWidth(0.3)
		s.pdf.Rect(side, s.y-1, lineWidth(lines[0])+5, draftLook.leading+2, "D")
		s.print(lines, side+2.5, draftLook)
		s.y += 5
	}
	s.paragraph(dossier.Text{{Text: s.d.Title, Strong: true}}, title)
	s.paragraph(dossier.Text{{Text: s.d.Build}}, subtitle)
	s.y += 2
	for _, b := range s.d.Lead {
		s.block(b)
	}
	s.paragraph(dossier.Text{{Text: s.d.Words.Contents, Strong: true}}, body)
	s.room(float64(s.contentRows()) * contents.leading)
	s.listed.page, s.listed.y = s.pdf.PageNo(), s.y
	s.y += float64(s.contentRows())*contents.leading + 4
}

func (s *sheet) contentRows() int { return (len(s.d.Sections) + 1) / 2 }

// contents fills the room left for it: by then the pages are known.
func (s *sheet) contents() {
	last := s.pdf.PageNo()
	s.pdf.SetPage(s.listed.page)
	rows := s.contentRows()
	column := s.width/2 - 4
	y := s.listed.y
	for i, p := range s.sections {
		x := side
		if i >= rows {
			x += s.width/2 + 4
		}
		at := y + float64(i%rows)*contents.leading
		number := fmt.Sprint(p.page)
		numberWidth := s.fonts.width(number, style{}, contents.size)
		lines := s.wrap(dossier.Text{{Text: p.title}}, column-numberWidth-3, contents)
		s.y = at
		s.print(lines[:1], x, contents)
		s.y = at
		s.print(s.wrap(dossier.Text{{Text: number}}, column, contents), x+column-numberWidth, contents)
		s.pdf.Link(x, at, column, contents.leading, p.link)
	}
	s.pdf.SetPage(last)
}

// everyPage writes what stands on each page: which it is, of what.
func (s *sheet) everyPage() {
	count := s.pdf.PageCount()
	full, height := s.pdf.GetPageSize()
	for n := 1; n <= count; n++ {
		s.pdf.SetPage(n)
		s.pdf.SetDrawColor(120, 120, 120)
		s.pdf.SetLineWidth(0.1)
		s.pdf.Line(side, top-6, full-side, top-6)
		s.pdf.Line(side, height-bottom+5, full-side, height-bottom+5)
		mark := dossier.Text{{Text: s.d.Draft, Strong: true}}
		markLines := s.wrap(mark, s.width, margin)
		markWidth := lineWidth(markLines[0])
		s.y = top - 6 - margin.leading - 0.8
		s.print(first(s.wrap(dossier.Text{{Text: s.d.Build}}, s.width-markWidth-6, margin), 1), side, margin)
		s.y = top - 6 - margin.leading - 0.8
		s.print(markLines, full-side-markWidth, margin)
		number := s.wrap(dossier.Text{{Text: fmt.Sprintf(s.d.Words.Page, n, count)}}, s.width, margin)
		s.y = height - bottom + 6
		s.print(number, full-side-lineWidth(number[0]), margin)
		s.y = height - bottom + 6
		s.print(s.wrap(dossier.Text{{Text: s.d.Hold + " · " + s.d.Today + " · SHA-256 "}, {Text: s.d.Digest, Code: true}}, s.width, margin)[:1], side, margin)
	}
}

// attach puts the files inside. Names are kept to what every system takes.
func (s *sheet) attach() {
	var files []fpdf.Attachment
	for _, f := range s.d.Files {
		name := strings.Map(func(r rune) rune {
			if r < ' ' || r > '~' || strings.ContainsRune(`/\:*?"<>|()`, r) {
				return '_'
			}
			return r
		}, f.Name)
		if len(name) > mostFile {
			name = name[len(name)-mostFile:]
		}
		files = append(files, fpdf.Attachment{Content: f.Data, Filename: name, Description: f.About})
	}
	s.pdf.SetAttachments(files)
}

// section draws a chapter.
func (s *sheet) section(number int, section dossier.Section) {
	name := fmt.Sprintf("%d  %s", number, section.Title)
	if len(section.Blocks) > 0 {
		if boxes, ok := section.Blocks[0].(dossier.Boxes); ok {
			s.room(min(height(boxes)+20, s.end-top)) // a heading stays with its boxes
		}
	}
	s.heading(name, 0)
	link := s.link(section.ID)
	s.pdf.SetLink(link, s.y-12, s.pdf.PageNo())
	s.sections = append(s.sections, placed{name, link, s.pdf.PageNo()})
	for _, b := range section.Blocks {
		s.block(b)
	}
}

// link is the number of a place that others lead to.
func (s *sheet) link(id string) int {
	if n, known := s.links["#"+id]; known {
		return n
	}
	n := s.pdf.AddLink()
	s.links["#"+id] = n
	return n
}
