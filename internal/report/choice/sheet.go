package choice

import (
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"
)

// sheet is the page of questions to print and take along. It is one page on A4
// and on Letter, whatever the length of the list: what does not fit is counted.
type sheet struct {
	Entries []entry
	Beyond  int // entries that are on the screen only
}

// entry is a question with room for its answer.
type entry struct {
	Text, More, Room string
	Printed          bool
}

// Measures of the printed sheet in millimetres, from page.css. The page is the
// shorter of the two, Letter. A line holds less than it would in the typeface
// that is asked for, since not every reader has it.
const (
	pageHeight = 279.4 - 2*15
	lineHeight = 4.5
	perLine    = 98  // characters beside the room for the answer
	perWidth   = 115 // characters over the whole width
	aroundItem = 2.4
	roomHeight = 7.7
	headHeight = 14 // heading, and the gap below the sentence under it
	footHeight = 8  // how many did not fit
)

// asksShare is what questions to sellers may take of the page while questions
// to an authority wait: these come before any money is paid.
const asksShare = 0.6

// mostIfs is how many answers a question tells the consequence of on the sheet.
const mostIfs = 2

func sheetOf(v *page, intro string) sheet {
	var s sheet
	for _, a := range v.Asks {
		more := fmt.Sprintf("Tool: %s. Decides %s: %s.", a.Tool, a.Settles, a.Share)
		for _, f := range a.If[:min(mostIfs, len(a.If))] {
			more += " " + upper(f) + "."
		}
		if n := len(a.If) - mostIfs; n > 0 {
			more += fmt.Sprintf(" And %d more like it.", n)
		}
		s.Entries = append(s.Entries, entry{Text: a.Text, More: more, Room: "answer"})
	}
	for _, o := range v.Offices {
		s.Entries = append(s.Entries, entry{Text: o.Ask, More: upper(o.Office) + ". Raised by " + few(o.Concerns, 3) + ".", Room: "answer, office, date"})
	}
	s.fit(len(v.Asks), pageHeight-headHeight-footHeight-lineHeight*linesOf(intro, perWidth))
	return s
}

// fit chooses what is printed, in order: questions to sellers, those to the
// authority, and of the former again what room is left for.
func (s *sheet) fit(asks int, room float64) {
	first := room
	if asks < len(s.Entries) {
		first *= asksShare
	}
	used := 0.0
	take := func(entries []entry, room float64) {
		for i := range entries {
			if h := entries[i].height(); !entries[i].Printed && used+h <= room {
				entries[i].Printed = true
				used += h
			}
		}
	}
	take(s.Entries[:asks], first)
	take(s.Entries[asks:], room)
	take(s.Entries[:asks], room)
	for _, e := range s.Entries {
		if !e.Printed {
			s.Beyond++
		}
	}
}

func (e entry) height() float64 {
	return max(lineHeight*(linesOf(e.Text, perLine)+linesOf(e.More, perLine)), roomHeight) + aroundItem
}

// linesOf is how many lines a text takes; letters beyond Latin may be twice as wide.
func linesOf(text string, columns int) float64 {
	n := 0
	for _, r := range text {
		n++
		if r > unicode.MaxLatin1 {
			n++
		}
	}
	return math.Ceil(float64(n) / float64(columns))
}

// upper begins a sentence.
func upper(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}

// few names some of a list and counts the rest.
func few(list []string, most int) string {
	text := strings.Join(list[:min(most, len(list))], ", ")
	if more := len(list) - most; more > 0 {
		text += fmt.Sprintf(" and %d more", more)
	}
	return text
}
