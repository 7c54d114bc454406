package dossier

import (
	"fmt"
	"strings"

	"trialfit/internal/report"
	"trialfit/internal/report/wording"
	"trialfit/internal/verdict"
)

// statement says whose document it is, and whose decision it is not.
func (a *author) statement() []Block {
	v := a.Report.Verdict
	blocks := []Block{Paragraph{Text: strong(statementSummary)}}
	if offices := a.offices(); len(offices) > 0 {
		blocks = append(blocks, Paragraph{Text: say(statementRests)}, List{offices})
	} else {
		blocks = append(blocks, Paragraph{Text: say(statementNobody)})
	}
	examined := 0
	for _, r := range v.Rules {
		if r.Due && r.Outcome != verdict.NotApplicable {
			examined++
		}
	}
	says := fmt.Sprintf(statementGeneral, examined, v.Today)
	if len(v.Regions) > 0 {
		says = fmt.Sprintf(statementExamined, examined, v.Today, strings.Join(v.Regions, ", "))
	}
	blocks = append(blocks, Paragraph{Text: say(says)}, Paragraph{Text: say(wording.Deferral)})
	if spreads := report.Spreads(a.book.Spreads()); spreads != "" {
		blocks = append(blocks, Paragraph{Text: say(spreads)})
	}
	return blocks
}

// boxes are left empty for the authority.
func boxes() []Block {
	return []Block{Boxes{
		{boxFindings, 62}, {boxOutcome, 16}, {boxName, 16}, {boxDate, 12}, {boxStamp, 34},
	}}
}
