package approval

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Dates are numbers of the form yyyymmdd, so that whole years between two of
// them end on the anniversary, leap years or not.
var (
	dateBounds  = figures.Bounds{Low: 1885_01_01, High: 2200_12_31}
	yearBounds  = figures.Bounds{Low: 1885, High: 2200}
	stageBounds = figures.Bounds{Low: 0, High: 9}
)

// Years is the number of whole years from one date to another, both of the
// form yyyymmdd.
func Years(from, to float64) float64 { return math.Floor((to - from) / 1_00_00) }

// ModelYears is the number of calendar years since a model year began, on a
// day of the form yyyymmdd.
func ModelYears(modelYear, today float64) float64 { return math.Floor(today/1_00_00) - modelYear }

func today(d figures.Direction) figures.Input {
	return figures.Input{Name: "today", Path: figures.Today, Direction: d, Valid: dateBounds}
}

var calendar = figures.Source{Title: "the calendar", Basis: "physics"}

var ageByModelYear = &figures.Figure{
	ID:      "approval.age_by_model_year",
	Title:   "age of the chassis in years, by model year",
	Symbol:  "a",
	Kind:    quantity.Ratio,
	Formula: "a = year of the judgement − model year",
	Inputs: []figures.Input{
		{Name: "model year", Path: "chassis.model_year", Direction: figures.Falling, Valid: yearBounds},
		today(figures.Rising),
	},
	Source:  calendar,
	Compute: func(a figures.Args) float64 { return ModelYears(a.At("model year"), a.At("today")) },
}

// since counts whole years since a date of the manifest.
func since(id, title, path string) *figures.Figure {
	return &figures.Figure{
		ID:      "approval." + id,
		Title:   title,
		Symbol:  "a",
		Kind:    quantity.Ratio,
		Formula: "a = whole years from that date to the day of the judgement",
		Inputs: []figures.Input{
			{Name: "date", Path: path, Direction: figures.Falling, Valid: dateBounds},
			today(figures.Rising),
		},
		Source:  calendar,
		Compute: func(a figures.Args) float64 { return Years(a.At("date"), a.At("today")) },
	}
}

var (
	ageSinceBuilt      = since("age_since_built", "age of the chassis in years, since it was built", "chassis.built")
	ageSinceRegistered = since("age_since_registered", "age of the chassis in years, since its first registration", "registration.first_registered")
)

// Lead is how far the engine is ahead of the chassis; negative where it is
// older, or of an earlier stage.
func Lead(engine, chassis float64) float64 { return engine - chassis }

func lead(id, title, engine, chassis string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      "approval." + id,
		Title:   title,
		Symbol:  "Δ",
		Kind:    quantity.Ratio,
		Formula: "Δ = that of the engine − that of the chassis",
		Inputs: []figures.Input{
			{Name: "engine", Path: engine, Direction: figures.Rising, Valid: valid},
			{Name: "chassis", Path: chassis, Direction: figures.Falling, Valid: valid},
		},
		Source:  definition,
		Compute: func(a figures.Args) float64 { return Lead(a.At("engine"), a.At("chassis")) },
	}
}

var (
	engineYearLead = lead("engine_year_lead", "model years by which the engine is newer than the chassis",
		"engine.model_year", "chassis.model_year", yearBounds)
	emissionStageLead = lead("emission_stage_lead", "emission stages by which the engine is ahead of the chassis",
		"engine.emission_stage", "chassis.emission_stage", stageBounds)
)
