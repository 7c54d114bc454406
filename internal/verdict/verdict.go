// Package verdict holds the decision of the rules as Go values, and what is
// said beside it: margins, what would do, what to measure. Only the decision
// itself is compared with other OPA servers; the rest is presentation.
package verdict

import (
	"bytes"
	"encoding/json"
	"fmt"

	"trialfit/internal/quantity"
)

// Verdict is the decision document of the rules.
type Verdict struct {
	Verdict  string                    `json:"verdict"`
	Headline string                    `json:"headline"`
	Hold     string                    `json:"hold"`
	Today    string                    `json:"today"`
	Regions  []string                  `json:"regions"`
	Blocking []string                  `json:"blocking"`
	Counts   map[string]map[string]int `json:"counts"`
	Rules    map[string]Rule           `json:"rules"`
	Waivers  map[string]Waiver         `json:"waivers"`
}

// The two verdicts.
const (
	Pass = "PASS"
	Fail = "FAIL"
)

// The outcomes of a rule on one subject.
const (
	Met           = "met"
	NotMet        = "not met"
	Unproven      = "unproven"
	NotApplicable = "not applicable"
	Waived        = "waived"
)

// Rule is the judgement of one rule.
type Rule struct {
	Level   string `json:"level"`
	Hold    string `json:"hold"`
	Due     bool   `json:"due"`
	Outcome string `json:"outcome"`
	// Because names the values that make a rule not applicable.
	Because  []string  `json:"because"`
	Findings []Finding `json:"findings"`
}

// Finding is the judgement of one rule on one subject.
type Finding struct {
	Subject    string   `json:"subject"`
	Outcome    string   `json:"outcome"`
	Reason     string   `json:"reason,omitempty"`
	Comparator string   `json:"comparator,omitempty"`
	Path       string   `json:"path,omitempty"`
	LimitPath  string   `json:"limit_path,omitempty"`
	Value      *Shown   `json:"value,omitempty"`
	Limit      *Shown   `json:"limit,omitempty"`
	RestsOn    []string `json:"rests_on,omitempty"`
	// Missing names what is not known; Weak what is not known well enough for
	// NeedsBasis; Changed what has changed since a reading.
	Missing    []string  `json:"missing,omitempty"`
	Weak       []string  `json:"weak,omitempty"`
	NeedsBasis string    `json:"needs_basis,omitempty"`
	Changed    []string  `json:"changed,omitempty"`
	Outside    []Outside `json:"outside,omitempty"`
	Evidence   []string  `json:"evidence,omitempty"`
	// Waiver is the id of the waiver in use, Waived the outcome it sets aside.
	Waiver string `json:"waiver,omitempty"`
	Waived string `json:"waived,omitempty"`
}

// Room is the distance in SI units between a range and its limit at the nearer
// ends, negative where the limit is passed, and the kind of that distance.
// There is none unless both are numbers and the comparator has sides.
func (f Finding) Room() (room float64, kind quantity.Kind, ok bool) {
	if !f.Value.Numeric() || !f.Limit.Numeric() {
		return 0, "", false
	}
	kind = difference(quantity.Kind(f.Value.Kind))
	switch f.Comparator {
	case "at most":
		return *f.Limit.Low - *f.Value.High, kind, true
	case "at least":
		return *f.Value.Low - *f.Limit.High, kind, true
	}
	return 0, "", false
}

// Shown is a value or a limit as the rules saw it.
type Shown struct {
	Value any      `json:"value,omitempty"`
	Low   *float64 `json:"low,omitempty"`
	High  *float64 `json:"high,omitempty"`
	Unit  string   `json:"unit,omitempty"`
	Kind  string   `json:"kind,omitempty"`
	Text  string   `json:"text,omitempty"`
}

// Numeric says whether it is a range.
func (s *Shown) Numeric() bool { return s != nil && s.Low != nil && s.High != nil }

// Outside is an input beyond the bounds of a figure's formula, in SI units.
type Outside struct {
	Path string  `json:"path"`
	Low  float64 `json:"low"`
	High float64 `json:"high"`
	From float64 `json:"from"`
	To   float64 `json:"to"`
}

// Waiver says what became of a waiver: used, unused, expired, or why it may
// not be used.
type Waiver struct {
	Rule    string `json:"rule"`
	Subject string `json:"subject"`
	State   string `json:"state"`
}

// Read decodes a decision document.
func Read(decision []byte) (*Verdict, error) {
	var v Verdict
	dec := json.NewDecoder(bytes.NewReader(decision))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&v); err != nil {
		return nil, fmt.Errorf("reading the decision: %w", err)
	}
	return &v, nil
}
