package mass

import (
	"strconv"

	"trialfit/internal/figures"
)

// The load indices that the table covers.
const (
	leastLoadIndex = 60
	mostLoadIndex  = 150
)

// loadOfIndex is the load in kg of each index from 60 up. Indices 60 to 119
// from http://www.boosttown.com/wheels_tyres/tyre_load_index.php, which prints
// 165 for index 62 (265); 75 to 150 from
// https://www.pirelli.com/tyres/en-gb/car/driving-and-tyre-tips/how-to-read/tyre-load-index,
// which prints 2190 for index 135. The ETRTO table has 2180 there (from
// memory), and so have the even steps of 60 kg around it.
var loadOfIndex = [...]float64{
	250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60
	335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70
	450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80
	600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90
	800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100
	1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110
	1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, // 120
	1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, // 130
	2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250, // 140
	3350, // 150
}

// LoadIndexMass is the load in kg that a tyre of an index from 60 to 150 may
// carry. Between two indices the lower one counts; outside it panics.
func LoadIndexMass(index float64) float64 { return loadOfIndex[int(index)-leastLoadIndex] }

// loadIndices are the indices as sizes, to name the smallest that would do.
var loadIndices = func() *figures.Series {
	s := &figures.Series{Title: "tyre load index"}
	for i := leastLoadIndex; i <= mostLoadIndex; i++ {
		s.Sizes = append(s.Sizes, figures.Size{Label: strconv.Itoa(i), SI: float64(i)})
	}
	return s
}()
