package pictures

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"strconv"
	"strings"

	"trialfit/internal/report"
)

// Sizes in the units of a picture, which are pixels where it is not scaled.
const (
	width     = 720
	fontSize  = 13
	letter    = 0.62 * fontSize // a generous mean width of a letter
	rowHeight = 26
	edge      = 16
)

// Shape is one element of a drawing, in pixels from its top left corner.
type Shape struct {
	Kind Kind
	// At holds x and y of each point; of a rectangle its corner and its size,
	// of a circle its centre and its radius.
	At []float64
	// Text and Anchor are those of words: start, middle or end lies at the point.
	Text, Anchor string
	Look         Look
}

// Kind says what a shape is.
type Kind int

// The kinds of shape.
const (
	Line Kind = iota
	Rect
	Polygon
	Circle
	Words
)

// Look is how a shape is drawn, in the one colour of the drawing.
type Look struct {
	// Fill and Stroke are opacities, 0 where there is none.
	Fill, Stroke float64
	// Width is that of the stroke in pixels, 0 for 1; Dash are lengths of
	// strokes and gaps.
	Width float64
	Dash  []float64
	Round bool // corners of the stroke
	Bold  bool
	Size  float64 // of words in pixels, 0 for the size of the drawing
	class string
}

// canvas collects the shapes of one drawing.
type canvas struct{ shapes []Shape }

func (c *canvas) add(kind Kind, look Look, at ...float64) {
	c.shapes = append(c.shapes, Shape{Kind: kind, At: at, Look: look})
}

// coordinate rounds to a tenth of a pixel.
func coordinate(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	s = strings.TrimSuffix(s, ".0")
	if s == "-0" {
		return "0"
	}
	return s
}

func (c *canvas) line(x1, y1, x2, y2 float64, look Look) {
	if look.Stroke == 0 {
		look.Stroke = 1
	}
	c.add(Line, look, x1, y1, x2, y2)
}

func (c *canvas) rect(x, y, w, h float64, look Look) { c.add(Rect, look, x, y, w, h) }

func (c *canvas) polygon(look Look, xy ...float64) { c.add(Polygon, look, xy...) }

// Where a text lies to its point.
const (
	start  = "start"
	middle = "middle"
	end    = "end"
)

// Looks of elements.
var (
	plain  = Look{}
	faint  = Look{Stroke: 0.2}
	bold   = Look{Bold: true}
	number = Look{class: "value"}
	tick   = Look{class: "tick", Size: 12}
	shade  = Look{Fill: 0.14}
	zone   = Look{Fill: 0.08}
	link   = Look{Fill: 0.2, Stroke: 0.2}
	gear   = Look{Fill: 0.45, Stroke: 1, Width: 1.2, Round: true}
	solid  = Look{Fill: 0.45}
	heavy  = Look{Width: 2}
	dashed = Look{Width: 1.5, Dash: []float64{6, 3}}
)

func (c *canvas) text(x, y float64, anchor string, look Look, s string) {
	c.shapes = append(c.shapes, Shape{Kind: Words, At: []float64{x, y}, Text: report.Plain(s), Anchor: anchor, Look: look})
}

// element writes a shape as SVG.
func (s Shape) element() string {
	at := make([]any, len(s.At))
	for i, x := range s.At {
		at[i] = coordinate(x)
	}
	look := s.Look.attributes()
	switch s.Kind {
	case Line:
		return fmt.Sprintf(`<line x1="%s" y1="%s" x2="%s" y2="%s"`, at...) + look + "/>"
	case Rect:
		return fmt.Sprintf(`<rect x="%s" y="%s" width="%s" height="%s"`, at...) + look + "/>"
	case Circle:
		return fmt.Sprintf(`<circle cx="%s" cy="%s" r="%s"`, at...) + look + "/>"
	case Polygon:
		var points []string
		for i := 0; i < len(at); i += 2 {
			points = append(points, fmt.Sprint(at[i], ",", at[i+1]))
		}
		return `<polygon points="` + strings.Join(points, " ") + `"` + look + "/>"
	}
	if s.Anchor != start {
		look = ` text-anchor="` + s.Anchor + `"` + look
	}
	return fmt.Sprintf(`<text x="%s" y="%s"`, at...) + look + ">" + escape(s.Text) + "</text>"
}

