package paper

import (
	"strings"
	"unicode/utf8"

	"trialfit/internal/dossier"
)

// look is the size of a text in points, and how far its lines are apart in mm.
type look struct{ size, leading float64 }

var (
	title     = look{17, 7.2}
	subtitle  = look{11, 5}
	draftLook = look{10, 4.6}
	chapter   = look{13, 5.8}
	part      = look{9.5, 4.4}
	body      = look{8.4, 3.85}
	contents  = look{8.4, 4.2}
	small     = look{7.3, 3.35}
	headLook  = look{6.8, 3.1}
	margin    = look{6.6, 3.2}
)

// piece is text on one line with one look.
type piece struct {
	text string
	style
	link  string
	width float64
}

type line []piece

func lineWidth(l line) float64 {
	w := 0.0
	for _, p := range l {
		w += p.width
	}
	return w
}

// word is what is not broken unless a whole line is too short for it.
type word struct {
	text  string
	style style
	link  string
	space bool // a blank stands before it
}

// words splits a text at its blanks; a number keeps its unit.
func words(t dossier.Text, f *fonts) []word {
	var list []word
	for _, span := range t {
		s := style{strong: span.Strong, code: span.Code && !span.Strong}
		text := f.drawable(span.Text, s)
		blank := strings.HasPrefix(text, " ")
		for _, w := range strings.Fields(text) {
			n := len(list)
			if !blank && n > 0 && list[n-1].text != "" && list[n-1].style == s && list[n-1].link == span.Link {
				list[n-1].text += w
			} else if blank && n > 0 && list[n-1].style == s && list[n-1].link == span.Link && endsInNumber(list[n-1].text) && utf8.RuneCountInString(w) <= 8 {
				list[n-1].text += " " + w
			} else {
				list = append(list, word{w, s, span.Link, blank})
			}
			blank = true
		}
		if strings.HasSuffix(text, " ") && len(list) > 0 {
			list = append(list, word{"", s, "", true}) // carries the blank
		}
	}
	return list
}

func endsInNumber(s string) bool {
	r, _ := utf8.DecodeLastRuneInString(s)
	return r >= '0' && r <= '9' || r == '±'
}

// hanging is how far a comma may stand out, in mm, rather than begin a line.
const hanging = 1.2

// wrap breaks a text into lines, at least one. A word longer than a line is
// broken anywhere.
func (s *sheet) wrap(t dossier.Text, width float64, l look) []line {
	lines := []line{{}}
	used := 0.0
	carried := false
	next := func() {
		lines = append(lines, line{})
		used = 0
	}
	put := func(text string, w word, lead string) {
		own := s.fonts.width(lead+text, w.style, l.size)
		at := &lines[len(lines)-1]
		if n := len(*at); n > 0 && (*at)[n-1].style == w.style && (*at)[n-1].link == w.link {
			(*at)[n-1].text += lead + text
			(*at)[n-1].width += own
		} else {
			*at = append(*at, piece{lead + text, w.style, w.link, own})
		}
		used += own
	}
	for _, w := range words(t, s.fonts) {
		if w.text == "" {
			carried = true
			continue
		}
		lead := ""
		if (w.space || carried) && used > 0 {
			lead = " "
		}
		carried = false
		own := s.fonts.width(lead+w.text, w.style, l.size)
		if used > 0 && lead == "" && own < hanging {
			put(w.text, w, lead)
			continue
		}
		if used > 0 && used+own > width && (lead != "" || own <= width) {
			next()
			lead = ""
			own = s.fonts.width(w.text, w.style, l.size)
		}
		if used+own <= width {
			put(w.text, w, lead)
			continue
		}
		for rest := []rune(w.text); len(rest) > 0; {
			n := s.fitting(rest, width-used, w.style, l)
			if n == 0 && used > 0 {
				next()
				continue
			}
			n = max(n, 1)
			put(string(rest[:n]), w, lead)
			lead = ""
			if rest = rest[n:]; len(rest) > 0 {
				next()
			}
		}
	}
	return lines
}

// fitting is how many characters of a word fit; it ends behind a joint of the
// word where one is near.
func (s *sheet) fitting(rest []rune, width float64, st style, l look) int {
	used, joint := 0.0, 0
	for n, r := range rest {
		used += s.fonts.width(string(r), st, l.size)
		if used > width {
			if joint > n/2 {
				return joint
			}
			return n
		}
		if strings.ContainsRune("._/-:", r) {
			joint = n + 1
		}
	}
	return len(rest)
}

// print draws lines at x from s.y downwards.
func (s *sheet) print(lines []line, x float64, l look) {
	for _, ln := range lines {
		at := x
		base := s.y + l.leading*0.74
		for _, p := range ln {
			s.fonts.use(p.style, l.size)
			s.ink(p.link != "")
			s.pdf.Text(at, base, p.text)
			if p.link != "" {
				s.lead(p, at, l)
			}
			at += p.width
		}
		s.y += l.leading
	}
	s.ink(false)
}

// ink is the colour of text, another where it leads somewhere.
func (s *sheet) ink(link bool) {
	if link {
		s.pdf.SetTextColor(31, 78, 102)
		return
	}
	s.pdf.SetTextColor(20, 20, 18)
}

func (s *sheet) lead(p piece, x float64, l look) {
	if id, inside := strings.CutPrefix(p.link, "#"); inside {
		s.pdf.Link(x, s.y, p.width, l.leading, s.link(id))
		return
	}
	s.pdf.LinkString(x, s.y, p.width, l.leading, p.link)
}

// together is the number of lines that are not parted by the end of a page.
const together = 8

// paragraph draws a text over the width of the page, across pages if need be.
func (s *sheet) paragraph(t dossier.Text, l look) {
	lines := s.wrap(t, s.width, l)
	s.room(float64(min(len(lines), together)) * l.leading)
	for _, ln := range lines {
		s.room(l.leading)
		s.print([]line{ln}, side, l)
	}
	s.y += 1.6
}

// first keeps so many lines; the last one says that there were more.
func first(lines []line, n int) []line {
	if len(lines) <= n {
		return lines
	}
	kept := append([]line{}, lines[:n]...)
	if last := kept[n-1]; len(last) > 0 {
		last = append(line{}, last...)
		last[len(last)-1].text += "…"
		kept[n-1] = last
	}
	return kept
}
