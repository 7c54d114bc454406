package prebuy

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// long writes a shortlist of so many chassis and donors in five regions. Makes,
// prices and values are invented and vary.
func long(tb testing.TB, chassis, donors int) *Shortlist {
	var b strings.Builder
	b.WriteString(`shortlist: 1
name: long list
currency: USD
intent:
  regions: US-CA, US-NV, US-OR, US-WA, US-TX
  registration: {use: private, installer: owner}
  masses:
    added: none
    removed: none
    carried:
      - {id: crew, what: crew, mass: "300 kg", x: "1500 mm"}
    trailer: none
  cruising_speed: "90 km/h"
  hourly_rate: "50..60 USD"
chassis:
`)
	fuels := []string{"petrol", "diesel"}
	for i := range chassis {
		fmt.Fprintf(&b, `  - id: c%d
    price: "%d..%d USD"
    brings:
      - {id: tank, meets: tank-return}
      - {id: old, value: "100..300 USD"}
    known:
      registration: {title_fuel: %s}
      chassis:
        model_year: %d
        category: light-truck
        wheelbase: "%d mm"
        ratings: {front_axle: "%d kg", rear_axle: "1700 kg", gross: "2900 kg"}
        tyres: {rear_diameter: "760 mm"}
        certification: {class: light-duty, certified_for: federal, diagnostics: false}
      baseline:
        corner_weights: {front_left: "480 kg", front_right: "475 kg", rear_left: "450 kg", rear_right: "%d kg"}
      outgoing_engine: {family: Make %d (invented), fuel: %s, mass: "230 kg", cg: {x: "150 mm"}}
      axles: {rear: {ratio: "3.9"}}
      transfer_case: none
`, i, 2000+37*i%3000, 2300+37*i%3000+i%200, fuels[i%2], 1985+i%15, 2600+i, 1150+3*(i%100), 430+i%40, i, fuels[i%2])
	}
	b.WriteString("donors:\n")
	for i := range donors {
		fmt.Fprintf(&b, `  - id: d%d
    price: "%d..%d USD"
    known:
      engine:
        family: Donor %d (invented)
        number: N%d
        model_year: %d
        fuel: diesel
        displacement: "%.1f L"
        induction: turbocharged
        mass: "%d kg"
        cg: {x: "100 mm"}
        governed_speed: "%d rpm"
        certification: {class: light-duty, certified_for: both, label: L%d}
      transmission: {type: manual, top: "0.8"}
`, i, 1000+53*i%1500, 1200+53*i%1500, i, i, 1988+i%12, 2.5+0.1*float64(i%30), 240+4*i, 2400+40*(i%40), i)
	}
	b.WriteString("needs:\n")
	for _, u := range Forgotten() {
		fmt.Fprintf(&b, "  - {id: %s, bought: {cost: \"100..200 USD\", hours: \"2..5 h\"}}\n", u.ID)
	}
	file := filepath.Join(tb.TempDir(), "long"+Suffix)
	require.NoError(tb, os.WriteFile(file, []byte(b.String()), 0o644))
	s, err := Read(file, checker(tb).Book)
	require.NoError(tb, err)
	return s
}

// BenchmarkLong compares a list of 200 chassis and 50 donors in five regions
// with single checks of the same manifests. At a tenth and at the whole of it, it
// tells the heap that the list takes once it is read, and what is kept beyond that:
//
//	go test ./internal/prebuy -run NONE -bench Long -benchtime 1x
func BenchmarkLong(b *testing.B) {
	c := checker(b)
	warm := long(b, 2, 2)
	_, err := Run(b.Context(), warm, c, nil)
	require.NoError(b, err)
	m, _, err := warm.manifest(c.Loader, warm.Chassis[0], warm.Donors[0], nil)
	require.NoError(b, err)
	const checks = 10
	began := time.Now()
	for range checks {
		_, err := c.Across(b.Context(), m, warm.Intent.Regions)
		require.NoError(b, err)
	}
	single := checks * float64(len(warm.Intent.Regions)) / time.Since(began).Seconds()
	empty := heap()
	for _, size := range [][2]int{{20, 50}, {200, 50}} {
		b.Run(fmt.Sprintf("%dx%dx5", size[0], size[1]), func(b *testing.B) {
			s := long(b, size[0], size[1])
			list := heap()
			for b.Loop() {
				began := time.Now()
				r, err := Run(b.Context(), s, c, nil)
				require.NoError(b, err)
				rate := float64(r.Combinations) / time.Since(began).Seconds()
				judged := rate * float64(len(s.Intent.Regions))
				b.ReportMetric(rate, "combinations/s")
				b.ReportMetric(judged, "judgements/s")
				b.ReportMetric(judged/single, "single-checks")
				b.ReportMetric(float64(len(r.Ranked)), "may-work")
				b.ReportMetric(list-empty, "MiB-list")
				b.ReportMetric(heap()-list, "MiB-kept")
				runtime.KeepAlive(r)
			}
		})
	}
}

// heap is what is in use after a collection, in MiB.
func heap() float64 {
	runtime.GC()
	var stats runtime.MemStats
	runtime.ReadMemStats(&stats)
	return float64(stats.HeapAlloc) / (1 << 20)
}
