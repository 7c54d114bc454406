package dossier

import (
	"fmt"
	"slices"

	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// Owner writes the hand-over book of a judged build. The error is one of
// writing the report that is attached.
func Owner(b report.Build, book *rulebook.Book) (*Document, error) {
	a := newAuthor(b, book)
	d, err := a.document(ownerTitle, AtHandover)
	if err != nil {
		return nil, err
	}
	d.Lead = a.ownerLead()
	d.add("service", titleService, a.service())
	d.add("fluids", titleFluids, a.fluids())
	d.add("torque", titleTorque, a.torques())
	d.add("run-in", titleRunIn, a.runIn())
	d.add("fuses", titleFuses, a.fuses())
	d.add("gauges", titleGauges, a.gauges())
	d.add("unused", titleUnused, a.unused())
	d.add("bay", titleBay, a.bay())
	d.add("limits", titleLimits, a.limits())
	d.add("parts", titleParts, a.partsList())
	d.add("evidence", titleEvidence, a.evidence())
	d.add("open", titleLeft, a.left())
	d.add("cautions", titleCautions, a.ownerCautions())
	d.add("statement", titleStatement, a.statement())
	return d, nil
}

func (a *author) ownerLead() []Block {
	facts := Facts{{labelVehicle, cell(say(a.orUnknown("chassis.make") + " " + a.orUnknown("chassis.model")))}}
	facts = append(facts, a.facts("chassis.model_year")...)
	facts = append(facts, Fact{labelVIN, cell(a.vin())})
	engine := Fact{headEngine, cell(a.value(a.m.Node("engine.family")))}
	if number := a.word("engine.number"); number != "" {
		engine.Value = append(engine.Value, say(number))
	}
	facts = append(facts, engine)
	facts = append(facts, a.facts("engine.fuel", "chassis.odometer", "build.shop")...)
	if a.given("handover.warnings") {
		facts = append(facts, Fact{titleCautions, cell(strong(a.word("handover.warnings")))})
	}
	return []Block{facts, Paragraph{Text: say(ownerNote)}}
}

// column is one of a list's table: a head, and the field it shows.
type column struct {
	head, field string
	share       float64
}

// listed is a table of a list, or a sentence where there is none.
func (a *author) listed(path, caption, empty string, columns ...column) []Block {
	n := a.m.Node(path)
	if n == nil || len(n.Items) == 0 {
		says := notWritten
		if n != nil && n.State == manifest.None {
			says = empty
		}
		if caption != "" {
			says = caption + ": " + says
		}
		return []Block{Paragraph{Text: say(says)}}
	}
	t := Table{Caption: caption}
	for _, c := range columns {
		t.Head, t.Shares = append(t.Head, c.head), append(t.Shares, c.share)
	}
	for _, item := range n.Items {
		var row Row
		for _, c := range columns {
			row.Cells = append(row.Cells, a.cellOf(item, c.field))
		}
		t.Rows = append(t.Rows, row)
	}
	return []Block{t}
}

func (a *author) service() []Block {
	return a.listed("service_parts", captionService, noService,
		column{colWhat, "what", 5}, column{colKind, "kind", 2}, column{colPartNumber, "number", 4}, column{colWhen, "interval", 4})
}

func (a *author) fluids() []Block {
	blocks := a.listed("fluids", captionFluids, noFluids,
		column{colFilledInto, "what", 4}, column{colGrade, "grade", 5}, column{colCapacity, "capacity", 3}, column{colWhen, "interval", 4})
	return append(blocks, a.labelled("cooling.capacity", "cooling.glycol", "cooling.cap_pressure", "fuel.tank_capacity", "fuel.water_separator"))
}

func (a *author) torques() []Block {
	blocks := []Block{Paragraph{Text: say(torqueNote)}}
	blocks = append(blocks, a.listed("road_test.rechecks", captionTorque, noTorque,
		column{colWhat, "what", 5}, column{colTorque, "torque", 3}, column{colDone, "done", 3}, column{colAgain, "again", 4})...)
	if len(a.items("frame.bolts")) > 0 {
		blocks = append(blocks, a.listed("frame.bolts", captionBolts, noTorque,
			column{colWhat, "id", 4}, column{colClass, "class", 3}, column{colCount, "count", 2}, column{colDiameter, "diameter", 3}, column{colTorque, "torque", 4})...)
	}
	return blocks
}

func (a *author) runIn() []Block {
	facts := a.labelled("handover.run_in")
	return []Block{append(facts, a.labelled("first_start.oil_change", "road_test.driven", "road_test.distance")...)}
}

func (a *author) fuses() []Block {
	blocks := a.listed("electrical.circuits", captionFuses, noFuses,
		column{colFeeds, "feeds", 5}, column{colFuse, "fuse", 2}, column{colSits, "fuse_place", 5}, column{colWire, "conductor", 3}, column{colCurrent, "current", 3})
	return append(blocks, a.listed("electrical.relays", captionRelays, noRelays,
		column{colSwitches, "what", 5}, column{colSits, "place", 5}, column{colPartNumber, "number", 4})...)
}

func (a *author) gauges() []Block {
	blocks := a.listed("controls.gauges", captionGauges, noGauges,
		column{colWhat, "id", 3}, column{colShown, "shows", 3}, column{colSender, "sender", 4}, column{colWarning, "warning", 5})
	t := Table{Caption: captionSenders, Head: []string{colSender, colServes, colPort, colAdapters, colThread}, Shares: []float64{3, 5, 4, 5, 4}}
	for _, f := range a.items("fittings") {
		var adapters Cell
		for _, ad := range f.Field("adapters").Items {
			adapters = append(adapters, say(fmt.Sprintf(adapterIs, a.text(ad.Field("into")), a.text(ad.Field("takes")))))
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			cell(say(spaced(f.ID))), a.cellOf(f, "serves"), a.cellOf(f, "port"), adapters, a.cellOf(f, "end"),
		}})
	}
	if len(t.Rows) > 0 {
		blocks = append(blocks, t)
	}
	return blocks
}

