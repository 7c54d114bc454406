package choice

import (
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"

	"trialfit/internal/prebuy"
)

//go:embed page.html
var pageText string

//go:embed page.css
var pageStyle string

// mostShown is how many combinations are drawn; mostListed how many of them, and
// of the reasons why others can't work, a page for people lists at all, and
// mostPrinted how many of those go on paper.
const (
	mostShown   = 10
	mostListed  = 200
	mostPrinted = 20
)

// whole is the page with what only this form needs.
type whole struct {
	*page
	Style      template.CSS
	Top, Rest  []row
	RestWords  string
	RuledShown []shownRuled
	RuledMore  int
	Intro      string // of the sheet
	Sheet      sheet

	MostPrinted int
}

type shownRuled struct{ Who, Reason, Source, Where string }

// HTML writes one page without anything from elsewhere. It reads on a phone and
// prints, the questions on a sheet of their own.
func HTML(w io.Writer, r *prebuy.Result) error { return writePage(w, view(r)) }

func writePage(w io.Writer, v *page) error {
	out := whole{page: v, Style: template.CSS(pageStyle), Top: v.Rows[:min(mostShown, len(v.Rows))], MostPrinted: mostPrinted}
	out.Intro = "What decides most comes first. Type the answers back into " + v.File + "."
	out.Sheet = sheetOf(v, out.Intro)
	out.Rest = v.Rows[len(out.Top):min(mostListed, len(v.Rows))]
	out.RestWords = many(len(v.Rows)-len(out.Top), "more combination", "more combinations")
	if listed := len(out.Top) + len(out.Rest); listed < len(v.Rows) {
		out.RestWords += fmt.Sprintf(", the first %d here", len(out.Rest))
	}
	out.RuledMore = max(0, len(v.Ruled)-mostListed)
	for _, u := range v.Ruled[:len(v.Ruled)-out.RuledMore] {
		out.RuledShown = append(out.RuledShown, shownRuled{strings.TrimSpace(few(u.Who, 12) + " " + u.with), u.words(), u.Source, lineOf(v.File, u.Where)})
	}
	t, err := template.New("page").Funcs(template.FuncMap{
		"join": strings.Join,
		"bar":  v.Bars.draw,
		"gauge": func(m margin) template.HTML {
			return m.draw()
		},
	}).Parse(pageText)
	if err != nil {
		return fmt.Errorf("reading the page: %w", err)
	}
	var b strings.Builder
	if err := t.Execute(&b, out); err != nil {
		return fmt.Errorf("writing the page: %w", err)
	}
	_, err = io.WriteString(w, b.String())
	return err
}

// lineOf is a place in the shortlist, whose name is told once.
func lineOf(file, where string) string {
	line, _, _ := strings.Cut(strings.TrimPrefix(where, file+":"), ":")
	if line == file {
		return ""
	}
	return "line " + line
}

// draw is a range of money on the common scale. The words beside it say the
// same, so that it is hidden from who can't see it.
func (s *barScale) draw(m money) template.HTML {
	from, to := s.at(m.low), s.at(m.high)
	class := "bar"
	if m.open {
		to, class = 100, "open"
	}
	return template.HTML(fmt.Sprintf(
		`<svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false"><line class="axis" x1="0" x2="100" y1="9" y2="9" vector-effect="non-scaling-stroke"/><rect class="%s" x="%.2f" y="2" width="%.2f" height="5" vector-effect="non-scaling-stroke"/>%s</svg>`,
		class, from, max(to-from, 0.6), s.upright()))
}

// draw is a value against its limit: the bar lies where the value may, the
// upright is the limit. The words above say the same.
func (m margin) draw() template.HTML {
	from, to := min(m.low, 1), max(m.high, 1)
	room := max(to-from, 0.02) * 0.15
	from, to = from-room, to+room
	at := func(x float64) float64 { return 100 * (x - from) / (to - from) }
	return template.HTML(fmt.Sprintf(
		`<svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false"><line class="axis" x1="0" x2="100" y1="9" y2="9" vector-effect="non-scaling-stroke"/><rect class="bar" x="%.2f" y="3" width="%.2f" height="4"/><line class="limit" x1="%.2f" x2="%.2f" y1="0" y2="10" vector-effect="non-scaling-stroke"/></svg>`,
		at(m.low), max(at(m.high)-at(m.low), 0.6), at(1), at(1)))
}
