// Package junit writes the verdict as JUnit XML: a suite for each build, a case
// for each rule. Names never hold values, so that a site can follow a case from
// one run to the next.
package junit

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

type suites struct {
	XMLName  xml.Name `xml:"testsuites"`
	Name     string   `xml:"name,attr"`
	Tests    int      `xml:"tests,attr"`
	Failures int      `xml:"failures,attr"`
	Errors   int      `xml:"errors,attr"`
	Suites   []suite  `xml:"testsuite"`
}

type suite struct {
	Name       string     `xml:"name,attr"`
	Tests      int        `xml:"tests,attr"`
	Failures   int        `xml:"failures,attr"`
	Errors     int        `xml:"errors,attr"`
	Skipped    int        `xml:"skipped,attr"`
	Properties []property `xml:"properties>property"`
	Cases      []testcase `xml:"testcase"`
	Out        string     `xml:"system-out"`
}

type property struct {
	Name  string `xml:"name,attr"`
	Value string `xml:"value,attr"`
}

type testcase struct {
	Class   string `xml:"classname,attr"`
	Name    string `xml:"name,attr"`
	Skipped string `xml:"skipped,omitempty"`
	Error   *fault `xml:"error"`
	Failure *fault `xml:"failure"`
}

type fault struct {
	Type    string `xml:"type,attr"`
	Message string `xml:"message,attr"`
	Text    string `xml:",chardata"`
}

// Form is the document of a run.
type Form struct {
	body *report.Spool
	doc  suites // the sums; no suite is held in it
}

// New keeps the suites in body until the document is written, for their sums
// stand ahead of them.
func New(body *report.Spool) *Form { return &Form{body, suites{Name: "trialfit"}} }

// Add writes the suite of one more build.
func (f *Form) Add(b report.Build) error { return f.suite(f.body, judged(b)) }

// End writes the document: what could not be judged, then the builds.
func (f *Form) End(w io.Writer, s report.Summary) error {
	var unjudged bytes.Buffer
	for _, problems := range s.Unread {
		if err := f.suite(&unjudged, unread(problems)); err != nil {
			return err
		}
	}
	frame, err := xml.Marshal(f.doc)
	if err != nil {
		return fmt.Errorf("writing the JUnit report: %w", err)
	}
	const foot = "</testsuites>"
	head := xml.Header + strings.TrimSuffix(string(frame), foot)
	end := foot + "\n"
	if s.All() > 0 {
		end = "\n" + end
	}
	if _, err := io.Copy(w, io.MultiReader(strings.NewReader(head), &unjudged, f.body, strings.NewReader(end))); err != nil {
		return fmt.Errorf("writing the JUnit report: %w", err)
	}
	return nil
}

// suite writes a suite with its sums, and adds them to those of the document.
func (f *Form) suite(w io.Writer, s suite) error {
	s.Tests = len(s.Cases)
	for _, c := range s.Cases {
		switch {
		case c.Error != nil:
			s.Errors++
		case c.Failure != nil:
			s.Failures++
		case c.Skipped != "":
			s.Skipped++
		}
	}
	f.doc.Tests += s.Tests
	f.doc.Failures += s.Failures
	f.doc.Errors += s.Errors
	if _, err := io.WriteString(w, "\n"); err != nil {
		return err
	}
	enc := xml.NewEncoder(w)
	enc.Indent("  ", "  ")
	if err := enc.EncodeElement(s, xml.StartElement{Name: xml.Name{Local: "testsuite"}}); err != nil {
		return fmt.Errorf("writing the JUnit report: %w", err)
	}
	return nil
}

// unread is the suite of a build that could not be judged.
func unread(problems manifest.Problems) suite {
	m := manifest.Manifest{File: problems[0].File}
	return suite{
		Name:       m.Name(),
		Properties: []property{{"file", m.File}},
		Cases: []testcase{{Class: m.Name(), Name: "manifest", Error: &fault{
			Type: "could not be judged", Message: problems[0].String(), Text: problems.Error(),
		}}},
		Out: wording.Deferral,
	}
}

func judged(b report.Build) suite {
	v := b.Report.Verdict
	s := suite{
		Name: b.Report.Manifest.Name(),
		Properties: []property{
			{"file", b.Report.Manifest.File}, {"verdict", v.Verdict}, {"headline", v.Headline}, {"hold", v.Hold},
			{"today", v.Today}, {"regions", strings.Join(v.Regions, " ")},
		},
		Out: strings.Join(append(slices.Clone(wording.Cautions(v.Hold)), wording.Deferral), "\n"),
	}
	items := map[string][]verdict.Item{}
	for _, i := range b.Items {
		items[i.Rule.ID] = append(items[i.Rule.ID], i)
	}
	for _, id := range slices.Sorted(maps.Keys(v.Rules)) {
		c := testcase{Class: s.Name, Name: id}
		c.judge(b, v.Rules[id], items[id])
		s.Cases = append(s.Cases, c)
	}
	return s
}

// judge fills in what a rule's outcome means to a reader of test results: a
// failure is what stands in the way, and what is advice, due later or waived is
// skipped, with the reason. The reason of a skipped case is its text: older
// readers know no attribute there.
func (c *testcase) judge(b report.Build, rule verdict.Rule, items []verdict.Item) {
	switch rule.Outcome {
	case verdict.Waived:
		c.Skipped = strings.Join(lines(items, func(i verdict.Item) string {
			if i.Finding.Outcome != verdict.Waived {
				return ""
			}
			return report.Plain(i.Finding.Subject + ": waived: " + b.Waiver(i))
		}), "\n")
	case verdict.NotMet, verdict.Unproven:
		text := lines(items, func(i verdict.Item) string {
			if !report.Open(i) {
				return ""
			}
			return told(b, i)
		})
		switch {
		case slices.Contains(b.Report.Verdict.Blocking, c.Name):
			c.Failure = &fault{Type: rule.Outcome, Message: message(rule, items), Text: "\n" + strings.Join(text, "\n")}
		case rule.Due:
			c.Skipped = rule.Level + ", " + rule.Outcome + ":\n" + strings.Join(text, "\n")
		default:
			c.Skipped = "due at " + rule.Hold + ", so far " + rule.Outcome + ":\n" + strings.Join(text, "\n")
		}
	}
}

// message is what a list of failures shows: the requirement and how many
// subjects do not have it.
func message(rule verdict.Rule, items []verdict.Item) string {
	title, open := "", 0
	for _, i := range items {
		if report.Open(i) {
			title = i.Rule.Title
			open++
		}
	}
	return rule.Outcome + ": " + title + " (" + strconv.Itoa(open) + ")"
}

func told(b report.Build, i verdict.Item) string {
	rows := []string{
		b.Where(i) + " " + i.Finding.Subject + ": " + i.Finding.Outcome,
		"  found: " + report.Found(i),
		"  needed: " + i.Needed,
	}
	for _, do := range i.Do {
		rows = append(rows, "  do: "+do)
	}
	if i.Rule.Caution != "" {
		rows = append(rows, "  take care: "+i.Rule.Caution)
	}
	rows = append(rows, fmt.Sprintf("  source: %s (%s, reviewed %s)", i.Rule.Source, i.Rule.Basis, i.Rule.Reviewed))
	for n := range rows {
		rows[n] = report.Plain(rows[n])
	}
	return strings.Join(rows, "\n")
}

// lines words the items, leaving out those that say nothing.
func lines(items []verdict.Item, word func(verdict.Item) string) []string {
	var out []string
	for _, i := range items {
		if text := word(i); text != "" {
			out = append(out, text)
		}
	}
	return out
}
