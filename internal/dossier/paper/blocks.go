package paper

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"

	"codeberg.org/go-pdf/fpdf"

	"trialfit/internal/dossier"
)

// block draws one part of a section.
func (s *sheet) block(b dossier.Block) {
	switch b := b.(type) {
	case dossier.Heading:
		s.heading(b.Text, 1)
	case dossier.Paragraph:
		s.paragraph(b.Text, body)
	case dossier.List:
		s.list(b)
	case dossier.Facts:
		s.facts(b)
	case dossier.Table:
		s.table(b)
	case dossier.Drawing:
		s.drawing(b)
	case dossier.Photos:
		s.photos(b)
	case dossier.Boxes:
		s.boxes(b)
	}
}

// heading opens a section, or a part of one, and keeps what follows near.
func (s *sheet) heading(text string, level int) {
	l := chapter
	if level > 0 {
		l = part
	}
	lines := s.wrap(dossier.Text{{Text: text, Strong: true}}, s.width, l)
	before, after := 3.0, 22.0 // what follows is kept near
	if level == 0 {
		before, after = 7, 44
	}
	s.room(before + float64(len(lines))*l.leading + after)
	if s.y > top {
		s.y += before
	}
	if level == 0 {
		s.pdf.SetDrawColor(20, 20, 18)
		s.pdf.SetLineWidth(0.3)
		s.pdf.Line(side, s.y-1.5, side+s.width, s.y-1.5)
	}
	s.fonts.use(style{}, l.size)
	s.pdf.Bookmark(s.fonts.drawable(text, style{}), level, s.y)
	s.print(lines, side, l)
	s.y += 1.4
}

func (s *sheet) list(b dossier.List) {
	const indent = 4
	for _, item := range b.Items {
		lines := s.wrap(item, s.width-indent, body)
		s.room(float64(min(len(lines), together)) * body.leading)
		for i, ln := range lines {
			s.room(body.leading)
			if i == 0 {
				s.pdf.SetFillColor(20, 20, 18)
				s.pdf.Circle(side+1.4, s.y+body.leading*0.5, 0.45, "F")
			}
			s.print([]line{ln}, side+indent, body)
		}
		s.y += 0.6
	}
	s.y += 1.4
}

// photos stand three in a row.
func (s *sheet) photos(photos dossier.Photos) {
	const columns, gap, tallest = 3, 5.0, 56.0
	const pixel = 25.4 / 96 // mm, the largest that one is drawn
	column := (s.width - gap*(columns-1)) / columns
	for from := 0; from < len(photos); from += columns {
		row := photos[from:min(from+columns, len(photos))]
		heights := make([]float64, len(row))
		captions := make([][]line, len(row))
		tall, words := 0.0, 0
		for i, p := range row {
			heights[i] = min(column*float64(p.Height)/float64(p.Width), tallest, pixel*float64(p.Height))
			captions[i] = s.wrap(p.Caption, column, small)
			tall, words = max(tall, heights[i]), max(words, len(captions[i]))
		}
		words = min(words, 12) // a caption is a title, not a text
		s.room(tall + 1 + float64(words)*small.leading + 3)
		y := s.y
		for i, p := range row {
			x := side + float64(i)*(column+gap)
			s.photo(p, x, y, heights[i])
			s.y = y + tall + 1
			s.print(first(captions[i], words), x, small)
		}
		s.y = y + tall + 1 + float64(words)*small.leading + 3
	}
}

func (s *sheet) photo(p dossier.Photo, x, y, height float64) {
	sum := sha256.Sum256(p.JPEG)
	name := hex.EncodeToString(sum[:])
	options := fpdf.ImageOptions{ImageType: "JPEG"}
	if s.pdf.GetImageInfo(name) == nil {
		s.pdf.RegisterImageOptionsReader(name, options, bytes.NewReader(p.JPEG))
	}
	width := height * float64(p.Width) / float64(p.Height)
	s.pdf.ImageOptions(name, x, y, width, height, false, options, 0, "")
	s.pdf.SetDrawColor(180, 180, 180)
	s.pdf.SetLineWidth(0.1)
	s.pdf.Rect(x, y, width, height, "D")
}

// boxes are drawn on one page where one holds them.
func (s *sheet) boxes(boxes dossier.Boxes) {
	if all := height(boxes); all <= s.end-top {
		s.room(all)
	}
	for _, b := range boxes {
		s.room(b.Height)
		s.pdf.SetDrawColor(20, 20, 18)
		s.pdf.SetLineWidth(0.2)
		s.pdf.Rect(side, s.y, s.width, b.Height, "D")
		y := s.y
		s.y += 1
		s.print(s.wrap(dossier.Text{{Text: b.Label}}, s.width-3, small)[:1], side+1.5, small)
		s.y = y + b.Height
	}
	s.y += 3
}

func height(boxes dossier.Boxes) float64 {
	all := 0.0
	for _, b := range boxes {
		all += b.Height
	}
	return all
}
