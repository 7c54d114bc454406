package choice

import (
	"fmt"

	"trialfit/internal/prebuy"
)

// barScale is the common scale of the cost ranges that are drawn, with the
// budget as an upright where there is one.
type barScale struct {
	from, to float64
	budget   *prebuy.Leaf
}

func scaleOf(rows []row, r *prebuy.Result) *barScale {
	s := &barScale{budget: r.Intent.Budget}
	for i, r := range rows[:min(len(rows), mostShown)] {
		if i == 0 || r.Cost.low < s.from {
			s.from = r.Cost.low
		}
		s.to = max(s.to, r.Cost.high, r.Cost.low)
	}
	if s.budget != nil {
		s.to = max(s.to, float(s.budget.Span.High))
	}
	room := (s.to - s.from) * 0.06
	s.from, s.to = max(0, s.from-room), s.to+room
	return s
}

// at is where an amount lies, from 0 to 100.
func (s *barScale) at(x float64) float64 {
	if s.to <= s.from {
		return 50
	}
	return min(100, max(0, 100*(x-s.from)/(s.to-s.from)))
}

// upright is the budget: what can't be spent any more.
func (s *barScale) upright() string {
	if s.budget == nil {
		return ""
	}
	x := s.at(float(s.budget.Span.High))
	return fmt.Sprintf(`<line class="limit" x1="%.2f" x2="%.2f" y1="0" y2="10" vector-effect="non-scaling-stroke"/>`, x, x)
}

// Words tell the ends of the scale, and the upright.
func (s *barScale) Words(code string) string {
	text := fmt.Sprintf("drawn from %.0f to %.0f %s", s.from, s.to, code)
	if s.budget != nil {
		text += "; upright: the budget of " + s.budget.Span.Print(code)
	}
	return text
}
