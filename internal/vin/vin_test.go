package vin_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/vin"
)

// Published examples:
// http://pandsauto.ca/do-you-have-valid-vin-number.html (X),
// http://www.automobilesoftware.com/wiki/index.php?n=VinData.9thCheckDigit?action=source (4),
// https://www.yumpu.com/en/document/view/7275978/outline-for-new-manufacturer-information-nhtsa/18 (6).
func TestCheckDigitPublished(t *testing.T) {
	for number, want := range map[string]byte{
		"1M8GDM9AXKP042788": 'X',
		"1G4AH59H45G118341": '4',
		"1J9RP1A36A1644345": '6',
	} {
		digit, err := vin.CheckDigit(number)
		require.NoError(t, err, number)
		assert.Equal(t, string(want), string(digit), number)
		assert.True(t, vin.Checks(number), number)
	}
}

// From memory: seventeen ones are the usual test number.
func TestCheckDigitRegression(t *testing.T) {
	assert.True(t, vin.Checks("11111111111111111"))
	assert.True(t, vin.Checks(" 1m8gdm9axkp042788 "), "small letters and spaces around it")
	assert.False(t, vin.Checks("11111111111111112"))
	assert.False(t, vin.Checks("1M8GDM9AXKP042778"), "one digit misread")
}

// Any single digit misread as the next one is found, where its weight is not a
// multiple of eleven: all places but the ninth.
func TestMisreadDigitsAreFound(t *testing.T) {
	const number = "1M8GDM9AXKP042788"
	for i := range len(number) {
		if c := number[i]; c >= '0' && c <= '8' {
			assert.False(t, vin.Checks(number[:i]+string(c+1)+number[i+1:]), "place %d", i+1)
		}
	}
}

// Model years by the table at
// https://wiki.niidae.com/index.php?action=edit&section=9&title=Vehicle_identification_number;
// the seventh place by 49 CFR 565.15(b), https://law.lawstack.com/cfr/49/565.15/.
func TestModelYearPublished(t *testing.T) {
	for number, want := range map[string]int{
		"1M8GDM9AXKP042788": 1989,
		"1G4AH59H45G118341": 2005,
		"1G4AH51H4AG118341": 1980,
		"1G4AH5AH4AG118341": 2010,
		"1G4AH51H4YG118341": 2000,
		"1G4AH51H4XG118341": 1999,
		"1G4AH51H49G118341": 2009,
		"1G4AH5AH49G118341": 2039,
	} {
		year, err := vin.ModelYear(number)
		require.NoError(t, err, number)
		assert.Equal(t, want, year, number)
	}
	for _, code := range "IOQUZ0" {
		_, err := vin.ModelYear("1G4AH51H4" + string(code) + "G118341")
		assert.Error(t, err, "%c is no model year", code)
	}
}

func TestNoVIN(t *testing.T) {
	for _, number := range []string{"", "1M8GDM9AXKP04278", "1M8GDM9AXKP0427888", "1M8GDM9AXKPO42788", "1M8GDM9AX-P042788", "1M8GDM9AXKP04278é"} {
		_, err := vin.CheckDigit(number)
		assert.Error(t, err, number)
		assert.False(t, vin.Checks(number), number)
		_, err = vin.ModelYear(number)
		assert.Error(t, err, number)
	}
}
