package report

import (
	"slices"
	"strings"

	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// Spreads says in one sentence how far values without a range may be off, ""
// where no limit says so.
func Spreads(limits []*rulebook.Limit) string {
	var parts []string
	for _, l := range limits {
		if basis := strings.TrimPrefix(l.Path, "limits.spread."); slices.Contains(schema.Bases, basis) {
			parts = append(parts, basis+" ± "+l.Value.Text)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "Values without a range of their own were taken as " + strings.Join(parts, ", ") + ", with a floor for small ones (common practice)."
}
