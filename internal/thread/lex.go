package thread

import (
	"slices"
	"strings"
	"unicode"
)

// plain turns typographic signs into those the lexer knows.
var plain = strings.NewReplacer(
	"¼", " 1/4", "½", " 1/2", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⁄", "/", "–", "-", "−", "-", "#", "-", "×", " x ", "*", " x ",
	"″", " ", "”", " ", "\"", " ", "'", " ", "°", " ", "(", " ", ")", " ", ",", " ", ";", " ",
)

// lex splits a thread designation into lower-case words and numbers. A number keeps
// its fraction and the hyphens inside it: "1-1/4-11.5", "-6", "1.5".
func lex(text string) []string {
	var tokens []string
	rest := []rune(strings.ToLower(plain.Replace(text)))
	for len(rest) > 0 {
		var n int
		switch {
		case numeric(rest[0]):
			n = span(rest, numeric)
			if number := strings.TrimRight(string(rest[:n]), "-./"); number != "" {
				tokens = append(tokens, number)
			}
		case unicode.IsLetter(rest[0]):
			n = span(rest, unicode.IsLetter)
			tokens = append(tokens, string(rest[:n]))
		case unicode.IsSpace(rest[0]):
			n = 1
		default:
			n = 1
			tokens = append(tokens, string(rest[:1]))
		}
		rest = rest[n:]
	}
	return tokens
}

func numeric(r rune) bool { return '0' <= r && r <= '9' || r == '-' || r == '/' || r == '.' }

func span(runes []rune, in func(rune) bool) int {
	if n := slices.IndexFunc(runes, func(r rune) bool { return !in(r) }); n >= 0 {
		return n
	}
	return len(runes)
}

// isNumber reports whether a token of lex is a number.
func isNumber(token string) bool { return strings.ContainsAny(token, "0123456789") }

// nearest is the candidate that needs the fewest edits to become word, "" if every
// one would need more than two edits and more than a third of its letters.
func nearest(word string, candidates []string) string {
	best, fewest := "", len(word)+1
	for _, c := range candidates {
		edits := distance(word, strings.ToLower(c))
		if edits < fewest && edits <= max(2, len(c)/3) && edits < len(c) {
			best, fewest = c, edits
		}
	}
	return best
}

// distance is the number of letters to insert, drop, replace or swap with their
// neighbour (optimal string alignment) that turns a into b.
func distance(a, b string) int {
	d := make([][]int, len(a)+1)
	for i := range d {
		d[i] = make([]int, len(b)+1)
		d[i][0] = i
	}
	for j := range d[0] {
		d[0][j] = j
	}
	for i := 1; i <= len(a); i++ {
		for j := 1; j <= len(b); j++ {
			replace := d[i-1][j-1]
			if a[i-1] != b[j-1] {
				replace++
			}
			d[i][j] = min(replace, d[i-1][j]+1, d[i][j-1]+1)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d[i][j] = min(d[i][j], d[i-2][j-2]+1)
			}
		}
	}
	return d[len(a)][len(b)]
}
