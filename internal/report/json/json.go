// Package json writes a report for other programs.
package json

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"slices"

	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
)

// Version of the report form.
const Version = 1

type document struct {
	Version int     `json:"trialfit_report"`
	Builds  []build `json:"builds"`
	// Problems are the faults of manifests that could not be judged.
	Problems []problem `json:"problems"`
	Deferral string    `json:"deferral"`
}

type build struct {
	Build    string            `json:"build"`
	File     string            `json:"file"`
	SHA256   string            `json:"sha256"`
	Findings []finding         `json:"findings"`
	Cautions []string          `json:"cautions"`
	Spreads  []spread          `json:"spreads"`
	Regions  []rulebook.Region `json:"regions"`
	// Verdict is the decision of the rules, byte for byte what another OPA server gives.
	Verdict json.RawMessage `json:"verdict"`
}

type problem struct {
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Message string `json:"message"`
}

type finding struct {
	Rule     string   `json:"rule"`
	Title    string   `json:"title"`
	Level    string   `json:"level"`
	Hold     string   `json:"hold"`
	Due      bool     `json:"due"`
	Subject  string   `json:"subject"`
	Outcome  string   `json:"outcome"`
	Reason   string   `json:"reason,omitempty"`
	Line     int      `json:"line"`
	Column   int      `json:"column"`
	Found    string   `json:"found"`
	Needed   string   `json:"needed"`
	Margin   string   `json:"margin,omitempty"`
	Do       []string `json:"do,omitempty"`
	Caution  string   `json:"caution,omitempty"`
	Waiver   string   `json:"waiver,omitempty"`
	Source   string   `json:"source"`
	Basis    string   `json:"basis"`
	Reviewed string   `json:"reviewed"`
}

type spread struct {
	Limit  string `json:"limit"`
	Value  string `json:"value"`
	Source string `json:"source"`
}

// Form is the report of a run. The default spreads in force stand with each build.
type Form struct {
	body    *report.Spool
	builds  *report.List
	spreads []spread
}

// New keeps the builds in body until the report is written.
func New(body *report.Spool, spreads []*rulebook.Limit) *Form {
	f := &Form{body: body, builds: report.NewList(body, "builds", 1), spreads: []spread{}}
	for _, l := range spreads {
		f.spreads = append(f.spreads, spread{l.Path, l.Value.Text, l.Source})
	}
	return f
}

// Add writes one more build.
func (f *Form) Add(j report.Build) error {
	sum := sha256.Sum256(j.Report.Manifest.Data)
	b := build{
		Build: j.Report.Manifest.Name(), File: j.Report.Manifest.File, SHA256: hex.EncodeToString(sum[:]),
		Cautions: wording.Cautions(j.Report.Verdict.Hold), Regions: j.Report.Chain,
		Findings: []finding{}, Spreads: f.spreads, Verdict: j.Report.Decision,
	}
	for _, i := range j.Items {
		b.Findings = append(b.Findings, finding{
			Rule: i.Rule.ID, Title: i.Rule.Title, Level: i.Level, Hold: i.Rule.Hold, Due: i.Due,
			Subject: i.Finding.Subject, Outcome: i.Finding.Outcome, Reason: i.Reason,
			Line: i.At.Line, Column: i.At.Column, Found: i.Found, Needed: i.Needed, Margin: i.Margin,
			Do: i.Do, Caution: i.Rule.Caution, Waiver: i.Finding.Waiver,
			Source: i.Rule.Source, Basis: i.Rule.Basis, Reviewed: i.Rule.Reviewed,
		})
	}
	if err := f.builds.Add(b); err != nil {
		return fmt.Errorf("writing the JSON report: %w", err)
	}
	return nil
}

// End writes the report.
func (f *Form) End(w io.Writer, s report.Summary) error {
	doc := document{Version: Version, Builds: []build{}, Problems: []problem{}, Deferral: wording.Deferral}
	for _, p := range slices.Concat(s.Unread...) {
		doc.Problems = append(doc.Problems, problem{p.File, p.Line, p.Column, p.Message})
	}
	if err := f.builds.Into(w, doc, f.body); err != nil {
		return fmt.Errorf("writing the JSON report: %w", err)
	}
	return nil
}
