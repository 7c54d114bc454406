// Package annotations writes findings as workflow commands, the lines by which
// a job tells its runner what to show beside the lines of a file.
package annotations

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// most is the number of annotations of one kind that sites keep for one step;
// the closing notice is one of them.
const most = 10

// kinds are the commands, most serious first.
var kinds = []string{"error", "warning", "notice"}

var kindOf = map[string]string{report.Error: "error", report.Warning: "warning", report.Note: "notice"}

// command is one annotation.
type command struct {
	kind, file, title, message string
	at                         manifest.Position
}

// Write writes the annotations of a run, most serious first, and a closing
// notice with the totals, what was left out, the cautions and the deferral.
func Write(w io.Writer, r report.Run) error {
	var all []command
	for _, p := range slices.Concat(r.Unread...) {
		all = append(all, command{"error", p.File, "the manifest can't be read", p.Message, p.Position})
	}
	for _, b := range r.Builds {
		for _, i := range b.Items {
			if i.Due && report.Open(i) {
				all = append(all, command{kindOf[b.Severity(i)], b.Report.Manifest.File, i.Rule.Title, words(i), i.At})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b command) int {
		return cmp.Compare(slices.Index(kinds, a.kind), slices.Index(kinds, b.kind))
	})
	var out strings.Builder
	shown, dropped := map[string]int{"notice": 1}, map[string]int{}
	for _, c := range all {
		if shown[c.kind] == most {
			dropped[c.kind]++
			continue
		}
		shown[c.kind]++
		out.WriteString(c.String())
	}
	out.WriteString(closing(r, dropped).String())
	if _, err := io.WriteString(w, out.String()); err != nil {
		return fmt.Errorf("writing the annotations: %w", err)
	}
	return nil
}

// words is the message of a finding: an unproven one says so first.
func words(i verdict.Item) string {
	lines := []string{"found: " + report.Found(i), "needed: " + i.Needed}
	if i.Finding.Outcome == verdict.Unproven {
		lines[0] = "unproven: " + report.Found(i)
	}
	for _, do := range i.Do {
		lines = append(lines, "do: "+do)
	}
	if i.Rule.Caution != "" {
		lines = append(lines, "take care: "+i.Rule.Caution)
	}
	return strings.Join(append(lines, "rule: "+i.Rule.ID), "\n")
}

func closing(r report.Run, dropped map[string]int) command {
	var lines []string
	for _, b := range r.Builds {
		if len(lines) == most {
			lines = append(lines, fmt.Sprintf("%d more builds", len(r.Builds)-most))
			break
		}
		lines = append(lines, b.Headline())
	}
	var more []string
	for _, kind := range kinds {
		if n := dropped[kind]; n > 0 {
			more = append(more, fmt.Sprintf("%d more of kind %s", n, kind))
		}
	}
	if len(more) > 0 {
		lines = append(lines, "not shown here: "+strings.Join(more, ", "))
	}
	var care []string
	for _, b := range r.Builds {
		for _, c := range wording.Cautions(b.Report.Verdict.Hold) {
			if !slices.Contains(care, c) {
				care = append(care, c)
			}
		}
	}
	for _, c := range care {
		lines = append(lines, "take care: "+c)
	}
	lines = append(lines, wording.Deferral)
	return command{kind: "notice", title: r.Total(), message: strings.Join(lines, "\n")}
}

// String is the line of a command with its end.
func (c command) String() string {
	var properties []string
	add := func(name, value string) {
		properties = append(properties, name+"="+property.Replace(report.Plain(value)))
	}
	if c.file != "" && c.file != manifest.Stdin {
		add("file", c.file)
		if c.at.Line > 0 {
			add("line", strconv.Itoa(c.at.Line))
			add("col", strconv.Itoa(c.at.Column))
		}
	}
	add("title", c.title)
	lines := strings.Split(c.message, "\n")
	for i := range lines {
		lines[i] = report.Plain(lines[i])
	}
	return "::" + c.kind + " " + strings.Join(properties, ",") + "::" + data.Replace(strings.Join(lines, "\n")) + "\n"
}

// The escaping of the two parts of a command, as the npm package @actions/core
// does it (3.0.1, lib/command.js, MIT).
var (
	data     = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A")
	property = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A", ":", "%3A", ",", "%2C")
)
