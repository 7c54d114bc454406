// Package rulebook loads packs of rules, compiles them once and evaluates the
// verdict. Shipped rules, regions and local packs go through the same code.
package rulebook

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Meta is what the catalogue says of a rule: the annotation block of its
// package, and what follows from where it stands.
type Meta struct {
	ID          string `json:"id"`
	Title       string `json:"title"`
	Description string `json:"description"`
	// At is the path of the rule's package below data.
	At   []string `json:"at"`
	Pack string   `json:"pack"`
	Area string   `json:"area"`
	// Region is the ISO code of the region the rule belongs to, "" for all.
	Region string `json:"region,omitempty"`
	Links  []Link `json:"links,omitempty"`
	// Reads lists the input, figure and limit paths named in the rule, sorted.
	Reads []string `json:"reads"`

	Custom
}

// Custom is the part of the metadata that is ours.
type Custom struct {
	Level string `json:"level"`
	Hold  string `json:"hold"`
	Basis string `json:"basis"`
	// Source names the clause, table or practice; an honest "common practice" where that is all.
	Source     string            `json:"source"`
	NeedsBasis map[string]string `json:"needs_basis,omitempty"`
	Outcomes   []string          `json:"outcomes"`
	Reasons    map[string]string `json:"reasons,omitempty"`
	Remedy     string            `json:"remedy"`
	Caution    string            `json:"caution,omitempty"`
	Reviewed   string            `json:"reviewed"`
	Since      string            `json:"since"`
	Aliases    []string          `json:"aliases,omitempty"`
	Waivable   bool              `json:"waivable"`
	// Question is set on a rule that only the authority can settle.
	Question *Question `json:"question,omitempty"`
	// Collects is "questions" on the rule of a region that holds its questions together.
	Collects string `json:"collects,omitempty"`
}

// Question is what to ask, and whom.
type Question struct {
	Ask    string `json:"ask"`
	Office string `json:"office"`
}

// Link is a clause on the web.
type Link struct {
	URL   string `json:"url"`
	Title string `json:"title,omitempty"`
}

// HoldPoints is the order in which a build passes its hold points.
var HoldPoints = []string{"plan", "strip", "mockup", "install", "first-start", "road-test", "inspection", "handover"}

var (
	levels   = []string{"must", "should", "note"}
	outcomes = []string{"met", "not met", "unproven", "not applicable"}
	// firm bases may carry a must: a plate, a maker's figure, a text read first-hand, a
	// physical limit, or what the build's own record declares.
	firm  = []string{"statute", "regulation", "agency-guidance", "code-of-practice", "standard", "manufacturer", "physics", "own-record"}
	bases = append(slices.Clip(firm), "handbook", "common-practice", "second-hand", "memory")
	// safety areas can't be waived.
	unwaivable = []string{"brakes", "steering", "fuel", "lifting"}
	grades     = []string{"estimated", "claimed", "documented", "measured", "documented with evidence", "measured with evidence"}
)

// readMeta reads the metadata of a rule from the annotations of its module.
func readMeta(m *ast.Module) (*Meta, error) {
	var found *ast.Annotations
	for _, a := range m.Annotations {
		if a.Scope == "package" {
			found = a
		}
	}
	if found == nil {
		return nil, errors.New("has no METADATA block on its package")
	}
	meta := &Meta{Title: found.Title, Description: strings.TrimSpace(found.Description)}
	for _, r := range found.RelatedResources {
		meta.Links = append(meta.Links, Link{URL: r.Ref.String(), Title: r.Description})
	}
	raw, err := json.Marshal(found.Custom)
	if err != nil {
		return nil, fmt.Errorf("reading its metadata: %w", err)
	}
	dec := json.NewDecoder(strings.NewReader(string(raw)))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&meta.Custom); err != nil {
		return nil, fmt.Errorf("reading its metadata: %s", strings.TrimPrefix(err.Error(), "json: "))
	}
	// The annotation parser takes an unquoted date for a point in time.
	meta.Reviewed = strings.TrimSuffix(meta.Reviewed, "T00:00:00Z")
	return meta, nil
}

// check says what is wrong with the metadata, nothing where it is whole.
func (m *Meta) check() error {
	var faults []error
	need := func(ok bool, format string, args ...any) {
		if !ok {
			faults = append(faults, fmt.Errorf(format, args...))
		}
	}
	oneOf := func(name, value string, accepted []string) {
		need(slices.Contains(accepted, value), "%s is %q, needs one of %s", name, value, strings.Join(accepted, ", "))
	}
	text := func(name, value string) {
		need(len(strings.TrimSpace(value)) >= 8 && !placeholder(value), "%s says nothing: %q", name, value)
	}
	text("title", m.Title)
	need(len([]rune(m.Title)) <= 60, "title is longer than 60 characters: %q", m.Title)
	text("description", m.Description)
	text("source", m.Source)
	text("remedy", m.Remedy)
	if m.Caution != "" {
		text("caution", m.Caution)
	}
	oneOf("level", m.Level, levels)
	oneOf("hold", m.Hold, HoldPoints)
	oneOf("basis", m.Basis, bases)
	need(m.Level != "must" || slices.Contains(firm, m.Basis), "a must can't rest on %s: make it advice or a question", m.Basis)
	need(m.Level == "note" || m.Question == nil, "a question is a note: the rule of its region that collects questions is what blocks")
	need(!m.Waivable || !slices.Contains(unwaivable, m.Area), "a rule on %s can't be waived", m.Area)
	for _, hold := range slices.Sorted(maps.Keys(m.NeedsBasis)) {
		oneOf("needs_basis", hold, HoldPoints)
		oneOf("needs_basis at "+hold, m.NeedsBasis[hold], grades)
	}
	need(len(m.Outcomes) >= 2, "outcomes names fewer than two: a rule that can only say one thing says nothing")
	for _, o := range m.Outcomes {
		oneOf("outcomes", o, outcomes)
	}
	for _, code := range slices.Sorted(maps.Keys(m.Reasons)) {
		text("reason "+code, m.Reasons[code])
	}
	if m.Question != nil {
		text("question.ask", m.Question.Ask)
		text("question.office", m.Question.Office)
	}
	need(m.Question == nil || m.Region != "", "a question belongs to a region: it lies in regions/<code>/<rule>/")
	need(m.Collects == "" || m.Collects == "questions", "collects is %q, needs \"questions\"", m.Collects)
	need(m.Collects == "" || m.Region != "" && m.Level == "must", "a rule that collects questions is a must of a region")
	_, err := time.Parse(time.DateOnly, m.Reviewed)
	need(err == nil, "reviewed is %q, needs a date such as 2026-11-25", m.Reviewed)
	need(m.Since != "", "since names no version")
	return errors.Join(faults...)
}

func placeholder(s string) bool {
	s = strings.ToLower(s)
	for _, word := range []string{"todo", "tbd", "fixme", "lorem", "add impact", "add description", "..."} {
		if strings.Contains(s, word) {
			return true
		}
	}
	return false
}
