// Package dossier assembles what somebody gets in hand who never saw a
// manifest: the inspector's dossier and the owner's hand-over book. Both are
// plain documents, which the packages below it draw as HTML and as PDF.
package dossier

import (
	"trialfit/internal/report"
	"trialfit/internal/report/pictures"
)

// Document is a whole dossier, ready to be drawn. All its text is safe to
// show: report.Plain was applied where text of a manifest came in.
type Document struct {
	// Language is the one its sentences are in, as a BCP 47 tag.
	Language string
	Title    string
	// Build, Hold, Today and Digest stand on every page: the name of the build,
	// the hold point judged at, the date of the judgement, and the SHA-256 of
	// the manifest in hexadecimal.
	Build, Hold, Today, Digest string
	// Draft is the mark of every page of a document that is not final, else "".
	Draft string
	// Paper is a4 or letter.
	Paper string
	// Lead stands under the title, before the first section.
	Lead     []Block
	Sections []Section
	// Files travel inside the document.
	Files []File
	// Words are those that a renderer adds.
	Words Words
}

// Words are what a renderer says by itself, in the document's language.
type Words struct {
	Contents, Attached string
	// Page is a format of two numbers: this page, and how many there are.
	Page string
	// Unprinted is a title, UnprintedCount a format of one number: how many
	// characters a font lacks.
	Unprinted, UnprintedCount string
}

// Section is a chapter with a name for links to it.
type Section struct {
	ID, Title string
	Blocks    []Block
}

// Block is a part of a section: Heading, Paragraph, List, Facts, Table,
// Drawing, Photos or Boxes.
type Block interface{ block() }

// Text is a run of spans on one line of thought.
type Text []Span

// Span is text with one look. Link is the address it leads to: "#id" inside
// the document, else a URL.
type Span struct {
	Text   string
	Link   string
	Strong bool
	// Code marks what is compared character by character: digests, ids.
	Code bool
}

// Cell holds the lines of a table cell or of a fact.
type Cell []Text

// Heading opens a part of a section.
type Heading struct{ Text string }

// Paragraph is a sentence or more. Notice sets it apart.
type Paragraph struct {
	Text   Text
	Notice bool
}

// List is a list of short texts.
type List struct{ Items []Text }

// Facts are labels with their values.
type Facts []Fact

// Fact is one of them.
type Fact struct {
	Label string
	Value Cell
}

// Table has a head that is repeated on every page it reaches.
type Table struct {
	// Caption says what is in it.
	Caption string
	Head    []string
	// Shares are the widths of the columns, in parts of their sum.
	Shares []float64
	Rows   []Row
}

// Row is a line of a table; ID is for links to it, or "".
type Row struct {
	ID    string
	Cells []Cell
}

// Drawing is a picture made of lines and words.
type Drawing struct{ Picture pictures.Picture }

// Photos are shown beside one another.
type Photos []Photo

// Photo is an evidence picture, scaled, without what its camera wrote into it.
type Photo struct {
	JPEG          []byte
	Width, Height int // pixels
	Caption       Text
	// Alt says in words what the evidence is.
	Alt string
}

// Boxes are empty fields to write in by hand.
type Boxes []Box

// Box is one of them, Height in mm.
type Box struct {
	Label  string
	Height float64
}

// File is attached as it is.
type File struct {
	Name, Type, About string
	Data              []byte
}

func (Heading) block()   {}
func (Paragraph) block() {}
func (List) block()      {}
func (Facts) block()     {}
func (Table) block()     {}
func (Drawing) block()   {}
func (Photos) block()    {}
func (Boxes) block()     {}

// say is plain text.
func say(s string) Text { return Text{{Text: report.Plain(s)}} }

// strong is text that carries a state.
func strong(s string) Text { return Text{{Text: report.Plain(s), Strong: true}} }

// code is text compared character by character.
func code(s string) Text { return Text{{Text: report.Plain(s), Code: true}} }

// link is text that leads somewhere.
func link(s, to string) Text { return Text{{Text: report.Plain(s), Link: to}} }

// and joins texts with nothing between them.
func (t Text) and(more ...Text) Text {
	out := append(Text{}, t...)
	for _, m := range more {
		out = append(out, m...)
	}
	return out
}

// String is the text without looks and links.
func (t Text) String() string {
	s := ""
	for _, span := range t {
		s += span.Text
	}
	return s
}

// cell holds one line for each text that is not empty.
func cell(lines ...Text) Cell {
	var c Cell
	for _, line := range lines {
		if line.String() != "" {
			c = append(c, line)
		}
	}
	return c
}
