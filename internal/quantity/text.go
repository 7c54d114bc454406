package quantity

import (
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"
)

const (
	mostCharacters = 100
	mostDigits     = 30
)

// joints of the forms that have two numbers.
const (
	joinNone  = ""
	joinRange = ".."
	joinPlus  = "±"
)

// part is a number and its unit as written; either may be "".
type part struct{ number, unit string }

// written is a text cut into its parts.
type written struct {
	first, second part
	joint         string
}

// with is the text with one unit spelling replaced by another.
func (w written) with(old, unit string) string {
	show := func(p part) string {
		switch {
		case p.unit == "":
			return p.number
		case p.unit == old:
			return p.number + " " + unit
		default:
			return p.number + " " + p.unit
		}
	}
	switch w.joint {
	case joinRange:
		return show(w.first) + ".." + show(w.second)
	case joinPlus:
		return show(w.first) + " ± " + show(w.second)
	}
	return show(w.first)
}

var typing = strings.NewReplacer(
	"\u00a0", " ", "\u202f", " ", "\u2009", " ", "\u2007", " ", "\t", " ",
	"\u2212", "-", "–", "-", "—", "-", "+/-", "±", "+-", "±", "…", "..", "...", "..",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⁄", "/",
)

var (
	spaces   = regexp.MustCompile(` +`)
	comma    = regexp.MustCompile(`(\d+),(\d+)`)
	pointed  = regexp.MustCompile(`\d\.\d+,\d`)
	thousand = regexp.MustCompile(`(^|[^\d.,])\d{1,3}(,\d{3})+($|[^\d,])`)
	grouped  = regexp.MustCompile(`(^|[^\d./])(\d{1,3})((?:[ '’_]\d{3})+)($|[^\d/])`)
	exponent = regexp.MustCompile(`^[+-]?(?:\d+(?:\.\d+)?|\.\d+)[eE][+-]?\d+`)
	numeral  = regexp.MustCompile(`^[+-]? ?(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?|\.\d+)`)
	toward   = regexp.MustCompile(`^(?:(\D+?) (?:- ?|to )|- ?|to )(\.?\d.*)$`)
	perTime  = regexp.MustCompile(`^1/[a-z]`)
)

// cut splits a text into numbers and units without asking what they mean.
func cut(text string, kind Kind) (written, *fault) {
	if utf8.RuneCountInString(text) > mostCharacters {
		return written{}, &fault{"is " + strconv.Itoa(utf8.RuneCountInString(text)) + " characters long",
			"a quantity has at most " + strconv.Itoa(mostCharacters)}
	}
	text = strings.TrimSpace(spaces.ReplaceAllString(typing.Replace(text), " "))
	if text == "" {
		return written{}, &fault{"is empty", example(kind)}
	}
	if n := digits(text); n > mostDigits {
		return written{}, &fault{"has " + strconv.Itoa(n) + " digits", "a quantity has at most " + strconv.Itoa(mostDigits)}
	}
	if f := cutGrouping(text); f != nil {
		return written{}, f
	}
	ranges, tolerances := strings.Count(text, joinRange), strings.Count(text, joinPlus)
	if ranges+tolerances > 1 {
		return written{}, &fault{"has more than one range", `write one, such as "300..330 kg" or "312 kg ± 5"`}
	}
	w := written{joint: joinNone}
	if ranges == 1 {
		w.joint = joinRange
	} else if tolerances == 1 {
		w.joint = joinPlus
	}
	left, right := text, ""
	if w.joint != joinNone {
		left, right, _ = strings.Cut(text, w.joint)
	}
	var f *fault
	if w.first, f = cutPart(left, kind, w.joint); f != nil {
		return written{}, f
	}
	if w.joint == joinNone {
		return w, nil
	}
	w.second, f = cutPart(right, kind, w.joint)
	return w, f
}

// cutGrouping refuses commas and spaces inside numbers, which mean different
// things in different countries.
func cutGrouping(text string) *fault {
	if m := comma.FindStringSubmatch(text); m != nil {
		point := comma.ReplaceAllString(text, "$1.$2")
		joined := strings.ReplaceAll(text, ",", "")
		switch {
		case pointed.MatchString(text):
			return &fault{"has a decimal comma", offer(strings.ReplaceAll(strings.ReplaceAll(text, ".", ""), ",", "."))}
		case thousand.MatchString(text) && strings.Contains(text, "."):
			return &fault{"has a number in groups", offer(joined)}
		case thousand.MatchString(text):
			return &fault{"has a comma in its number", offer(joined, point)}
		}
		return &fault{"has a decimal comma", offer(point)}
	}
	if m := grouped.FindStringSubmatchIndex(text); m != nil {
		group := text[m[6]:m[7]]
		joined := strings.NewReplacer(" ", "", "'", "", "’", "", "_", "").Replace(group)
		return &fault{"has a number in groups", offer(text[:m[6]] + joined + text[m[7]:])}
	}
	return nil
}

// cutPart splits "18 1/2 in" into number and unit.
func cutPart(text string, kind Kind, joint string) (part, *fault) {
	text = strings.TrimSpace(text)
	if kind == Conductor {
		if size, system, ok := cutSize(text); ok {
			return part{size, system}, nil
		}
	}
	if m := exponent.FindString(text); m != "" {
		return part{}, &fault{"has an exponent", "write the number out" + plain(m, strings.TrimSpace(text[len(m):]))}
	}
	number := numeral.FindString(text)
	if number == "" {
		switch {
		case joint == joinRange:
			return part{}, &fault{"does not give both ends of its range", `write both, such as "300..330 kg"`}
		case joint == joinPlus:
			return part{}, &fault{"does not give a number on both sides of ±", `write both, such as "312 kg ± 5"`}
		}
		return part{}, &fault{"does not start with a number", example(kind)}
	}
	rest := strings.TrimSpace(text[len(number):])
	if m := toward.FindStringSubmatch(rest); m != nil && joint == joinNone {
		return part{}, &fault{"joins two numbers without saying how", offer(strings.TrimSpace(number+" "+m[1]) + ".." + m[2])}
	}
	if rest != "" && strings.ContainsRune("0123456789.", rune(rest[0])) && !perTime.MatchString(rest) {
		return part{}, &fault{"does not read as one number", example(kind)}
	}
	return part{number, rest}, nil
}

// plain writes an exponent out if that is a short number.
func plain(number, unit string) string {
	x, err := strconv.ParseFloat(number, 64)
	s := strconv.FormatFloat(x, 'f', -1, 64)
	if err != nil || len(s) > 16 {
		return ""
	}
	return ", " + strconv.Quote(strings.TrimSpace(s+" "+unit))
}

func digits(s string) int {
	n := 0
	for _, r := range s {
		if '0' <= r && r <= '9' {
			n++
		}
	}
	return n
}

// example is a hint that shows a quantity of the kind.
func example(kind Kind) string {
	switch kind {
	case Ratio:
		return `write it like "4.10"`
	case Conductor:
		return `write it like "2/0 AWG"`
	}
	return "write it like " + strconv.Quote("12 "+Symbols(kind)[0])
}