func (l Look) attributes() string {
	var b strings.Builder
	add := func(name, value string) { b.WriteString(" " + name + `="` + value + `"`) }
	decimal := func(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
	if l.class != "" {
		add("class", l.class)
	}
	if l.Fill > 0 {
		add("fill", "currentColor")
		add("fill-opacity", decimal(l.Fill))
	}
	if l.Stroke > 0 {
		add("stroke", "currentColor")
	}
	if l.Stroke > 0 && l.Stroke < 1 {
		add("stroke-opacity", decimal(l.Stroke))
	}
	if l.Width > 0 {
		add("stroke-width", decimal(l.Width))
	}
	if l.Dash != nil {
		add("stroke-dasharray", decimal(l.Dash[0])+" "+decimal(l.Dash[1]))
	}
	if l.Round {
		add("stroke-linejoin", "round")
	}
	if l.Bold {
		add("font-weight", "bold")
	}
	if l.Size > 0 {
		add("font-size", decimal(l.Size))
	}
	return b.String()
}

// document finishes what was drawn. Lines of description are sentences.
func (c *canvas) document(name, title string, height float64, description []string) *Drawing {
	return &Drawing{name: name, Title: title, Description: sentences(description), Width: width, Height: height, FontSize: fontSize, Shapes: c.shapes}
}

// Drawing is a picture as shapes, for whoever draws it in another form than SVG.
type Drawing struct {
	// Title is short; Description says every number in words.
	Title, Description string
	// Width, Height and FontSize are in pixels.
	Width, Height, FontSize float64
	Shapes                  []Shape

	name string
}

func (d *Drawing) svg() string {
	var out bytes.Buffer
	fmt.Fprintf(&out, `<svg xmlns="http://www.w3.org/2000/svg" width="%s" height="%s" viewBox="0 0 %s %s" role="img" aria-labelledby="%s-title %s-desc" font-family="sans-serif" font-size="%s" fill="currentColor">`+"\n",
		coordinate(d.Width), coordinate(d.Height), coordinate(d.Width), coordinate(d.Height), d.name, d.name, coordinate(d.FontSize))
	fmt.Fprintf(&out, "<title id=\"%s-title\">%s</title>\n", d.name, escape(d.Title))
	fmt.Fprintf(&out, "<desc id=\"%s-desc\">%s</desc>\n", d.name, escape(d.Description))
	for _, s := range d.Shapes {
		out.WriteString(s.element() + "\n")
	}
	out.WriteString("</svg>\n")
	return out.String()
}

// sentences puts lines together, each with one full stop.
func sentences(lines []string) string {
	var b strings.Builder
	for i, line := range lines {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(strings.TrimSuffix(line, ".") + ".")
	}
	return b.String()
}

// escape makes text safe to stand between tags.
func escape(s string) string {
	var b bytes.Buffer
	if err := xml.EscapeText(&b, []byte(report.Plain(s))); err != nil {
		panic(err) // a buffer takes everything
	}
	return b.String()
}

// textWidth guesses how wide a text is; letters of the Far East fill a square.
func textWidth(s string) float64 {
	w := 0.0
	for _, r := range s {
		if r >= 0x1100 {
			w += fontSize
		} else {
			w += letter
		}
	}
	return w
}

// fit shortens a text to a width.
func fit(s string, most float64) string {
	if textWidth(s) <= most+0.5 {
		return s
	}
	runes := []rune(s)
	for len(runes) > 1 && textWidth(string(runes)+"…") > most {
		runes = runes[:len(runes)-1]
	}
	return strings.TrimRight(string(runes), " ") + "…"
}

// wrap breaks a text into lines of a width.
func wrap(s string, most float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(s) {
		if line != "" && textWidth(line+" "+word) > most {
			lines = append(lines, line)
			line = ""
		}
		line = strings.TrimSpace(line + " " + fit(word, most))
	}
	return append(lines, line)
}
