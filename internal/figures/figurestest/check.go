package figurestest

import (
	"math"
	"testing"
)

// Kind says what a numeric check is worth.
type Kind string

const (
	// Published is a worked example or a measured value that somebody outside
	// the project printed.
	Published Kind = "published"
	// Table is a row looked up in a published table, or a unit conversion.
	Table Kind = "table"
	// Computed is a value that another program worked out from the same
	// formula: a regression, no proof of the formula.
	Computed Kind = "computed"
)

// Check is one number held against one outside the project.
type Check struct {
	// Name says what is computed and from what.
	Name string
	// Got and Want are in one unit; Within is the largest difference allowed,
	// in the same unit: what the source rounds away, or what it says of itself.
	Got, Want, Within float64
	Kind              Kind
	// Source is the page, clause or table that prints Want, the words "common
	// practice" or "from memory", or for Computed the program.
	Source string
}

// Run runs each check as a test of its own. A check without a name, a source
// or a finite number fails.
func Run(t *testing.T, checks []Check) {
	t.Helper()
	for _, c := range checks {
		t.Run(c.Name, func(t *testing.T) {
			switch {
			case c.Name == "" || c.Source == "" || c.Within < 0:
				t.Fatal("a check needs a name, a source and a tolerance")
			case c.Kind != Published && c.Kind != Table && c.Kind != Computed:
				t.Fatalf("unknown kind of check %q", c.Kind)
			case !(math.Abs(c.Got-c.Want) <= c.Within):
				t.Errorf("got %v, want %v within %v: %s", c.Got, c.Want, c.Within, c.Source)
			}
		})
	}
}
