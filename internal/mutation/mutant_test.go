package mutation

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// mutant is one file with one fault.
type mutant struct {
	file, text string
	line       int
	what       string // "<= becomes <: value.high <= limit.low"
}

// name is the same wherever in the file the fault stands.
func (m mutant) name() string { return m.file + ": " + m.what }

func (m mutant) String() string { return fmt.Sprintf("%s:%d: %s", m.file, m.line, m.what) }

// swap is a fault that exchanges what a pattern finds. It returns "" for what
// is to stay.
type swap struct {
	pattern *regexp.Regexp
	with    func(found string) []string
}

func exchange(pattern string, pairs ...string) swap {
	return swap{regexp.MustCompile(pattern), func(found string) []string {
		i := slices.Index(pairs, found)
		if i < 0 {
			return nil
		}
		return []string{pairs[i^1]} // 0 and 1, 2 and 3, …
	}}
}

// logic are the faults that any Rego can have.
var logic = []swap{
	exchange(`[<>]=?|[!=]=`, "<=", "<", ">=", ">", "==", "!="),
	exchange(`"(?:not )?met"`, `"met"`, `"not met"`),
	{regexp.MustCompile(`\bnot `), func(string) []string { return []string{""} }},
}

// mutants returns every way to put one of the faults into a file, or to lose
// one of its lines. Comments, the package and imports stay.
func mutants(file, text string, faults ...swap) []mutant {
	lines := strings.Split(text, "\n")
	var all []mutant
	add := func(i int, line []string, what string) {
		changed := strings.Join(slices.Concat(lines[:i], line, lines[i+1:]), "\n")
		all = append(all, mutant{file, changed, i + 1, what})
	}
	for i, line := range lines {
		code := strings.TrimSpace(line)
		if code == "" || strings.HasPrefix(code, "#") || strings.HasPrefix(code, "package ") || strings.HasPrefix(code, "import ") {
			continue
		}
		for _, fault := range faults {
			for _, at := range fault.pattern.FindAllStringIndex(line, -1) {
				found := line[at[0]:at[1]]
				if strings.Count(line[:at[0]], `"`)%2 == 1 {
					continue // inside a text
				}
				for _, other := range fault.with(found) {
					add(i, []string{line[:at[0]] + other + line[at[1]:]}, fmt.Sprintf("%s becomes %s: %s", found, cmp.Or(other, "nothing"), code))
				}
			}
		}
		add(i, nil, "without: "+code)
	}
	return all
}
