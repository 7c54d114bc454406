// Package counter writes what a builder takes to the authority's counter: what
// a region asks for, and the letter with the questions of one build.
package counter

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/lines"
	"trialfit/internal/report/wording"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// List tells what the regions of a chain ask for, hold point by hold point:
// what, which paper, from whom.
func List(w io.Writer, book *rulebook.Book, chain []rulebook.Region, columns int) error {
	p := page{lines.Printer{W: w, Columns: columns}}
	last := chain[len(chain)-1]
	p.Line("%s (%s): what is asked for, by when, and who decides", last.Name, last.Code)
	for _, r := range chain {
		p.Line("\n%s, read on %s, good for %d months", r.Name, r.Reviewed, r.ReviewMonths)
		for _, a := range r.Authorities {
			p.Wrap("  ", "    ", a.Name+" decides "+strings.TrimPrefix(a.Decides, "decides "))
		}
		if len(r.Zones.Names) > 0 {
			p.Wrap("  ", "    ", fmt.Sprintf("%s: %s (%s, read on %s)", r.Zones.Means, strings.Join(r.Zones.Names, ", "), r.Zones.Source, r.Zones.Reviewed))
		}
	}
	for _, hold := range rulebook.HoldPoints {
		p.hold(book, chain, hold)
	}
	p.Line("")
	p.Wrap("", "", wording.NotLegal)
	p.Wrap("", "", wording.Deferral)
	return p.Err
}

type page struct{ lines.Printer }

func (p *page) hold(book *rulebook.Book, chain []rulebook.Region, hold string) {
	var asked []*rulebook.Meta
	for _, m := range book.Catalogue() {
		if m.Hold == hold && place(chain, m.Region) >= 0 && m.Collects == "" {
			asked = append(asked, m)
		}
	}
	if len(asked) == 0 {
		return
	}
	slices.SortStableFunc(asked, func(a, b *rulebook.Meta) int {
		return cmp.Or(cmp.Compare(place(chain, a.Region), place(chain, b.Region)), strings.Compare(a.ID, b.ID))
	})
	p.Line("\nBy %s (%d)", hold, len(asked))
	for _, m := range asked {
		p.Line("")
		p.Wrap("  ", "  ", m.Title)
		p.Line("  %s · %s", m.ID, weight(m))
		if q := m.Question; q != nil {
			p.Field("ask", q.Ask)
			p.Field("whom", q.Office)
		}
		p.Field("paper", paper(m))
		p.Field("do", m.Remedy)
		if m.Caution != "" {
			p.Field("caution", m.Caution)
		}
		p.Field("source", fmt.Sprintf("%s (%s, reviewed %s)", m.Source, m.Basis, m.Reviewed))
	}
}

// place is the position of a region in its chain, -1 where it is not in it.
func place(chain []rulebook.Region, code string) int {
	return slices.IndexFunc(chain, func(r rulebook.Region) bool { return r.Code == code })
}

func weight(m *rulebook.Meta) string {
	if m.Question != nil {
		return "a question, which must be answered where the build raises it"
	}
	return m.Level
}

// paper is the kind of proof that satisfies a rule.
func paper(m *rulebook.Meta) string {
	if m.Question != nil {
		return "the office's answer, written and dated, filed with the evidence as authority-answer"
	}
	for _, hold := range slices.Backward(rulebook.HoldPoints) {
		if grade, ok := m.NeedsBasis[hold]; ok {
			return grade + " by " + hold
		}
	}
	return "what the manifest says"
}

// facts are the places of a manifest that tell an office which vehicle it is about.
var facts = []string{
	"chassis.make", "chassis.model", "chassis.model_year", "chassis.built", "chassis.vin", "chassis.category", "chassis.approval_category",
	"chassis.ratings.gross", "chassis.certification.class", "chassis.certification.certified_for", "chassis.certification.diagnostics",
	"registration.region", "registration.zone", "registration.use", "registration.plate_class", "registration.first_registered", "registration.title_fuel", "registration.installer",
	"outgoing_engine.family", "outgoing_engine.fuel", "outgoing_engine.displacement", "outgoing_engine.rated_power",
	"engine.family", "engine.number", "engine.model_year", "engine.built", "engine.fuel", "engine.displacement", "engine.rated_power",
	"engine.certification.class", "engine.certification.certified_for", "engine.emission_stage",
}

