package quantity

import (
	"strconv"
	"strings"
)

// Error says in one line why a text is no quantity of a kind.
type Error struct {
	Text     string   // what was written, shortened if very long
	Kind     Kind     // what was due
	Found    string   // the fact, to follow the quoted text: `has no unit`
	Hint     string   // what would do, "" to list Accepted: `write "24.5 lbf·ft"`
	Accepted []string // Symbols of the kind
}

// Error is one line, the fact first.
func (e *Error) Error() string {
	s := strconv.Quote(e.Text) + " " + e.Found
	switch {
	case e.Hint != "":
		s += ": " + e.Hint
	case len(e.Accepted) > 0:
		s += ": " + accepted(e.Kind, e.Accepted)
	}
	return s
}

// accepted is the clause that lists the units of a kind.
func accepted(kind Kind, symbols []string) string {
	const shown = 5
	list := strings.Join(symbols[:min(shown, len(symbols))], ", ")
	switch {
	case kind == Conductor:
		list = `mm², AWG or SAE, such as "50 mm²" or "2/0 AWG"`
	case kind == Ratio:
		list = "no unit, % or :1"
	case len(symbols) > shown:
		list += ", ..."
	}
	return article(string(kind)) + " is written with " + list
}

func article(noun string) string {
	if strings.ContainsRune("aeiou", rune(noun[0])) {
		return "an " + noun
	}
	return "a " + noun
}

// fault is an Error before the text is known.
type fault struct{ found, hint string }

// offer turns corrected texts into a hint.
func offer(texts ...string) string {
	quoted := make([]string, len(texts))
	for i, t := range texts {
		quoted[i] = strconv.Quote(t)
	}
	if last := len(quoted) - 1; last > 0 {
		return "write " + strings.Join(quoted[:last], ", ") + " or " + quoted[last]
	}
	return "write " + quoted[0]
}
