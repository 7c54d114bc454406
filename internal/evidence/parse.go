package evidence

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"
)

const (
	// mostSumBytes is the size of the largest side file read: 16 MiB, room for
	// more than 100 000 paths.
	mostSumBytes = 16 << 20
	// mostFaults are listed of one file.
	mostFaults = 20
)

// SumsError is one fault of a side file.
type SumsError struct {
	File         string
	Line, Column int // in lines and characters, from 1
	Message      string
}

// Error returns "file:line:col: message" on one line.
func (e *SumsError) Error() string {
	return fmt.Sprintf("%s:%d:%d: %s", e.File, e.Line, e.Column, e.Message)
}

// SumsErrors are the faults of one side file, in its order; the first 20 of
// them.
type SumsErrors []*SumsError

// Error returns every fault on a line of its own.
func (e SumsErrors) Error() string {
	lines := make([]string, len(e))
	for i, fault := range e {
		lines[i] = fault.Error()
	}
	return strings.Join(lines, "\n")
}

// ParseSums reads the content of a side file from r; name is what messages call
// it. Beside what FormatSums writes it takes what sha256sum takes and merging
// or editing may leave: lines in any order, the mark "*" of binary mode,
// upper-case digits, CR LF line ends, empty lines. A path may stand there only
// once. The error is SumsErrors, or from r.
func ParseSums(name string, r io.Reader) (Sums, error) {
	sums := Sums{}
	lineOf := map[string]int{}
	var faults SumsErrors
	line := 0
	limited := &io.LimitedReader{R: r, N: mostSumBytes + 1}
	scanner := bufio.NewScanner(limited)
	for scanner.Scan() && len(faults) < mostFaults {
		line++
		text := strings.TrimSuffix(scanner.Text(), "\r")
		if text == "" {
			continue
		}
		digest, path, f := parseLine(text)
		if first, ok := lineOf[path]; ok && f == nil {
			f = &fault{pathOffset, fmt.Sprintf("path %q stands in line %d already: keep one of the two", path, first)}
		}
		if f != nil {
			column := utf8.RuneCountInString(text[:f.offset]) + 1
			faults = append(faults, &SumsError{name, line, column, f.message})
			continue
		}
		sums[path], lineOf[path] = digest, line
	}
	switch err := scanner.Err(); {
	case errors.Is(err, bufio.ErrTooLong):
		faults = append(faults, &SumsError{name, line + 1, 1, "line is longer than 64 KiB: " + accepted})
	case err != nil:
		return nil, fmt.Errorf("read digests %q: %w", name, cause(err))
	case limited.N == 0:
		return nil, fmt.Errorf("read digests %q: is larger than 16 MiB", name)
	}
	if len(faults) > 0 {
		return nil, faults
	}
	return sums, nil
}

const (
	pathOffset = hexDigits + 2
	accepted   = "a line has 64 hexadecimal digits, two spaces and a path"
)

// fault is a SumsError before its line is known; offset is in bytes.
type fault struct {
	offset  int
	message string
}

func parseLine(text string) (digest, path string, f *fault) {
	digits := 0
	for digits < len(text) && isHex(text[digits]) {
		digits++
	}
	rest := text[digits:]
	switch {
	case digits < hexDigits && rest != "" && rest[0] != ' ':
		found, _ := utf8.DecodeRuneInString(rest)
		return "", "", &fault{digits, "found " + strconv.Quote(string(found)) + " in the digest: " + accepted}
	case digits != hexDigits:
		return "", "", &fault{0, fmt.Sprintf("digest has %d hexadecimal digits: %s", digits, accepted)}
	case !strings.HasPrefix(rest, "  ") && !strings.HasPrefix(rest, " *"):
		return "", "", &fault{digits, "found " + strconv.Quote(shorten(rest)) + " after the digest: " + accepted}
	}
	path, err := Clean(text[pathOffset:])
	if err != nil {
		return "", "", &fault{pathOffset, err.Error()}
	}
	return strings.ToLower(text[:digits]), path, nil
}

func isHex(c byte) bool {
	return '0' <= c && c <= '9' || 'a' <= c|0x20 && c|0x20 <= 'f'
}