func (a *author) unused() []Block {
	return a.listed("electrical.unused", captionUnused, noUnused, column{colWhat, "what", 6}, column{colEnd, "end", 4})
}

// bay says where things are in the engine bay, and how they are reached.
func (a *author) bay() []Block {
	return slices.Concat(
		a.listed("bay.zones", captionBay, noZones, column{colZone, "id", 3}, column{colOccupant, "occupant", 7}),
		a.listed("bay.service", captionReached, noReached, column{colWhat, "what", 7}, column{colReachable, "reachable", 3}),
		a.listed("bay.lines", captionLines, noLines, column{colWhat, "what", 7}, column{colDistance, "gap", 3}, column{colHeld, "secured", 3}),
	)
}

// limits are what the owner must not go beyond.
func (a *author) limits() []Block {
	blocks := []Block{
		Heading{captionLoads},
		a.labelled("chassis.ratings.gross", "chassis.ratings.front_axle", "chassis.ratings.rear_axle"),
		Heading{captionTowing},
		a.labelled("chassis.ratings.combination", "chassis.ratings.trailer", "chassis.ratings.tongue"),
		Heading{captionFording},
		a.labelled("handover.fording_depth"),
		Heading{captionEngineLimits},
		a.labelled("engine.governed_speed", "engine.idle_speed", "engine.economy_low", "engine.economy_high",
			"engine.oil_pressure_idle", "engine.oil_pressure_governed", "cooling.top_limit", "exhaust.temperature_limit", "exhaust.brake.pressure_limit"),
		Heading{captionStop},
		a.labelled("fuel.stop.kind", "fuel.stop.without_power", "fuel.stop.proved"),
	}
	return blocks
}

func (a *author) partsList() []Block {
	return a.listed("parts", "", noParts, column{colWhat, "what", 5}, column{colSource, "source", 5}, column{colPartNumber, "donor_number", 4})
}

// left is what the owner takes over open.
func (a *author) left() []Block {
	list := a.workToDo()
	for _, i := range a.Items {
		weighs := i.Level != "note" && (report.Open(i) || i.Finding.Outcome == verdict.Waived)
		if !weighs {
			continue
		}
		line := strong(i.Finding.Outcome).and(say(": " + i.Rule.Title))
		if s := i.Finding.Subject; s != "" && s != "build" && i.Rule.Collects == "" {
			line = line.and(say(", " + fmt.Sprintf(onSubject, a.name(s))))
		}
		list = append(list, line)
	}
	if list == nil {
		return []Block{Paragraph{Text: say(capital(nothingOpen) + ".")}}
	}
	return []Block{Paragraph{Text: say(leftNote)}, List{list}}
}

// ownerCautions are those of handing over, and of the work an owner does.
func (a *author) ownerCautions() []Block {
	lines := append([]string{}, wording.Cautions("handover")...)
	lines = append(lines, ownerCare...)
	for _, i := range a.Items {
		if (report.Open(i) || i.Finding.Outcome == verdict.Waived) && i.Rule.Caution != "" {
			lines = append(lines, i.Rule.Caution)
		}
	}
	return []Block{List{each(distinct(lines))}}
}
