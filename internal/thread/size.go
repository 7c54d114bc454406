package thread

import (
	"fmt"
	"math"
	"strings"
)

// sized is the row of a standard for a size as it was written.
func sized(standard, written string) (Thread, error) {
	rows := rowsOf(standard)
	if written == "" {
		return Thread{}, fmt.Errorf("no size; %s has %s", standard, sizeList(rows))
	}
	for _, row := range rows {
		fits, err := fitsSize(row, written)
		if fits || err != nil {
			return row, err
		}
	}
	near := ""
	if row, ok := nearestSize(rows, written); ok {
		near = fmt.Sprintf("; nearest %s", sizeLabel(row))
	}
	return Thread{}, fmt.Errorf("%s has no size %s%s; accepted: %s", standard, shown(standard, written), near, sizeList(rows))
}

// fitsSize reports whether a size as written is that of row. The error is a size of
// this row with the pitch or screw thread of another.
func fitsSize(row Thread, written string) (bool, error) {
	switch row.Standard {
	case Metric, MetricTaper, ISO6149:
		major, pitch, ok := strings.Cut(strings.TrimLeft(written, "-"), "-")
		if near(value(major)*millimetre, row.Major) && !ok {
			return false, fmt.Errorf("no pitch; write %s", row.Size)
		}
		return near(value(major)*millimetre, row.Major) && near(value(pitch)*millimetre, row.Pitch), nil
	case JIC37, SAE45, ORB:
		screw := screwOf(row.Standard, row.Size)
		if strings.TrimLeft(written, "-") == screw {
			return true, nil
		}
		dash, rest, both := strings.Cut(strings.TrimPrefix(written, "-"), "-")
		if strings.TrimLeft(dash, "0") != strings.TrimPrefix(row.Size, "-") {
			return false, nil
		}
		if both && rest != screw {
			return false, mismatch(written, dash, row, rest, screw)
		}
		return true, nil
	case UNF, UN:
		return strings.TrimLeft(written, "-") == row.Size, nil
	}
	written = strings.TrimLeft(written, "-")
	if written == row.Size {
		return true, nil
	}
	perInch, found := strings.CutPrefix(written, row.Size+"-")
	if !found || strings.Contains(perInch, "/") && perInch != "11-1/2" {
		return false, nil
	}
	if v := value(perInch); !near(v, row.PerInch) {
		return false, fmt.Errorf("%s has %s threads per inch, not %s", pipeName(row), decimal(row.PerInch), perInch)
	}
	return true, nil
}

// pipeName is a pipe thread as it is spoken of: "1/2 NPT", "G 1/4".
func pipeName(row Thread) string {
	if whitworth(row) {
		return row.Name()
	}
	return row.Size + " " + row.Standard
}

// mismatch is the error for a dash size written with another size's screw thread. A
// bare number may instead begin a screw thread, "1-5/16-12", which is no fault of row.
func mismatch(written, dash string, row Thread, rest, screw string) error {
	if !strings.HasPrefix(written, "-") {
		return nil
	}
	return fmt.Errorf("-%s %s has thread %s, not %s", dash, row.Standard, screw, rest)
}

// near allows for the rounding of a value written in decimals.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-9*math.Max(1, math.Abs(b)) }

// nearestSize is the row whose size as a number is closest to the one written, pitch
// aside. A dash standard written as a screw thread is compared by diameter; written as
// a bare fraction, the fraction is taken as the outside diameter of the tube.
func nearestSize(rows []Thread, written string) (Thread, bool) {
	want := strings.TrimLeft(written, "-")
	cut := strings.LastIndex(want, "-")
	screw := cut >= 0 && !strings.Contains(want[cut:], "/")
	if screw {
		want = want[:cut]
	}
	v := value(want)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Thread{}, false
	}
	measure := func(t Thread) float64 { return sizeNumber(t.Size) }
	switch {
	case !strings.HasPrefix(rows[0].Size, "-"):
	case screw:
		measure = func(t Thread) float64 { return t.Major / inch }
	case strings.Contains(want, "/"):
		v *= 16
	}
	best := rows[0]
	for _, row := range rows {
		if math.Abs(measure(row)-v) < math.Abs(measure(best)-v) {
			best = row
		}
	}
	return best, true
}

// sizeNumber is a size of the tables as a number, without its pitch: 14 for M14×1.5,
// 6 for -6, 1.25 for 1-1/4, 0.5625 for 9/16-18.
func sizeNumber(size string) float64 {
	size, _, _ = strings.Cut(strings.TrimLeft(size, "M-"), "×")
	if cut := strings.LastIndex(size, "-"); cut >= 0 && !strings.Contains(size[cut:], "/") {
		size = size[:cut]
	}
	return value(size)
}

func sizeLabel(t Thread) string {
	if screw := screwOf(t.Standard, t.Size); screw != "" {
		return fmt.Sprintf("%s (%s)", t.Size, screw)
	}
	return t.Size
}

func sizeList(rows []Thread) string {
	var labels []string
	for _, row := range rows {
		labels = append(labels, sizeLabel(row))
	}
	return strings.Join(labels, ", ")
}

// shown is a size as written, put back into the form its standard prints.
func shown(standard, written string) string {
	switch standard {
	case Metric, MetricTaper, ISO6149:
		return "M" + strings.Replace(strings.TrimLeft(written, "-"), "-", "×", 1)
	}
	return written
}
