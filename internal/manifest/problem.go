// Package manifest reads a build manifest and keeps, for every value in it and
// for every value missing from it, where it stands in the file.
package manifest

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Position is a place in a file, both counted from 1. The zero Position
// stands for the file as a whole.
type Position struct{ Line, Column int }

// Problem is one fault of the input: bad form, bad value, bad reference.
type Problem struct {
	File string
	Position
	Message string
}

// String returns "file:line:col: message" on one line.
func (p Problem) String() string {
	file := p.File
	if strings.ContainsFunc(file, unseen) {
		file = strconv.Quote(file)
	}
	if p.Line == 0 {
		return file + ": " + p.Message
	}
	return fmt.Sprintf("%s:%d:%d: %s", file, p.Line, p.Column, p.Message)
}

// Problems are all faults found in one manifest, in file order.
type Problems []Problem

// Error returns every problem on a line of its own.
func (p Problems) Error() string {
	lines := make([]string, len(p))
	for i, problem := range p {
		lines[i] = problem.String()
	}
	return strings.Join(lines, "\n")
}

// Sorted returns the problems in file order, each once.
func (p Problems) Sorted() Problems {
	slices.SortStableFunc(p, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), strings.Compare(a.Message, b.Message))
	})
	return slices.Compact(p)
}
