package choice

import "fmt"

// barScale is the common scale of the cost ranges that are drawn.
type barScale struct{ from, to float64 }

func scaleOf(rows []row) *barScale {
	s := &barScale{}
	for i, r := range rows[:min(len(rows), 10)] {
		if i == 0 || r.Cost.low < s.from {
			s.from = r.Cost.low
		}
		s.to = max(s.to, r.Cost.high, r.Cost.low)
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
	return 100 * (x - s.from) / (s.to - s.from)
}

// Words tell the ends of the scale.
func (s *barScale) Words(code string) string {
	return fmt.Sprintf("%.0f to %.0f %s", s.from, s.to, code)
}
