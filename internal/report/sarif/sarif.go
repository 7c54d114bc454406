// Package sarif writes findings as a SARIF 2.1.0 log, for sites that show them
// beside the lines of a manifest.
//
// Unproven findings have kind "fail", as those that are not met. The standard
// has kind "open" for what could not be decided, and then demands level "none"
// (3.27.10); sites that go by level would show a missing proof as nothing at
// all. What tells the two apart is the property outcome and the first word of
// the message.
//
// What is met, not applicable or due at a later hold point is no result.
package sarif

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"net/url"
	"slices"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/markdown"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// schema names the published schema that the tests hold the log against.
const schema = "https://raw.githubusercontent.com/schemastore/schemastore/master/src/schemas/json/sarif-2.1.0-rtm.5.json"

// fingerprint is the key of what identifies a finding from one run to the next.
const fingerprint = "trialfit/v1"

// Write writes one log with one run, over all builds in the order given.
func Write(w io.Writer, r report.Run) error {
	rules := ruled(r)
	out := run{
		Tool:        tool{driver{Name: "trialfit", Version: rulebook.Version, Rules: make([]rule, len(rules))}},
		Invocations: []invocation{{Successful: len(r.Unread) == 0}},
		ColumnKind:  "unicodeCodePoints",
		Results:     []result{},
		Properties:  runProperties{Deferral: wording.Deferral, Builds: []build{}},
	}
	for i, meta := range rules {
		out.Tool.Driver.Rules[i] = describe(meta)
	}
	for _, p := range slices.Concat(r.Unread...) {
		out.Invocations[0].Notifications = append(out.Invocations[0].Notifications, notification{
			Level: report.Error, Message: message{Text: plain(p.Message)}, Locations: []location{place(p.File, p.Position)},
		})
	}
	for _, b := range r.Builds {
		out.Properties.Builds = append(out.Properties.Builds, about(b))
		for _, i := range b.Pick(told) {
			n, _ := slices.BinarySearchFunc(rules, i.Rule.ID, func(m *rulebook.Meta, id string) int { return strings.Compare(m.ID, id) })
			out.Results = append(out.Results, finding(b, i, n))
		}
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	if err := enc.Encode(sarifLog{Schema: schema, Version: "2.1.0", Runs: []run{out}}); err != nil {
		return fmt.Errorf("writing the SARIF log: %w", err)
	}
	return nil
}

// told says whether a finding is a result.
func told(i verdict.Item) bool {
	return i.Due && (report.Open(i) || i.Finding.Outcome == verdict.Waived)
}

// ruled lists the rules that have a result, sorted by id.
func ruled(r report.Run) []*rulebook.Meta {
	var rules []*rulebook.Meta
	for _, b := range r.Builds {
		for _, i := range b.Pick(told) {
			rules = append(rules, i.Rule)
		}
	}
	slices.SortFunc(rules, func(a, b *rulebook.Meta) int { return strings.Compare(a.ID, b.ID) })
	return slices.CompactFunc(rules, func(a, b *rulebook.Meta) bool { return a.ID == b.ID })
}

var levels = map[string]string{"must": report.Error, "should": report.Warning, "note": report.Note}

func describe(m *rulebook.Meta) rule {
	d := rule{
		ID:            m.ID,
		DeprecatedIDs: m.Aliases,
		Name:          name(m.ID),
		Short:         message{Text: m.Title},
		Full:          message{Text: m.Description},
		Default:       configuration{levels[m.Level]},
		Help:          help(m),
		Properties: ruleProperties{
			Tags:  []string{m.Area, m.Level, m.Hold},
			Level: m.Level, Hold: m.Hold, Basis: m.Basis, Source: m.Source, Reviewed: m.Reviewed,
		},
	}
	if len(m.Links) > 0 {
		d.HelpURI = m.Links[0].URL
	}
	return d
}

// help says what to do, on what ground, and what to take care of.
func help(m *rulebook.Meta) message {
	parts := [][2]string{
		{"Do", m.Remedy},
		{"Source", fmt.Sprintf("%s (%s, reviewed %s)", m.Source, m.Basis, m.Reviewed)},
	}
	if m.Caution != "" {
		parts = append(parts, [2]string{"Take care", m.Caution})
	}
	var text, marked []string
	for _, p := range parts {
		text = append(text, p[0]+": "+p[1])
		marked = append(marked, "**"+p[0]+":** "+markdown.Escape(p[1]))
	}
	return message{Text: strings.Join(text, "\n"), Markdown: strings.Join(marked, "\n\n")}
}

// name is the last part of a rule's id in the form the standard recommends:
// FuseProtectsWire.
func name(id string) string {
	var b strings.Builder
	for word := range strings.SplitSeq(id[strings.LastIndexByte(id, '/')+1:], "_") {
		if word != "" {
			b.WriteString(strings.ToUpper(word[:1]) + word[1:])
		}
	}
	return b.String()
}

func about(b report.Build) build {
	v := b.Report.Verdict
	return build{
		Build: b.Report.Manifest.Name(), File: b.Report.Manifest.File, Hold: v.Hold, Today: v.Today,
		Verdict: v.Verdict, Headline: v.Headline,
		Regions: append([]string{}, v.Regions...), Cautions: append([]string{}, wording.Cautions(v.Hold)...),
	}
}

func finding(b report.Build, i verdict.Item, index int) result {
	file := b.Report.Manifest.File
	at := place(file, i.At)
	at.Logical = []logicalLocation{{i.Finding.Subject}}
	r := result{
		RuleID: i.Rule.ID, RuleIndex: index, Kind: "fail", Level: b.Severity(i),
		Message: message{Text: words(i)}, Locations: []location{at},
		Fingerprints: map[string]string{fingerprint: identity(file, i)},
		// The standard wants suppressions on all results of a run or on none.
		Suppressions: []suppression{},
		Properties:   resultProperties{Outcome: i.Finding.Outcome, Level: i.Level, Hold: i.Rule.Hold, Build: b.Report.Manifest.Name()},
	}
	if i.Finding.Outcome == verdict.Waived {
		r.Suppressions = append(r.Suppressions, suppression{"external", "accepted", cmp.Or(b.Waiver(i), i.Finding.Waiver)})
	}
	return r
}

// words is the message of a result. It begins with the outcome unless the
// value was found to break the rule.
func words(i verdict.Item) string {
	lead := ""
	if i.Finding.Outcome != verdict.NotMet {
		lead = i.Finding.Outcome + ": "
	}
	text := lead + report.Found(i) + "; needed: " + i.Needed
	if len(i.Do) > 0 {
		text += "; do: " + strings.Join(i.Do, "; ")
	}
	return plain(text)
}

// plain makes text that a viewer shows as it is: in a message "[words](target)"
// would be a link and "{0}" an argument (SARIF 2.1.0, 3.11.5 and 3.11.6, from
// memory).
var escape = strings.NewReplacer(`\`, `\\`, "[", `\[`, "]", `\]`, "{", "{{", "}", "}}")

func plain(s string) string { return escape.Replace(report.Plain(s)) }

func place(file string, at manifest.Position) location {
	l := location{Physical: physicalLocation{Artifact: artifactLocation{uri(file)}}}
	if at.Line > 0 {
		l.Physical.Region = &region{max(at.Line, 1), max(at.Column, 1)}
	}
	return l
}

// uri is a relative reference for a relative path, a file URI for another.
func uri(file string) string {
	u := url.URL{Path: file}
	if strings.HasPrefix(file, "/") {
		u.Scheme = "file"
	}
	return u.String()
}

// identity tells a finding from all others and stays the same while lines move
// and values change: rule, subject, the paths compared, and the manifest.
func identity(file string, i verdict.Item) string {
	sum := sha256.Sum256([]byte(strings.Join([]string{i.Rule.ID, i.Finding.Subject, i.Finding.Path, i.Finding.LimitPath, file}, "\x00")))
	return hex.EncodeToString(sum[:])
}
