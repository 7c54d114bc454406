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

// canvas collects the elements of one SVG.
type canvas struct{ b bytes.Buffer }

// write adds an element; args are numbers and safe words only.
func (c *canvas) write(format string, args ...any) {
	for i, a := range args {
		if x, ok := a.(float64); ok {
			args[i] = coordinate(x)
		}
	}
	fmt.Fprintf(&c.b, format+"\n", args...)
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

func (c *canvas) line(x1, y1, x2, y2 float64, look string) {
	c.write(`<line x1="%s" y1="%s" x2="%s" y2="%s" stroke="currentColor"%s/>`, x1, y1, x2, y2, look)
}

func (c *canvas) rect(x, y, w, h float64, look string) {
	c.write(`<rect x="%s" y="%s" width="%s" height="%s"%s/>`, x, y, w, h, look)
}

func (c *canvas) polygon(look string, xy ...float64) {
	var points []string
	for i := 0; i < len(xy); i += 2 {
		points = append(points, coordinate(xy[i])+","+coordinate(xy[i+1]))
	}
	c.write(`<polygon points="%s"%s/>`, strings.Join(points, " "), look)
}

// Where a text lies to its point.
const (
	start  = "start"
	middle = "middle"
	end    = "end"
)

// Looks of elements.
const (
	faint  = ` stroke-opacity="0.2"`
	bold   = ` font-weight="bold"`
	number = ` class="value"`
	tick   = ` class="tick" font-size="12"`
	shade  = ` fill="currentColor" fill-opacity="0.14"`
	link   = ` fill="currentColor" fill-opacity="0.2" stroke="currentColor" stroke-opacity="0.2"`
	solid  = ` fill="currentColor" fill-opacity="0.45"`
	heavy  = ` stroke-width="2"`
	dashed = ` stroke-width="1.5" stroke-dasharray="6 3"`
)

func (c *canvas) text(x, y float64, anchor, look, s string) {
	at := ""
	if anchor != start {
		at = ` text-anchor="` + anchor + `"`
	}
	c.write(`<text x="%s" y="%s"%s%s>%s</text>`, x, y, at, look, escape(s))
}

// document wraps what was drawn. Lines of description are sentences.
func (c *canvas) document(name, title string, height float64, description []string) string {
	var out bytes.Buffer
	fmt.Fprintf(&out, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%s" viewBox="0 0 %d %s" role="img" aria-labelledby="%s-title %s-desc" font-family="sans-serif" font-size="%d" fill="currentColor">`+"\n",
		width, coordinate(height), width, coordinate(height), name, name, fontSize)
	fmt.Fprintf(&out, "<title id=\"%s-title\">%s</title>\n", name, escape(title))
	fmt.Fprintf(&out, "<desc id=\"%s-desc\">%s</desc>\n", name, escape(sentences(description)))
	out.Write(c.b.Bytes())
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
