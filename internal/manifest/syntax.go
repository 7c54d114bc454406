package manifest

import (
	"bytes"
	"errors"
	"io"
	"regexp"
	"slices"
	"sort"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"trialfit/internal/schema"
)

// complaints words what the YAML parser says for somebody who does not know
// its grammar.
var complaints = []struct{ parser, message string }{
	{"mapping values are not allowed", `a ": " inside a value: put text that holds a colon in quotes, or give the line before its own`},
	{"did not find expected key", "neither a key nor the end of the section: check the indentation and the quotes"},
	{"could not find expected ':'", `a key without ": " after it`},
	{"cannot start any token", "a value can't begin with this character: put it in quotes"},
	{"did not find expected ',' or ']'", `the "[" before is not closed, or a comma is missing`},
	{"did not find expected ',' or '}'", `the "{" before is not closed, or a comma is missing`},
	{"unexpected end of stream", "a quote that opens on this line is not closed"},
	{"did not find expected '-' indicator", `an item of a list begins with "- ", as deep as the items before it`},
	{"block sequence entries are not allowed", `a list can't begin here: begin it on a line of its own, each item with "- "`},
	{"mapping keys are not allowed", "a key can't stand here: check the indentation"},
	{"unknown escape character", `a backslash in "…" needs to be doubled, or use '…'`},
	{"hexdecimal number", `a backslash in "…" needs to be doubled, or use '…'`},
	{"invalid Unicode character escape", `a backslash in "…" needs to be doubled, or use '…'`},
	{"a tab character", "a tab indents this line: indent with spaces"},
	{"exceeded max depth", "is nested deeper than any manifest"},
	{"did not find expected node content", "a comma or a bracket without a value before it"},
	{"unexpected document indicator", `"---" or "..." inside a quoted text`},
	{"found undefined tag handle", "tags are not used in a manifest: put text that begins with ! in quotes"},
	{"expected comment or line break", "only a comment can follow on this line"},
}

var yamlError = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)$`)

var unknownAnchor = regexp.MustCompile(`^unknown anchor '(.*)' referenced$`)

// syntaxProblem words an error of the YAML parser. The parser itself gives
// the line of the section around a fault, often one off.
func syntaxProblem(err error, data []byte) Problem {
	line, text := split(err)
	at := Position{max(line, 1), 1}
	if found, ok := locate(data, text); ok {
		at = found
	} else {
		rows := bytes.SplitAfterN(data, []byte("\n"), at.Line+1)
		if row := rows[min(at.Line, len(rows))-1]; len(bytes.TrimSpace(row)) > 0 {
			at.Column = len(row) - len(bytes.TrimLeft(row, " ")) + 1
		}
	}
	if m := unknownAnchor.FindStringSubmatch(text); m != nil {
		return Problem{Position: at, Message: "alias *" + schema.Clip(m[1]) + ": write the value out here"}
	}
	for _, c := range complaints {
		if strings.Contains(text, c.parser) {
			return Problem{Position: at, Message: "is not YAML: " + c.message}
		}
	}
	return Problem{Position: at, Message: "is not YAML: " + schema.Clip(text)}
}

// split returns the line and the complaint of an error of the YAML parser.
func split(err error) (line int, text string) {
	text = strings.Join(strings.Fields(err.Error()), " ")
	if m := yamlError.FindStringSubmatch(text); m != nil {
		line, _ = strconv.Atoi(m[1])
		text = m[2]
	}
	return line, text
}

// mostLocated is the largest file, in bytes, that is parsed again and again
// to find the place of a fault.
const mostLocated = 256 << 10

// What follows a cut text, so that a fault at its end differs from the end
// itself. A new document ends everything but a bracket, which reads on through
// comments to the very end.
var (
	newDocument = []byte("\n---\n" + strings.Repeat("# a comment\n", 1000))
	onlyComment = []byte("\n" + strings.Repeat("# a comment\n", 1000))
)

// locate finds the first character at which the parser complains whatever
// follows; false if it complains of the end, as of a quote that is not closed.
func locate(data []byte, complaint string) (Position, bool) {
	if len(data) > mostLocated {
		return Position{}, false
	}
	padding := newDocument
	if strings.HasPrefix(complaint, "did not find expected ','") {
		padding = onlyComment
	}
	complains := func(cut int) bool {
		rest := &counter{r: bytes.NewReader(slices.Concat(data[:cut], padding))}
		err := decodeAll(rest)
		if err == nil || rest.drained {
			return false
		}
		_, text := split(err)
		return text == complaint
	}
	lines := bytes.SplitAfter(data, []byte("\n"))
	ends := make([]int, len(lines))
	end := 0
	for i, line := range lines {
		end += len(line)
		ends[i] = end
	}
	row := sort.Search(len(lines), func(i int) bool { return complains(ends[i]) })
	if row == len(lines) {
		return Position{}, false
	}
	text := bytes.TrimRight(lines[row], "\r\n")
	begin := ends[row] - len(lines[row])
	runes := utf8.RuneCount(text)
	at := func(column int) int { // the offset behind so many characters
		offset := 0
		for range column {
			_, size := utf8.DecodeRune(text[offset:])
			offset += size
		}
		return begin + offset
	}
	column := sort.Search(runes, func(i int) bool { return complains(at(i + 1)) }) + 1
	return Position{row + 1, min(column, max(runes, 1))}, true
}

// decodeAll parses every document and returns the first error.
func decodeAll(r io.Reader) error {
	dec := yaml.NewDecoder(r)
	for {
		var node yaml.Node
		if err := dec.Decode(&node); errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
	}
}

// counter notes whether its reader was read to the end.
type counter struct {
	r       io.Reader
	drained bool
}

func (c *counter) Read(p []byte) (int, error) {
	n, err := c.r.Read(p)
	c.drained = c.drained || err != nil
	return n, err
}
