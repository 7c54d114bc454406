package input

import (
	"errors"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
	"trialfit/internal/tyre"
	"trialfit/internal/vin"
)

// part is something that figures and rules can name below a leaf: what its text
// says by a standard. A part that the text does not give is missing, one that
// texts of its kind do not have is none. Given, it is a number, a truth value or
// a word.
type part struct {
	name  string
	state manifest.State
	si    float64
	kind  quantity.Kind
	flag  *bool
	word  string
}

// parts returns those of a given leaf, nil where its kind has none.
func parts(n *manifest.Node) []part {
	switch n.Shape.Leaf {
	case schema.LeafThread:
		return threadParts(*n.Value.Thread)
	case schema.LeafTyre:
		return tyreParts(n.Value.Text)
	case schema.LeafVIN:
		return vinParts(n.Value.Text)
	}
	return nil
}

// record writes a part of the leaf n.
func (p part) record(n *manifest.Node) map[string]any {
	switch {
	case p.state == manifest.Missing:
		return missing(n)
	case p.state == manifest.None:
		return none(n)
	case p.flag != nil:
		return map[string]any{"value": *p.flag, "text": n.Value.Text, "basis": exact}
	case p.kind != "":
		return ranged(p.si, p.si, p.kind)
	}
	return word(p.word)
}

func length(name string, metres float64) part {
	return part{name: name, state: manifest.Given, si: metres, kind: quantity.Length}
}

func ratio(name string, x float64) part {
	return part{name: name, state: manifest.Given, si: x, kind: quantity.Ratio}
}

func spelled(name, text string) part {
	return part{name: name, state: manifest.Given, word: text}
}

func threadParts(t thread.Thread) []part {
	return []part{
		spelled("standard", t.Standard), spelled("size", t.Size),
		spelled("gender", t.Gender), spelled("seal", t.Seal),
		length("major", t.Major), length("pitch", t.Pitch),
		{name: "angle", state: manifest.Given, si: t.Angle, kind: quantity.Angle},
		ratio("taper", t.Taper), length("engagement", t.Engagement), handTight(t), ratio("per_inch", t.PerInch),
	}
}

// handTight is how far a tapered thread goes in by hand; a parallel one has no
// such length.
func handTight(t thread.Thread) part {
	if t.HandTight == 0 {
		return part{name: "hand_tight", state: manifest.None}
	}
	return length("hand_tight", t.HandTight)
}

// tyreParts gives the overall diameter that a size code names; a full-profile
// size has none.
func tyreParts(code string) []part {
	size, err := tyre.Parse(code)
	switch {
	case errors.Is(err, tyre.ErrNoDiameter):
		return []part{{name: "diameter", state: manifest.None}}
	case err != nil:
		return []part{{name: "diameter", state: manifest.Missing}}
	}
	return []part{length("diameter", size.Diameter)}
}

// vinParts gives whether the check digit of a VIN is right, and its model year.
// Numbers of another length have neither.
func vinParts(number string) []part {
	if len(number) != vin.Length {
		return []part{{name: "check_digit", state: manifest.None}, {name: "model_year", state: manifest.None}}
	}
	checks := vin.Checks(number)
	digit := part{name: "check_digit", state: manifest.Given, flag: &checks}
	year, err := vin.ModelYear(number)
	if err != nil {
		return []part{digit, {name: "model_year", state: manifest.Missing}}
	}
	return []part{digit, ratio("model_year", float64(year))}
}