// Letter writes the questions that a build raises, by the office that answers
// them, with the facts of the build filled in. Judge the build at the last hold
// point, so that none is left out.
func Letter(w io.Writer, b report.Build, book *rulebook.Book, columns int) error {
	p := page{lines.Printer{W: w, Columns: columns}}
	m := b.Report.Manifest
	chain := b.Report.Chain
	if len(chain) == 0 {
		p.Wrap("", "", m.Name()+": no region given, so that no question is known: write registration.region, or name one with --region")
		return p.Err
	}
	asked := Questions(b, book)
	region := chain[len(chain)-1]
	p.Line("Questions on %s, to be registered in %s (%s)", m.Name(), region.Name, region.Code)
	p.Line("as of %s", b.Report.Verdict.Today)
	p.Line("\nThe vehicle and the change")
	p.facts(m)
	if len(asked) == 0 {
		p.Line("")
		p.Wrap("", "", "The rules of this region raise no question on this build. That is not an approval.")
	}
	for n, q := range asked {
		if n == 0 || asked[n-1].Rule.Question.Office != q.Rule.Question.Office {
			p.Line("")
			p.Wrap("To: ", "    ", q.Rule.Question.Office)
		}
		p.Line("")
		p.Wrap(fmt.Sprintf("%3d. ", n+1), "     ", q.Rule.Question.Ask)
		p.Wrap("     ", "     ", fmt.Sprintf("(%s, by %s: %s)", q.Rule.ID, q.Rule.Hold, q.State))
		p.Wrap("     ", "     ", "The reason for asking: "+q.Rule.Source)
		p.Line("     Answer: ______________________________  Name, date: ___________________")
	}
	p.Line("")
	p.Wrap("", "", wording.Deferral)
	return p.Err
}

func (p *page) facts(m *manifest.Manifest) {
	var open []string
	for _, path := range facts {
		n := m.Node(path)
		switch {
		case n == nil:
		case n.Value != nil:
			p.Wrap("  ", "    ", section(path)+n.Shape.Noun()+": "+n.Value.Text)
		case n.State == manifest.None:
			p.Wrap("  ", "    ", section(path)+n.Shape.Noun()+": none")
		default:
			open = append(open, path)
		}
	}
	if len(open) > 0 {
		p.Wrap("  ", "    ", "not known yet: "+strings.Join(open, ", "))
	}
}

// sections say whose fact it is; what belongs to the registration speaks for itself.
var sections = map[string]string{"chassis": "chassis, ", "outgoing_engine": "engine that comes out, ", "engine": "engine that goes in, ", "registration": ""}

func section(path string) string {
	head, _, _ := strings.Cut(path, ".")
	return sections[head]
}

// Question is one that a build raises, or may raise.
type Question struct {
	Rule *rulebook.Meta
	// State says in words how it stands: open, answered, waived, or what must
	// be known first.
	State string
	// Item is the finding on its answer.
	Item verdict.Item
}

// Questions are those a build raises, or may raise, by office.
func Questions(b report.Build, book *rulebook.Book) []Question {
	var asked []Question
	for _, i := range b.Items {
		if i.Rule.Collects == "" || i.Finding.Outcome == verdict.NotApplicable {
			continue
		}
		meta := book.Rules[i.Finding.Subject]
		if meta == nil || meta.Question == nil {
			continue
		}
		state := "open"
		switch {
		case i.Finding.Outcome == verdict.Met:
			state = "answered, " + strings.Join(i.Finding.Evidence, ", ")
		case i.Finding.Outcome == verdict.Waived:
			state = "waived"
		case i.Finding.Reason == "applies":
			state = "asked for certain once this is known: " + strings.Join(i.Finding.Missing, ", ")
		}
		asked = append(asked, Question{meta, state, i})
	}
	slices.SortStableFunc(asked, func(x, y Question) int {
		return cmp.Or(strings.Compare(x.Rule.Question.Office, y.Rule.Question.Office), strings.Compare(x.Rule.ID, y.Rule.ID))
	})
	return asked
}
