package prebuy

import (
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestMoney(t *testing.T) {
	for text, want := range map[string][2]string{
		"4500 USD":           {"4500", "4500"},
		"4200..4800 USD":     {"4200", "4800"},
		"4200 .. 4800.5 USD": {"4200", "9601/2"},
		"4500 USD ± 200":     {"4300", "4700"},
		"4500 USD +/- 10 %":  {"4050", "4950"},
		"0.60 USD":           {"3/5", "3/5"},
	} {
		s, _, err := parseMoney(text, "USD")
		require.NoError(t, err, text)
		require.Equal(t, want, [2]string{s.Low.RatString(), s.High.RatString()}, text)
	}
	for text, want := range map[string]string{
		"4500":           `"4500" names no currency: write "4500 USD"`,
		"4200..4800":     `"4200..4800" names no currency: write "4200..4800 USD"`,
		"USD 4500":       `"USD 4500" has its currency in front: write "4500 USD"`,
		"4500 EUR":       `"4500 EUR" is in EUR, this file counts in USD: convert it, currencies are never mixed`,
		"$4500":          `"$4500" has a sign that several currencies share: write the code, such as "4500 USD"`,
		"4,500 USD":      `"4,500 USD" has a comma: write plain decimals, such as "4500 USD"`,
		"4800..4200 USD": `"4800..4200 USD" runs backwards: write the smaller amount first`,
		"-50 USD":        `"-50 USD" is less than nothing: what comes back belongs under value`,
		"50 USD ± 60":    `"50 USD ± 60" reaches below nothing`,
		"cheap":          `"cheap" is not an amount: write it as "4500 USD" or "4200..4800 USD"`,
	} {
		_, _, err := parseMoney(text, "USD")
		require.EqualError(t, err, want)
	}
	require.NoError(t, checkCurrency("NZD"))
	require.EqualError(t, checkCurrency("usd"), `"usd" is not an ISO 4217 code such as USD or EUR, did you mean "USD"?`)
	require.EqualError(t, checkCurrency("XYQ"), `"XYQ" is not an ISO 4217 code such as USD or EUR`)

	span, unit, err := parseRate("0.60..0.70 USD/km", "USD")
	require.NoError(t, err)
	require.Equal(t, "km", unit)
	require.Equal(t, "7/10", span.High.RatString())
}

func TestPrintRoundsOutwards(t *testing.T) {
	span := Span{big.NewRat(4201, 2), big.NewRat(9601, 2)}
	require.Equal(t, "2100..4801 USD", span.Print("USD"))
	require.Equal(t, "at least 2100 USD", span.AtLeast("USD"))
	require.Equal(t, "-851..-500 USD", Span{big.NewRat(-1701, 2), big.NewRat(-500, 1)}.Print("USD"))
}
