package prebuy

import (
	"fmt"
	"math/big"
	"regexp"
	"strings"

	"golang.org/x/text/currency"

	"trialfit/internal/schema"
)

// Span is a closed interval of exact numbers: money in the shortlist's
// currency, hours, or a distance in the unit of the fetching rate.
type Span struct{ Low, High *big.Rat }

func exactly(x *big.Rat) Span { return Span{x, x} }

func zero() *big.Rat { return new(big.Rat) }

// Width is how far the ends lie apart.
func (s Span) Width() *big.Rat { return zero().Sub(s.High, s.Low) }

// Middle is the number half-way between the ends.
func (s Span) Middle() *big.Rat {
	sum := zero().Add(s.Low, s.High)
	return sum.Quo(sum, big.NewRat(2, 1))
}

const amount = `(\d+(?:\.\d+)?)`

var (
	moneyForm  = regexp.MustCompile(`^` + amount + `(?: ?\.\. ?` + amount + `)? ([A-Z]{3})(?: ?(?:±|\+/-) ?` + amount + ` ?(%|[A-Z]{3})?)?$`)
	codeFirst  = regexp.MustCompile(`^([A-Z]{3}) ?(\d.*)$`)
	bareNumber = regexp.MustCompile(`^[\d.]+(?: ?\.\. ?[\d.]+)?$`)
	rateForm   = regexp.MustCompile(`^(.*[A-Z]{3}.*?) ?(?:/|per) ?(km|mi)$`)
)

// parseMoney reads an amount such as "4500 USD", "4200..4800 USD" or
// "4500 USD ± 200" in the currency of a shortlist. ranged tells that the
// writer gave a range or a tolerance.
func parseMoney(text, code string) (span Span, ranged bool, err error) {
	text = strings.TrimSpace(text)
	m := moneyForm.FindStringSubmatch(text)
	if m == nil {
		return span, false, unfitMoney(text, code)
	}
	if m[3] != code {
		return span, false, fmt.Errorf("%s is in %s, this file counts in %s: convert it, currencies are never mixed", schema.Quote(text), m[3], code)
	}
	if m[5] != "" && m[5] != "%" && m[5] != code {
		return span, false, fmt.Errorf("%s gives its tolerance in %s, needed %s", schema.Quote(text), m[5], code)
	}
	low, _ := zero().SetString(m[1])
	high := low
	if m[2] != "" {
		high, _ = zero().SetString(m[2])
	}
	switch {
	case low.Cmp(high) > 0:
		return span, false, fmt.Errorf("%s runs backwards: write the smaller amount first", schema.Quote(text))
	case m[2] != "" && m[4] != "":
		return span, false, fmt.Errorf("%s has both a range and a tolerance: one of them is enough", schema.Quote(text))
	case m[4] != "":
		by, _ := zero().SetString(m[4])
		if m[5] == "%" {
			by.Mul(by, low).Quo(by, big.NewRat(100, 1))
		}
		low, high = zero().Sub(low, by), zero().Add(low, by)
		if low.Sign() < 0 {
			return span, false, fmt.Errorf("%s reaches below nothing", schema.Quote(text))
		}
	}
	return Span{low, high}, m[2] != "" || m[4] != "", nil
}

// unfitMoney says why a text is no amount and what would be one.
func unfitMoney(text, code string) error {
	offer := ""
	switch {
	case bareNumber.MatchString(text):
		offer = fmt.Sprintf(" names no currency: write %q", text+" "+code)
	case codeFirst.MatchString(text):
		m := codeFirst.FindStringSubmatch(text)
		offer = fmt.Sprintf(" has its currency in front: write %q", m[2]+" "+m[1])
	case strings.ContainsAny(text, "$€£¥"):
		offer = fmt.Sprintf(" has a sign that several currencies share: write the code, such as %q", "4500 "+code)
	case strings.Contains(text, ","):
		offer = fmt.Sprintf(" has a comma: write plain decimals, such as %q", "4500 "+code)
	case strings.HasPrefix(text, "-"):
		offer = " is less than nothing: what comes back belongs under value"
	default:
		offer = fmt.Sprintf(" is not an amount: write it as %q or %q", "4500 "+code, "4200..4800 "+code)
	}
	return fmt.Errorf("%s%s", schema.Quote(text), offer)
}

// parseRate reads money for a kilometre or a mile of road: "0.60 USD/km".
func parseRate(text, code string) (span Span, unit string, err error) {
	m := rateForm.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return span, "", fmt.Errorf("%s is not money for a distance: write it as %q or %q", schema.Quote(text), "0.60 "+code+"/km", "0.95 "+code+"/mi")
	}
	span, _, err = parseMoney(m[1], code)
	return span, m[2], err
}

// checkCurrency refuses what is no ISO 4217 code.
func checkCurrency(code string) error {
	if _, err := currency.ParseISO(code); err != nil || code != strings.ToUpper(code) {
		offer := ""
		if _, err := currency.ParseISO(strings.ToUpper(code)); err == nil {
			offer = fmt.Sprintf(", did you mean %q?", strings.ToUpper(code))
		}
		return fmt.Errorf("%s is not an ISO 4217 code such as USD or EUR%s", schema.Quote(code), offer)
	}
	return nil
}

// Print writes an amount in whole units of its currency, the low end rounded
// down and the high end up: "4200..4800 USD".
func (s Span) Print(code string) string {
	low, high := floor(s.Low), ceil(s.High)
	if s.Low.Cmp(s.High) == 0 {
		low = nearest(s.Low)
		high = low
	}
	if low == high {
		return low + " " + code
	}
	return low + ".." + high + " " + code
}

// AtLeast writes the low end of an amount that is open upwards.
func (s Span) AtLeast(code string) string { return "at least " + floor(s.Low) + " " + code }

func floor(r *big.Rat) string {
	q := new(big.Int)
	q.Div(r.Num(), r.Denom()) // Euclidean: rounds down for a positive divisor
	return q.String()
}

func ceil(r *big.Rat) string { return new(big.Int).Neg(mustInt(floor(zero().Neg(r)))).String() }

func nearest(r *big.Rat) string { return floor(zero().Add(r, big.NewRat(1, 2))) }

func mustInt(text string) *big.Int {
	n, _ := new(big.Int).SetString(text, 10)
	return n
}
