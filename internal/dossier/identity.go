package dossier

import (
	"fmt"
	"slices"
	"strings"

	"trialfit/internal/vin"
)

// identity says what vehicle stands there and who answers for it.
func (a *author) identity() []Block {
	vehicle := Facts{
		{labelBuild, cell(say(a.orUnknown("build.name")))},
		{labelVehicle, cell(say(strings.TrimSpace(a.orUnknown("chassis.make") + " " + a.orUnknown("chassis.model"))))},
		a.fact("chassis.model_year"),
		{labelVIN, cell(a.vin())},
		{labelDigit, cell(say(a.checkDigit()))},
	}
	vehicle = append(vehicle, a.facts("chassis.category", "chassis.odometer")...)
	vehicle = append(vehicle, a.optional("chassis.built", "chassis.approval_category", "chassis.wheelbase", "chassis.tyres.front_size", "chassis.tyres.rear_size")...)
	engine := a.facts("engine.family", "engine.number", "engine.model_year", "engine.fuel",
		"engine.certification.class", "engine.certification.certified_for", "engine.certification.label")
	engine = append(engine, a.optional("engine.emission_stage", "engine.diagnostics", "engine.history")...)
	registration := a.facts("registration.region", "registration.use", "registration.first_registered", "registration.title_fuel")
	registration = append(registration, a.optional("registration.zone", "registration.plate_class", "registration.altitude")...)
	var options []Block
	if len(a.items("chassis.engine_options")) > 0 {
		options = a.listed("chassis.engine_options", captionOptions, "",
			column{colFamily, "family", 5}, column{colFuel, "fuel", 2}, column{colYear, "model_year", 2})
	}
	original := a.facts("chassis.certification.class", "chassis.certification.certified_for", "chassis.certification.diagnostics")
	return slices.Concat([]Block{
		vehicle,
		Heading{headRatings},
		append(a.facts("chassis.ratings.gross", "chassis.ratings.front_axle", "chassis.ratings.rear_axle"),
			a.optional("chassis.ratings.combination", "chassis.ratings.trailer", "chassis.ratings.tongue")...),
		Heading{headEngine}, engine,
		Heading{headRegistration}, registration,
		Heading{headOriginal}, original,
	}, options, []Block{Heading{headPeople}, a.people()})
}

// facts are those at some paths, known or not.
func (a *author) facts(paths ...string) Facts {
	var facts Facts
	for _, path := range paths {
		facts = append(facts, a.fact(path))
	}
	return facts
}

// optional are those that are given.
func (a *author) optional(paths ...string) Facts {
	return a.facts(a.known(paths...)...)
}

func (a *author) orUnknown(path string) string {
	if text := a.word(path); text != "" {
		return text
	}
	return a.name(path) + " " + notKnown
}

// vin is the number, to be compared character by character.
func (a *author) vin() Text {
	n := a.m.Node("chassis.vin")
	t := a.value(n)
	if n != nil && n.Value != nil {
		t[0].Code = true
	}
	return t
}

func (a *author) checkDigit() string {
	n := a.m.Node("chassis.vin")
	if n == nil || n.Value == nil {
		return notKnown
	}
	number := n.Value.Text
	if len(number) != vin.Length {
		return fmt.Sprintf(digitNone, len(number), vin.Length)
	}
	digit, err := vin.CheckDigit(number)
	switch {
	case err != nil:
		return digitUnreads
	case digit == number[8]:
		return fmt.Sprintf(digitRight, string(digit))
	}
	return fmt.Sprintf(digitWrong, string(number[8]), string(digit))
}

func (a *author) people() Facts {
	facts := Facts{{labelWorkshop, cell(say(a.orUnknown("build.shop")))}}
	facts = append(facts, a.facts("registration.installer")...)
	facts = append(facts, a.optional("build.customer_reference")...)
	passed := Fact{Label: labelPassed}
	for _, h := range a.items("build.holds") {
		passed.Value = append(passed.Value, say(fmt.Sprintf(releasedBy, h.ID, a.text(h.Field("by")), a.text(h.Field("date")))))
	}
	if passed.Value == nil {
		passed.Value = cell(say(none))
	}
	return append(facts, passed)
}
