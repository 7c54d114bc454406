package paper

import (
	"codeberg.org/go-pdf/fpdf"

	"trialfit/internal/dossier"
	"trialfit/internal/report/pictures"
)

// pointsPerMM are the points of a font in a millimetre.
const pointsPerMM = 72 / 25.4

// drawing draws the shapes of a picture over the width of the page.
func (s *sheet) drawing(d dossier.Drawing) {
	p := d.Picture.Drawing
	scale := s.width / p.Width
	if tall := s.end - top; p.Height*scale > tall {
		scale = tall / p.Height
	}
	s.room(p.Height*scale + 4)
	y := s.y
	for _, shape := range p.Shapes {
		s.shape(shape, side, y, scale, p.FontSize)
	}
	s.y = y + p.Height*scale + 4
}

// shape draws one element, scaled, from the corner x, y.
func (s *sheet) shape(shape pictures.Shape, x, y, scale, size float64) {
	at := shape.At
	px := func(i int) float64 { return x + at[i]*scale }
	py := func(i int) float64 { return y + at[i]*scale }
	if shape.Kind == pictures.Words {
		if shape.Look.Size > 0 {
			size = shape.Look.Size
		}
		st := style{strong: shape.Look.Bold}
		points := size * scale * pointsPerMM
		text := s.fonts.drawable(shape.Text, st)
		left := px(0)
		switch wide := s.fonts.width(text, st, points); shape.Anchor {
		case "middle":
			left -= wide / 2
		case "end":
			left -= wide
		}
		s.fonts.use(st, points)
		s.ink(false)
		s.pdf.Text(left, py(1), text)
		return
	}
	look := shape.Look
	if look.Fill == 0 && look.Stroke == 0 {
		look.Fill = 1
	}
	s.pdf.SetDrawColor(20, 20, 18)
	s.pdf.SetFillColor(20, 20, 18)
	width := look.Width
	if width == 0 {
		width = 1
	}
	s.pdf.SetLineWidth(width * scale)
	if look.Dash != nil {
		s.pdf.SetDashPattern([]float64{look.Dash[0] * scale, look.Dash[1] * scale}, 0)
	}
	trace := func(how string) {
		switch shape.Kind {
		case pictures.Line:
			s.pdf.Line(px(0), py(1), px(2), py(3))
		case pictures.Rect:
			s.pdf.Rect(px(0), py(1), at[2]*scale, at[3]*scale, how)
		case pictures.Circle:
			s.pdf.Circle(px(0), py(1), at[2]*scale, how)
		case pictures.Polygon:
			var points []fpdf.PointType
			for i := 0; i+1 < len(at); i += 2 {
				points = append(points, fpdf.PointType{X: px(i), Y: py(i + 1)})
			}
			s.pdf.Polygon(points, how)
		}
	}
	if look.Fill > 0 && shape.Kind != pictures.Line {
		s.pdf.SetAlpha(look.Fill, "Normal")
		trace("F")
	}
	if look.Stroke > 0 {
		s.pdf.SetAlpha(look.Stroke, "Normal")
		trace("D")
	}
	s.pdf.SetAlpha(1, "Normal")
	if look.Dash != nil {
		s.pdf.SetDashPattern(nil, 0)
	}
}
