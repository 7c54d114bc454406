package report

import (
	"fmt"
	"slices"
	"time"

	"trialfit/internal/rulebook"
)

// Overdue lists, a line each, the rules of the region that were judged although
// their sources have not been looked at for longer than the region allows.
func (b Build) Overdue() []string {
	today, err := time.Parse(time.DateOnly, b.Report.Verdict.Today)
	if err != nil {
		return nil
	}
	var lines []string
	told := map[string]bool{}
	for _, i := range b.Items {
		at := slices.IndexFunc(b.Report.Chain, func(r rulebook.Region) bool { return r.Code == i.Rule.Region })
		if at < 0 || told[i.Rule.ID] {
			continue
		}
		told[i.Rule.ID] = true
		reviewed, err := time.Parse(time.DateOnly, i.Rule.Reviewed)
		months := b.Report.Chain[at].ReviewMonths
		if err == nil && today.After(reviewed.AddDate(0, months, 0)) {
			lines = append(lines, fmt.Sprintf("%s: its source was read on %s, more than %d months ago: %s", i.Rule.ID, i.Rule.Reviewed, months, i.Rule.Source))
		}
	}
	return lines
}
