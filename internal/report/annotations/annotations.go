// Package annotations writes findings as workflow commands, the lines by which
// a job tells its runner what to show beside the lines of a file.
package annotations

import (
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

// Form is the annotations of a run, most serious first, and a closing notice
// with the totals, what was left out, the cautions and the deferral. It keeps no
// more of each than is shown.
type Form struct {
	first     map[string][]command // by kind
	count     map[string]int       // by kind
	headlines []string
	care      []string
}

// New begins with nothing to tell.
func New() *Form { return &Form{first: map[string][]command{}, count: map[string]int{}} }

// Add takes up what stands in the way of a build and the advice on it.
func (f *Form) Add(b report.Build) error {
	for _, i := range b.Items {
		if i.Due && report.Open(i) {
			f.take(command{kindOf[b.Severity(i)], b.Report.Manifest.File, i.Rule.Title, words(i), i.At})
		}
	}
	if len(f.headlines) < most {
		f.headlines = append(f.headlines, b.Headline())
	}
	for _, c := range wording.Cautions(b.Report.Verdict.Hold) {
		if !slices.Contains(f.care, c) {
			f.care = append(f.care, c)
		}
	}
	return nil
}

func (f *Form) take(c command) {
	f.count[c.kind]++
	if len(f.first[c.kind]) < most {
		f.first[c.kind] = append(f.first[c.kind], c)
	}
}

// End writes the annotations; what could not be judged comes first.
func (f *Form) End(w io.Writer, s report.Summary) error {
	var unread []command
	for _, p := range slices.Concat(s.Unread...) {
		unread = append(unread, command{"error", p.File, "the manifest can't be read", p.Message, p.Position})
	}
	f.first["error"] = append(unread, f.first["error"]...)
	f.count["error"] += len(unread)
	var out strings.Builder
	var more []string
	for _, kind := range kinds {
		room := most
		if kind == "notice" {
			room-- // for the closing one
		}
		shown := f.first[kind][:min(len(f.first[kind]), room)]
		for _, c := range shown {
			out.WriteString(c.String())
		}
		if n := f.count[kind] - len(shown); n > 0 {
			more = append(more, fmt.Sprintf("%d more of kind %s", n, kind))
		}
	}
	out.WriteString(f.closing(s, more).String())
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

// closing is the last notice; more says what is not shown.
func (f *Form) closing(s report.Summary, more []string) command {
	lines := slices.Clone(f.headlines)
	if n := s.Judged() - len(f.headlines); n > 0 {
		lines = append(lines, fmt.Sprintf("%d more builds", n))
	}
	if len(more) > 0 {
		lines = append(lines, "not shown here: "+strings.Join(more, ", "))
	}
	for _, c := range f.care {
		lines = append(lines, "take care: "+c)
	}
	lines = append(lines, wording.Deferral)
	return command{kind: "notice", title: s.Total(), message: strings.Join(lines, "\n")}
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
