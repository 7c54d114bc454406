package quantity

import (
	"math"
	"math/big"
	"regexp"
	"strconv"
	"sync"
)

// The two trade systems of conductor sizes.
const (
	gaugeAWG = "AWG"
	gaugeSAE = "SAE"
)

// saeCircularMils is the least copper of SAE J1127 and J1128 cable by size,
// in circular mils. Sizes 10 and 1/0 are as a cable maker's catalogue gives
// them; the rest is from memory of the standards.
var saeCircularMils = []struct {
	size string
	area int64
}{
	{"18", 1537}, {"16", 2336}, {"14", 3702}, {"12", 5833}, {"10", 9343},
	{"8", 14810}, {"6", 24538}, {"4", 37360}, {"2", 62450}, {"1", 77790},
	{"1/0", 98980}, {"2/0", 125100}, {"3/0", 158600}, {"4/0", 205500},
}

// tradeSize is a conductor known by a size: its copper section in m².
type tradeSize struct {
	size string
	area *big.Rat
}

// tradeSizes lists the sizes of each system, the thinnest first.
var tradeSizes = sync.OnceValue(func() map[string][]tradeSize {
	awg := make([]tradeSize, 0, 44)
	for n := 40; n >= -3; n-- {
		size := strconv.Itoa(n)
		if n <= 0 {
			size = strconv.Itoa(1-n) + "/0"
		}
		awg = append(awg, tradeSize{size, awgArea(n)})
	}
	sae := make([]tradeSize, 0, len(saeCircularMils))
	for _, row := range saeCircularMils {
		sae = append(sae, tradeSize{row.size, product(circularMil, new(big.Rat).SetInt64(row.area))})
	}
	return map[string][]tradeSize{gaugeAWG: awg, gaugeSAE: sae}
})

// awgArea is the section in m² of a solid conductor of AWG n, where 1/0 is 0
// and 4/0 is −3: diameter 0.127 mm × 92^((36−n)/39), ASTM B258 (from memory).
// The diameter is no rational number; it is held to 12 significant digits.
func awgArea(n int) *big.Rat {
	d := 0.127e-3 * math.Pow(92, float64(36-n)/39)
	diameter := rat(strconv.FormatFloat(d, 'e', 11, 64))
	return product(pi, "1/4", diameter, diameter)
}

var (
	sizeFirst = regexp.MustCompile(`^([1-4]/0|0{1,4}|[1-9]\d?) ?(AWG|SAE|)$`)
	sizeLast  = regexp.MustCompile(`^(AWG|SAE) ?([1-4]/0|0{1,4}|[1-9]\d?)$`)
)

// cutSize splits "2/0 AWG" or "AWG 2/0"; system is "" where none is written.
func cutSize(text string) (size, system string, ok bool) {
	if m := sizeFirst.FindStringSubmatch(text); m != nil {
		return m[1], m[2], true
	}
	if m := sizeLast.FindStringSubmatch(text); m != nil {
		return m[2], m[1], true
	}
	return "", "", false
}

// sizeArea is the copper section in m² of a trade size; nil if the system has
// no such size. 0, 00, 000 and 0000 stand for 1/0 to 4/0.
func sizeArea(size, system string) *big.Rat {
	if size[0] == '0' {
		size = strconv.Itoa(len(size)) + "/0"
	}
	for _, row := range tradeSizes()[system] {
		if row.size == size {
			return row.area
		}
	}
	return nil
}

// sizeOf names the trade size with this section in m², to one part in a
// million; "" if there is none.
func sizeOf(area float64, system string) string {
	for _, row := range tradeSizes()[system] {
		if a, _ := row.area.Float64(); math.Abs(area-a) <= 1e-6*a {
			return row.size
		}
	}
	return ""
}
