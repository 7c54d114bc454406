package rulecase

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
)

// library collects what the rules of the trade hold against what, as their
// cases show it.
type library struct {
	mu    sync.Mutex
	holds map[string]map[comparison]bool // by rule
}

// comparison is what one finding holds against what, with stars for ids.
type comparison struct{ path, comparator, limit string }

func (l *library) add(rule string, r *check.Report) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.holds == nil {
		l.holds = map[string]map[comparison]bool{}
	}
	if l.holds[rule] == nil {
		l.holds[rule] = map[comparison]bool{}
	}
	m := r.Manifest
	for _, f := range r.Verdict.Rules[rule].Findings {
		if f.Comparator == "" {
			continue // does not apply, or nothing was found to examine
		}
		c := comparison{path: m.Pattern(f.Path), comparator: f.Comparator, limit: m.Pattern(f.LimitPath)}
		if f.LimitPath == "" && f.Limit != nil {
			c.limit = f.Limit.Text
		}
		l.holds[rule][c] = true
	}
}

// present are the comparators that ask only whether something is there.
var present = []string{"given", "lists"}

// require fails where the library has too many rules that only ask whether
// something is there, or two that ask the same.
func (l *library) require(t *testing.T, book *rulebook.Book) {
	if t.Failed() {
		return
	}
	same := map[string][]string{}
	var trade, only []string
	for _, m := range book.Catalogue() {
		if m.Region != "" || len(l.holds[m.ID]) == 0 {
			continue
		}
		trade = append(trade, m.ID)
		all := slices.Collect(maps.Keys(l.holds[m.ID]))
		if !slices.ContainsFunc(all, func(c comparison) bool { return !slices.Contains(present, c.comparator) }) {
			only = append(only, m.ID)
		}
		var words []string
		for _, c := range all {
			words = append(words, fmt.Sprintf("%s %s %s", c.path, c.comparator, c.limit))
		}
		slices.Sort(words)
		key := strings.Join(words, "\n")
		same[key] = append(same[key], m.ID)
	}
	for key, rules := range same {
		assert.Len(t, rules, 1, "are one rule:\n%s", key)
	}
	assert.LessOrEqual(t, 4*len(only), len(trade), "only ask whether something is there: %v", only)
	t.Logf("%d rules of the trade, %d of them only ask whether something is there", len(trade), len(only))
}
