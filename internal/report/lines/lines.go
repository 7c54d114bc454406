// Package lines prints text for people, broken at the width of their terminal.
package lines

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"trialfit/internal/report"
)

// Printer writes lines. After an error, which stays in Err, it writes nothing more.
type Printer struct {
	W       io.Writer
	Columns int
	Err     error
}

// Line writes one line as it is.
func (p *Printer) Line(format string, args ...any) {
	if p.Err == nil {
		_, p.Err = fmt.Fprintf(p.W, format+"\n", args...)
	}
}

// Wrap writes a text behind a lead, broken at blanks; further lines stand
// behind rest. A number and its unit stay together.
func (p *Printer) Wrap(first, rest, text string) {
	lead := first
	var row strings.Builder
	used := 0
	flush := func() {
		p.Line("%s", strings.TrimRight(lead+row.String(), " "))
		lead = rest
		row.Reset()
		used = 0
	}
	for _, word := range glued(strings.Fields(report.Plain(text))) {
		n := utf8.RuneCountInString(word)
		if used > 0 && utf8.RuneCountInString(lead)+used+1+n > p.Columns {
			flush()
		}
		if used > 0 {
			row.WriteByte(' ')
			used++
		}
		row.WriteString(word)
		used += n
	}
	flush()
}

// Field writes a label and its text, wrapped under itself.
func (p *Printer) Field(label, text string) {
	p.Wrap(fmt.Sprintf("    %-8s", label), strings.Repeat(" ", 12), text)
}

// Rows writes labels and their texts, leaving out those without text.
func (p *Printer) Rows(rows [][2]string) {
	for _, row := range rows {
		if row[1] != "" {
			p.Wrap(fmt.Sprintf("  %-10s", row[0]), strings.Repeat(" ", 12), row[1])
		}
	}
}

// glued joins a number to the word after it, so that a line never ends between
// a value and its unit.
func glued(words []string) []string {
	var out []string
	for _, word := range words {
		if n := len(out); n > 0 && endsInNumber(out[n-1]) && len(word) <= 8 {
			out[n-1] += " " + word
			continue
		}
		out = append(out, word)
	}
	return out
}

func endsInNumber(s string) bool {
	r, _ := utf8.DecodeLastRuneInString(s)
	return r >= '0' && r <= '9' || r == '±'
}
