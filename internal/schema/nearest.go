package schema

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/agnivade/levenshtein"
)

// longest is the most characters of the input that a message quotes.
const longest = 60

// Quote quotes what was written on one line, clipped if it is long.
func Quote(text string) string { return strconv.Quote(Clip(text)) }

// Clip shortens a text for a message.
func Clip(text string) string {
	if r := []rune(text); len(r) > longest {
		return string(r[:longest]) + "…"
	}
	return text
}

// Nearest returns the accepted word closest to word, or "" when none is close
// enough to be a slip of the pen.
func Nearest(word string, accepted []string) string {
	letters := len([]rune(word))
	best, found := letters/3+2, ""
	for _, candidate := range accepted {
		if more := len(candidate) - letters; more >= best || -more >= best {
			continue // so long a difference is no slip; and the measure is not linear
		}
		// A word of which every letter changed is another word.
		if d := levenshtein.ComputeDistance(strings.ToLower(word), candidate); d < best && d < max(letters, len(candidate)) {
			best, found = d, candidate
		}
	}
	return found
}

// suggest returns a hint at the nearest accepted word, or nothing when none is near.
func suggest(word string, accepted []string) string {
	if near := Nearest(word, accepted); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ""
}

// few lists the first names of many.
func few(names []string) string {
	const most = 8
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return strings.Join(names[:most], ", ") + ", …"
}
