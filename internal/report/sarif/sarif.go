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
	"bufio"
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"net/url"
	"slices"
	"strconv"
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

// Form is one log with one run over all builds.
type Form struct {
	results *report.List
	body    *report.Spool
	builds  []build
	// rules are those that have a result, in the order in which they were met;
	// at says where each stands.
	rules []*rulebook.Meta
	at    map[string]int
}

// New keeps the results in body until the log is written, for the rules stand
// ahead of them.
func New(body *report.Spool) *Form {
	return &Form{results: report.NewList(body, "results", 3), body: body, builds: []build{}, at: map[string]int{}}
}

// Add writes the results of one more build.
func (f *Form) Add(b report.Build) error {
	f.builds = append(f.builds, about(b))
	for _, i := range b.Pick(told) {
		n, known := f.at[i.Rule.ID]
		if !known {
			n = len(f.rules)
			f.rules, f.at[i.Rule.ID] = append(f.rules, i.Rule), n
		}
		if err := f.results.Add(finding(b, i, n)); err != nil {
			return fmt.Errorf("writing the SARIF log: %w", err)
		}
	}
	return nil
}

// End writes the log, its rules sorted by id.
func (f *Form) End(w io.Writer, s report.Summary) error {
	rules := slices.SortedFunc(slices.Values(f.rules), func(a, b *rulebook.Meta) int { return strings.Compare(a.ID, b.ID) })
	out := run{
		Tool:        tool{driver{Name: "trialfit", Version: rulebook.Version, Rules: make([]rule, len(rules))}},
		Invocations: []invocation{{Successful: len(s.Unread) == 0}},
		ColumnKind:  "unicodeCodePoints",
		Results:     []result{},
		Properties:  runProperties{Deferral: wording.Deferral, Builds: f.builds},
	}
	rank := make([]int, len(rules))
	for i, meta := range rules {
		out.Tool.Driver.Rules[i] = describe(meta)
		rank[f.at[meta.ID]] = i
	}
	for _, p := range slices.Concat(s.Unread...) {
		out.Invocations[0].Notifications = append(out.Invocations[0].Notifications, notification{
			Level: report.Error, Message: message{Text: plain(p.Message)}, Locations: []location{place(p.File, p.Position)},
		})
	}
	log := sarifLog{Schema: schema, Version: "2.1.0", Runs: []run{out}}
	if err := f.results.Into(w, log, &renumbered{lines: bufio.NewReader(f.body), rank: rank}); err != nil {
		return fmt.Errorf("writing the SARIF log: %w", err)
	}
	return nil
}

// renumbered reads results back and gives each the index that its rule has in
// the sorted list, in place of the one it had when it was met.
type renumbered struct {
	lines *bufio.Reader
	rank  []int
	rest  []byte // of the present line
}

// index is how the line of a result that holds the index begins.
const index = `          "ruleIndex": `

func (r *renumbered) Read(p []byte) (n int, err error) {
	for n < len(p) && err == nil {
		if len(r.rest) == 0 {
			r.rest, err = r.line()
		}
		taken := copy(p[n:], r.rest)
		r.rest = r.rest[taken:]
		n += taken
	}
	return n, err
}

func (r *renumbered) line() ([]byte, error) {
	line, err := r.lines.ReadBytes('\n')
	if err == io.EOF && len(line) > 0 {
		err = nil // it is told after the last line
	}
	after, ok := bytes.CutPrefix(line, []byte(index))
	if !ok {
		return line, err
	}
	met, err := strconv.Atoi(string(bytes.TrimSuffix(after, []byte(",\n"))))
	if err != nil {
		return nil, fmt.Errorf("reading back the index of a rule: %w", err)
	}
	return fmt.Appendf(nil, "%s%d,\n", index, r.rank[met]), nil
}

// told says whether a finding is a result.
func told(i verdict.Item) bool {
	return i.Due && (report.Open(i) || i.Finding.Outcome == verdict.Waived)
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
