// Package tyre reads the size code on a tyre's sidewall.
package tyre

import (
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

const inch = 0.0254 // m

// rolling is how far a loaded radial tyre rolls against one that keeps its
// overall diameter: circumference 3.05·D (ETRTO, from memory).
const rolling = 0.971

// RollingRadius is the radius in m at which a loaded radial tyre rolls, from its
// overall diameter in m.
func RollingRadius(diameter float64) float64 { return rolling * diameter / 2 }

// ErrNoDiameter is returned for sizes that name a section and a rim but not how
// high the tyre stands, such as 7.50R16 or 205R16. Their diameter is in the
// maker's table.
var ErrNoDiameter = errors.New("the code does not say how high the tyre stands")

// Size is what a code says of a tyre.
type Size struct {
	// Diameter is the overall diameter of the unloaded tyre in m: nominal, real
	// tyres are up to 3 % smaller.
	Diameter float64
	// Rim is the diameter of the rim in m.
	Rim float64
}

// The three ways of writing a size. What follows the rim (load index, speed
// letter, LT, C) and the P or LT before the code do not change the diameter.
const (
	lead   = `^(?:P|LT|ST)?\s*`
	rim    = `\s*(?:ZR|R|B|D|-)\s*(\d{2}(?:\.5)?)(?:[^\d.].*)?$`
	number = `(\d+(?:\.\d+)?)`
)

var (
	metric    = regexp.MustCompile(lead + `(\d{3})\s*/\s*(\d{2,3})` + rim)
	flotation = regexp.MustCompile(lead + number + `\s*X\s*` + number + rim)
	section   = regexp.MustCompile(lead + `(?:\d{1,2}\.\d{2}|\d{3})` + rim)
)

// Parse reads a size code: "265/75R16", "LT265/75R16 112Q", "33x12.50R15".
// It returns ErrNoDiameter for a full-profile size such as "7.50R16".
func Parse(code string) (Size, error) {
	text := strings.ToUpper(strings.ReplaceAll(strings.TrimSpace(code), "×", "X"))
	if m := metric.FindStringSubmatch(text); m != nil {
		width, ratio, rim := float(m[1])/1000, float(m[2])/100, float(m[3])*inch
		return Size{Diameter: rim + 2*width*ratio, Rim: rim}, nil
	}
	if m := flotation.FindStringSubmatch(text); m != nil {
		size := Size{Diameter: float(m[1]) * inch, Rim: float(m[3]) * inch}
		if size.Diameter > size.Rim {
			return size, nil
		}
	}
	if section.MatchString(text) {
		return Size{}, fmt.Errorf("tyre size %q: %w: give the diameter by its maker", code, ErrNoDiameter)
	}
	return Size{}, fmt.Errorf("tyre size %q: needs a code such as 265/75R16 or 33x12.50R15", code)
}

// float reads digits that a pattern has found.
func float(digits string) float64 {
	f, _ := strconv.ParseFloat(digits, 64)
	return f
}
