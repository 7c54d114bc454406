package paper

import "trialfit/internal/dossier"

// Measures of tables, in mm.
const (
	gutter = 2.4 // right of a column
	pad    = 0.9 // above and below the text of a row
	// labels is the width of the labels of facts.
	labels = 46.0
)

// grid is a table being drawn.
type grid struct {
	*sheet
	widths []float64
	head   [][]line
	look   look
}

// table draws a table; its head stands on every page it reaches.
func (s *sheet) table(t dossier.Table) {
	g := grid{sheet: s, look: small}
	sum := 0.0
	for _, share := range t.Shares {
		sum += share
	}
	for _, share := range t.Shares {
		g.widths = append(g.widths, s.width*share/sum)
	}
	for i, text := range t.Head {
		g.head = append(g.head, s.wrap(dossier.Text{{Text: text, Strong: true}}, g.widths[i]-gutter, headLook))
	}
	s.caption(t.Caption)
	s.room(g.headHeight() + 12)
	g.drawHead()
	for _, row := range t.Rows {
		g.row(row)
	}
	s.rule(s.y, 0.25, 20)
	s.y += 4
}

// caption names a table and keeps its head near.
func (s *sheet) caption(text string) {
	if text == "" {
		return
	}
	s.heading(text, 1)
}

// facts are a table without a head.
func (s *sheet) facts(facts dossier.Facts) {
	g := grid{sheet: s, look: body, widths: []float64{labels, s.width - labels}}
	s.rule(s.y, 0.1, 170)
	for _, f := range facts {
		g.row(dossier.Row{Cells: []dossier.Cell{{dossier.Text{{Text: f.Label}}}, f.Value}})
	}
	s.rule(s.y, 0.1, 170)
	s.y += 4
}

func (s *sheet) rule(y, width float64, grey int) {
	s.pdf.SetDrawColor(grey, grey, grey)
	s.pdf.SetLineWidth(width)
	s.pdf.Line(side, y, side+s.width, y)
}

func (g grid) headHeight() float64 {
	most := 0
	for _, lines := range g.head {
		most = max(most, len(lines))
	}
	return float64(most)*headLook.leading + 2*pad
}

func (g grid) drawHead() {
	if len(g.head) == 0 {
		return
	}
	y, x := g.y, side
	for i, lines := range g.head {
		g.y = y + g.headHeight() - pad - float64(len(lines))*headLook.leading
		g.print(lines, x, headLook)
		x += g.widths[i]
	}
	g.y = y + g.headHeight()
	g.rule(g.y, 0.25, 20)
}

// row draws a row; one that no page holds is broken between its lines.
func (g grid) row(row dossier.Row) {
	cells := make([][]line, len(row.Cells))
	most := 1
	for i, c := range row.Cells {
		for _, text := range c {
			cells[i] = append(cells[i], g.wrap(text, g.widths[i]-gutter, g.look)...)
		}
		most = max(most, len(cells[i]))
	}
	needed := float64(most)*g.look.leading + 2*pad
	page := g.end - top
	if len(g.head) > 0 {
		page -= g.headHeight()
	}
	if g.y+needed > g.end && needed <= page {
		g.turn()
	}
	if row.ID != "" {
		g.pdf.SetLink(g.link(row.ID), g.y, g.pdf.PageNo())
	}
	for first := true; first || most > 0; first = false {
		fit := int((g.end-g.y-2*pad)/g.look.leading + 1e-6)
		if fit < 1 || fit < most && fit < 3 {
			g.turn()
			continue
		}
		n := min(fit, most)
		y, x := g.y, side
		for i := range cells {
			g.y = y + pad
			part := cells[i][:min(n, len(cells[i]))]
			g.print(part, x, g.look)
			cells[i] = cells[i][len(part):]
			x += g.widths[i]
		}
		g.y = y + float64(n)*g.look.leading + 2*pad
		if most -= n; most > 0 {
			g.turn()
		}
	}
	g.rule(g.y, 0.1, 190)
}

// turn goes to a new page and repeats the head.
func (g grid) turn() {
	g.rule(g.y, 0.1, 190)
	g.newPage()
	g.drawHead()
}
