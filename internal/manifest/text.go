package manifest

import (
	"bytes"
	"fmt"
	"unicode"
	"unicode/utf8"
)

// MaxBytes is the largest manifest that is read. A large real build takes
// well under a tenth of it.
const MaxBytes = 4 << 20

var bom = []byte{0xEF, 0xBB, 0xBF}

// readable refuses what is not UTF-8 text of a sensible size, and what breaks
// or indents lines unseen: then people, editors and the parser would count
// differently.
func readable(data []byte) ([]byte, *Problem) {
	if len(data) > MaxBytes {
		return nil, &Problem{Message: fmt.Sprintf("holds more than %d MiB, the most a manifest may have", MaxBytes>>20)}
	}
	if isUTF16(data) {
		return nil, &Problem{Position: Position{1, 1}, Message: "is UTF-16: save it as UTF-8"}
	}
	// A byte-order mark says nothing in UTF-8; editors on some systems add it.
	data = bytes.TrimPrefix(data, bom)
	line, start, blank := 1, 0, true
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if message := unreadable(r, size, data[i:], blank); message != "" {
			at := Position{line, utf8.RuneCount(data[start:i]) + 1}
			return nil, &Problem{Position: at, Message: message}
		}
		i += size
		blank = blank && (r == ' ' || r == '\t')
		if r == '\n' {
			line, start, blank = line+1, i, true
		}
	}
	return data, nil
}

func isUTF16(data []byte) bool {
	return len(data) >= 2 && (data[0] == 0xFF && data[1] == 0xFE || data[0] == 0xFE && data[1] == 0xFF ||
		data[0] == 0 && data[1] != 0 || data[0] != 0 && data[1] == 0)
}

// unreadable says what is wrong with the character that rest begins with, ""
// if nothing is; blank says that only blanks stand before it on its line.
func unreadable(r rune, size int, rest []byte, blank bool) string {
	switch {
	case r == utf8.RuneError && size == 1:
		return fmt.Sprintf("byte 0x%02X is not UTF-8 text: save the file as UTF-8", rest[0])
	case r == '\n':
		return ""
	case r == '\r':
		if len(rest) < 2 || rest[1] != '\n' {
			return "a carriage return without a line feed: save the file with ordinary line ends"
		}
		return ""
	case r == '\t':
		if blank {
			return "a tab indents this line: indent with spaces"
		}
		return ""
	case r < ' ' || r == 0x7F:
		return fmt.Sprintf("control character 0x%02X: save the file as plain text", r)
	case unseen(r):
		return fmt.Sprintf("unseen character U+%04X: delete it", r)
	}
	return ""
}

// unseen tells the characters that a reader can't see and that change how a
// line is read: control and private line breaks, marks of writing direction,
// byte-order marks inside the text.
func unseen(r rune) bool {
	switch {
	case unicode.IsControl(r), r == '\u2028', r == '\u2029', r == '\uFEFF', r == '\uFFFE', r == '\uFFFF':
		return true
	case r >= '\u202A' && r <= '\u202E', r >= '\u2066' && r <= '\u2069':
		return true
	}
	return false
}
