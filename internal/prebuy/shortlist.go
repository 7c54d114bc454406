// Package prebuy compares vehicles and donors before any of them is paid for:
// which combinations can't work, what the others cost to finish, what to take
// from which, what to ask first, and at which price the choice would turn.
package prebuy

import (
	"path/filepath"
	"strings"
	"sync"

	"gopkg.in/yaml.v3"

	"trialfit/internal/manifest"
)

// Suffix ends the name of every shortlist.
const Suffix = ".shortlist.yaml"

// Shortlist is a shortlist as read: what is wanted, what is for sale and what
// it takes to fill the gaps.
type Shortlist struct {
	// File is the name as the user gave it, with forward slashes.
	File     string
	Name     string
	Currency string
	Intent   Intent
	Chassis  []*Candidate
	Donors   []*Candidate
	Needs    []*Need

	wanted *manifest.Node // the intent
	root   *yaml.Node
	dir    string
	// unpriced holds the leaves that stand for what is not said, by path, so
	// that all combinations share them.
	unpriced struct {
		sync.Mutex
		leaf map[string]*Leaf
	}
}

// Intent is what the vehicle is to be and to do.
type Intent struct {
	Regions []string
	// Engines are the families considered; empty means that any will do.
	Engines []string
	Wishes  map[string]bool // rear_heating, air_conditioning
	// Cruising is the road speed wanted in m/s, with the text it was given in.
	Cruising     *Figure
	Budget       *Leaf
	Rate         *Leaf
	Fetching     *Leaf
	FetchingUnit string // km or mi
}

// Figure is a number of the intent in SI units as it was written.
type Figure struct {
	Low, High float64
	Text      string
	At        manifest.Position
}

// Candidate is a chassis or a donor that could be bought.
type Candidate struct {
	ID    string
	Donor bool
	What  string
	Index int
	At    manifest.Position
	Price *Leaf
	// Road is the way there in the unit of the fetching rate, nil where that
	// is not asked for.
	Road   *Leaf
	Brings []*Part
	Lacks  []*Lack

	node  *manifest.Node
	known *yaml.Node // nil where nothing is known
}

// Part is something that a candidate brings.
type Part struct {
	ID, What, Meets string
	Worn            bool
	Cost, Hours     *Leaf // nil where nothing has to be done
	Value           *Leaf // nil where nothing is said
	Of              *Candidate
	At              manifest.Position
}

// Lack is something to put right on a candidate whatever is built.
type Lack struct {
	ID, What    string
	Cost, Hours *Leaf
	At          manifest.Position
}

// Need is a part that the build needs, and the ways to come by it that the
// builder named.
type Need struct {
	ID, What  string
	Usual     *Usual // nil for the builder's own
	NotNeeded bool
	Bought    *Way
	Made      *Way
	At        manifest.Position
}

// Way is a way to come by a part: money and hours. Hours are nil where the
// money is all in.
type Way struct{ Cost, Hours *Leaf }

// child is the value under a key of a YAML mapping, nil if there is none.
func child(n *yaml.Node, key string) *yaml.Node {
	if n == nil || n.Kind != yaml.MappingNode {
		return nil
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			return n.Content[i+1]
		}
	}
	return nil
}

// Base is the file's name without folders and suffix.
func (s *Shortlist) Base() string {
	return strings.TrimSuffix(filepath.Base(filepath.FromSlash(s.File)), Suffix)
}

// Away says that the way to a candidate is told.
func (c *Candidate) Away() bool { return c.node.Field("distance").Value != nil }
