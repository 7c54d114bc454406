package prebuy

import (
	_ "embed"
	"fmt"
	"strings"
	"sync"

	"gopkg.in/yaml.v3"
)

// Usual is one part of the shipped list of those that are forgotten in this
// trade.
type Usual struct {
	ID   string `yaml:"id"`
	What string `yaml:"what"`
	// Brings is the key under chassis.brings, "" where the manifest has none.
	Brings string `yaml:"brings"`
	When   When   `yaml:"when"`
}

// When says which combinations need a part; what is left empty asks nothing.
type When struct {
	FuelChanges bool   `yaml:"fuel_changes"`
	Into        string `yaml:"into"` // fuel of the engine that goes in
	From        string `yaml:"from"` // fuel of the one that comes out
	Induction   string `yaml:"induction"`
	Gearbox     string `yaml:"gearbox"`
	// Wanted is a wish of the intent: rear_heating or air_conditioning.
	Wanted string `yaml:"wanted"`
}

//go:embed forgotten.yaml
var forgottenFile string

// Forgotten returns the shipped list of parts that are forgotten in this trade:
// common practice, without prices.
var Forgotten = sync.OnceValue(func() []Usual {
	var file struct {
		Needs []Usual `yaml:"needs"`
	}
	dec := yaml.NewDecoder(strings.NewReader(forgottenFile))
	dec.KnownFields(true)
	if err := dec.Decode(&file); err != nil {
		panic(fmt.Sprintf("prebuy: reading forgotten.yaml: %v", err))
	}
	return file.Needs
})
