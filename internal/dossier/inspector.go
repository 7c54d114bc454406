package dossier

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"trialfit/internal/report"
	"trialfit/internal/report/json"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// The hold points that the documents are for: before the authority, and before
// the owner.
const (
	AtInspection = "inspection"
	AtHandover   = "handover"
)

// Inspector writes the dossier of a judged build for the authority. The error
// is one of writing the report that is attached.
func Inspector(b report.Build, book *rulebook.Book) (*Document, error) {
	a := newAuthor(b, book)
	a.albums = a.album()
	d, err := a.document(inspectorTitle, AtInspection)
	if err != nil {
		return nil, err
	}
	d.Lead = a.lead()
	d.add("vehicle", titleIdentity, a.identity())
	d.add("change", titleChange, a.change())
	d.add("region", titleRegion, a.region())
	d.add("questions", titleQuestions, a.questions())
	d.add("figures", titleFigures, a.figuresThatMatter())
	d.add("readings", titleReadings, a.readings())
	d.add("evidence", titleEvidence, a.evidence())
	d.add("open", titleOpen, a.open())
	d.add("cautions", titleCautions, a.cautions())
	d.add("statement", titleStatement, a.statement())
	d.add("findings", titleFindings, boxes())
	return d, nil
}

func (d *Document) add(id, title string, blocks []Block) {
	d.Sections = append(d.Sections, Section{ID: id, Title: title, Blocks: blocks})
}

// document is one without sections, final once its hold point is passed.
func (a *author) document(title, final string) (*Document, error) {
	sum := sha256.Sum256(a.m.Data)
	name := report.Plain(a.m.Name())
	full, err := a.full()
	if err != nil {
		return nil, err
	}
	v := a.Report.Verdict
	return &Document{
		Language: language, Title: title, Build: name, Hold: v.Hold, Today: v.Today,
		Digest: hex.EncodeToString(sum[:]), Draft: a.draft(final), Paper: paperOf(a.Report.Chain),
		Files: []File{
			{name + ".build.yaml", "application/yaml", attachedManifest, a.m.Data},
			{name + ".report.json", "application/json", attachedReport, full},
		},
		Words: Words{titleContents, titleAttached, pageOf, titleUnprinted, unprintedCounts},
	}, nil
}

// full is the report of the build for programs.
func (a *author) full() ([]byte, error) {
	var body report.Spool
	defer body.Close()
	form := json.New(&body, a.book.Spreads())
	if err := form.Add(a.Build); err != nil {
		return nil, err
	}
	var out bytes.Buffer
	err := form.End(&out, report.Summary{})
	return out.Bytes(), err
}

// draft is the mark of a build that has not passed the hold point that a
// document is for.
func (a *author) draft(final string) string {
	v := a.Report.Verdict
	place := func(hold string) int { return slices.Index(rulebook.HoldPoints, hold) }
	switch {
	case v.Verdict != verdict.Pass:
		return fmt.Sprintf(draftFailed, final)
	case place(v.Hold) < place(final):
		return fmt.Sprintf(draftEarly, v.Hold, final)
	}
	return ""
}

// lead is what the reader sees first.
func (a *author) lead() []Block {
	facts := Facts{{leadVerdict, cell(strong(a.outcome()))}}
	for _, line := range a.Counts() {
		facts = append(facts, Fact{leadCounts, cell(say(line))})
	}
	facts = append(facts, Fact{leadOpen, cell(a.openCounts())})
	facts = append(facts, Fact{leadRegion, a.chain()})
	if offices := a.offices(); len(offices) > 0 {
		facts = append(facts, Fact{leadDecides, cell(offices...)})
	}
	facts = append(facts, Fact{leadReading, cell(say(readingNote))})
	return []Block{merged(facts)}
}

// merged puts facts of one label together.
func merged(facts Facts) Facts {
	var out Facts
	for _, f := range facts {
		if n := len(out); n > 0 && out[n-1].Label == f.Label {
			out[n-1].Value = append(out[n-1].Value, f.Value...)
			continue
		}
		out = append(out, f)
	}
	return out
}

func (a *author) outcome() string {
	v := a.Report.Verdict
	if v.Verdict == verdict.Pass {
		line := fmt.Sprintf(verdictPass, v.Hold)
		if _, waivers, used := strings.Cut(v.Headline, " with "); used {
			line += fmt.Sprintf(waiversUsed, waivers)
		}
		return line
	}
	due := 0
	for id, r := range v.Rules {
		if r.Due && (r.Level == "must" || slices.Contains(v.Blocking, id)) {
			due++
		}
	}
	return fmt.Sprintf(verdictFail, v.Hold, len(v.Blocking), due)
}

func (a *author) openCounts() Text {
	n := map[string]int{}
	for _, i := range a.Items {
		if i.Due {
			n[i.Finding.Outcome]++
		}
	}
	if n[verdict.NotMet]+n[verdict.Unproven]+n[verdict.Waived] == 0 {
		return say(nothingOpen)
	}
	return link(fmt.Sprintf(openCounts, n[verdict.NotMet], n[verdict.Unproven], n[verdict.Waived]), "#open")
}

// chain names the regions whose rules were in force, and how fresh they are.
func (a *author) chain() Cell {
	var c Cell
	for _, r := range a.Report.Chain {
		if !r.Pack {
			c = append(c, say(fmt.Sprintf(regionNoPack, r.Code)))
			continue
		}
		c = append(c, say(fmt.Sprintf(regionRead, r.Name, r.Code, r.Reviewed, r.ReviewMonths)))
	}
	if c == nil {
		c = cell(say(noRegion))
	}
	return c
}

func (a *author) offices() []Text {
	var list []Text
	for _, r := range a.Report.Chain {
		for _, office := range r.Authorities {
			list = append(list, say(fmt.Sprintf(decides, office.Name, strings.TrimPrefix(office.Decides, "decides "))))
		}
	}
	return list
}
