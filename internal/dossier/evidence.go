package dossier

import (
	"fmt"

	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
	"trialfit/internal/schema"
)

var states = map[evidence.State]string{
	evidence.Intact: stateIntact, evidence.Changed: stateChanged,
	evidence.Missing: stateMissing, evidence.Unrecorded: stateUnrecorded,
}

// evidence lists the papers with their digests, and shows the pictures.
func (a *author) evidence() []Block {
	items := a.items("evidence")
	if len(items) == 0 {
		return []Block{Paragraph{Text: say(noEvidence)}}
	}
	t := Table{
		Caption: captionEvidence, Head: []string{colNumber, colWhat, colShows, colIssuer, colFile},
		Shares: []float64{1.4, 4, 6, 4, 6},
	}
	for _, e := range items {
		number := paperNumber(a.numbers[e.ID])
		t.Rows = append(t.Rows, Row{ID: number, Cells: []Cell{
			cell(strong(number)), a.paper(e), a.shown(e), a.issued(e), a.file(e),
		}})
	}
	blocks := []Block{t}
	if len(a.albums.photos) > 0 {
		blocks = append(blocks, Heading{captionPhotos}, a.albums.photos)
	}
	return blocks
}

func (a *author) paper(e *manifest.Node) Cell {
	title := e.Word("title")
	if title == "" {
		title = spaced(e.ID)
	}
	return cell(say(title), say(a.text(e.Field("kind"))), code(e.ID))
}

// shown lists the values that a paper shows.
func (a *author) shown(e *manifest.Node) Cell {
	var c Cell
	for _, s := range e.Field("shows").Items {
		c = append(c, say(fmt.Sprintf(shows, a.name(s.Word("path")), a.said(s))))
	}
	if q := e.Word("answers"); q != "" {
		c = append(c, say(a.name(q)))
	}
	if c == nil {
		c = cell(say(showsNothing))
	}
	return c
}

func (a *author) issued(e *manifest.Node) Cell {
	c := cell(say(e.Word("issuer")), say(a.text(e.Field("date"))))
	if by := e.Word("by"); by != "" {
		c = append(c, say(fmt.Sprintf(takenBy, by)))
	}
	return c
}

// file names the file, its digest, and whether it is the one recorded.
func (a *author) file(e *manifest.Node) Cell {
	path := e.Word("file")
	if path == "" {
		return cell(say(noFile))
	}
	if why, refused := a.Report.Refused[e.ID]; refused {
		return cell(code(path), strong(fmt.Sprintf(stateRefused, why)))
	}
	f := a.Report.Evidence[e.ID]
	c := cell(code(path), code(f.Digest))
	state := say(states[f.State])
	if f.State != evidence.Intact {
		state = strong(states[f.State])
	}
	c = append(c, state)
	if f.Pointer {
		c = append(c, say(statePointer))
	}
	return c
}

// said is the value that a paper shows, in the words of the value it is of.
func (a *author) said(shown *manifest.Node) string {
	text := a.text(shown.Field("value"))
	if of := a.m.Node(shown.Word("path")); of != nil && of.Shape.Leaf == schema.LeafBoolean {
		return map[string]string{"true": yes, "false": no}[text]
	}
	return text
}
