// Package vin reads vehicle identification numbers as 49 CFR part 565 lays
// them out: seventeen characters with a check digit and a model year. Vehicles
// made for other markets may carry filling characters in those places.
package vin

import (
	"fmt"
	"strings"
)

// Length is the number of characters of a VIN since model year 1981.
const Length = 17

// Places of single characters, counted from 0.
const (
	attribute = 6 // a letter from model year 2010 on, in light vehicles
	check     = 8
	year      = 9
)

// values gives each character its number; I, O and Q are not used.
var values = func() map[byte]int {
	out := map[byte]int{}
	for _, row := range []string{"ABCDEFGH", "JKLMN.P.R", ".STUVWXYZ"} {
		for i := range len(row) {
			if row[i] != '.' {
				out[row[i]] = i + 1
			}
		}
	}
	for digit := byte('0'); digit <= '9'; digit++ {
		out[digit] = int(digit - '0')
	}
	return out
}()

// weights are those of the seventeen places; the check digit itself has none.
var weights = [Length]int{8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2}

// CheckDigit returns the character that belongs in the ninth place of a VIN:
// the remainder of the weighted sum divided by 11, X for ten.
func CheckDigit(vin string) (byte, error) {
	vin, err := clean(vin)
	if err != nil {
		return 0, err
	}
	sum := 0
	for i, weight := range weights {
		sum += weight * values[vin[i]]
	}
	return "0123456789X"[sum%11], nil
}

// Checks says whether the ninth character of a VIN is its check digit.
func Checks(vin string) bool {
	digit, err := CheckDigit(vin)
	return err == nil && strings.ToUpper(strings.TrimSpace(vin))[check] == digit
}

// years are the codes of the tenth place, from 1980 and again from 2010.
const years = "ABCDEFGHJKLMNPRSTVWXY123456789"

// ModelYear returns the model year of a passenger car, or of a multipurpose
// vehicle or truck of no more than 10 000 lb gross rating: a letter in the
// seventh place makes it 2010 or later. Of heavier vehicles the code alone does
// not tell 1995 from 2025.
func ModelYear(vin string) (int, error) {
	vin, err := clean(vin)
	if err != nil {
		return 0, err
	}
	i := strings.IndexByte(years, vin[year])
	if i < 0 {
		return 0, fmt.Errorf("VIN %s: %q in the tenth place is no model year", vin, vin[year])
	}
	if letter := vin[attribute]; letter < '0' || letter > '9' {
		return 2010 + i, nil
	}
	return 1980 + i, nil
}

// clean returns a VIN in capitals, or says why it is none.
func clean(vin string) (string, error) {
	vin = strings.ToUpper(strings.TrimSpace(vin))
	if len(vin) != Length {
		return "", fmt.Errorf("VIN %q: has %d characters, needs %d", vin, len(vin), Length)
	}
	for i := range len(vin) {
		if _, ok := values[vin[i]]; !ok {
			return "", fmt.Errorf("VIN %q: %q is not used in a VIN: letters but I, O and Q, and digits", vin, vin[i])
		}
	}
	return vin, nil
}
