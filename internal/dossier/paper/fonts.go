package paper

import (
	"bytes"
	"unicode/utf8"

	"codeberg.org/go-fonts/dejavu/dejavusanscondensed"
	"codeberg.org/go-fonts/dejavu/dejavusanscondensedbold"
	"codeberg.org/go-fonts/dejavu/dejavusansmono"
	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/sfnt"
)

// style chooses a font.
type style struct{ strong, code bool }

// The fonts are DejaVu 2.37, free to embed under the Bitstream Vera licence,
// which comes with their module.
const family = "dejavu"

// faces are in the order in which a file holds them, each with the letter by
// which fpdf tells the faces of a family apart.
var faces = []struct {
	style
	letter string
	data   []byte
}{
	{style{}, "", dejavusanscondensed.TTF},
	{style{strong: true}, "B", dejavusanscondensedbold.TTF},
	{style{code: true}, "I", dejavusansmono.TTF},
}

// fonts measures text and knows which characters can be drawn.
type fonts struct {
	pdf    *fpdf.Fpdf
	glyphs map[style]*sfnt.Font
	buffer sfnt.Buffer
	// widths of words at 1 pt, in mm.
	widths map[style]map[string]float64
	lacks  map[rune]bool
	known  map[style]map[rune]bool
}

func loadFonts(pdf *fpdf.Fpdf) (*fonts, error) {
	f := &fonts{
		pdf: pdf, glyphs: map[style]*sfnt.Font{}, lacks: map[rune]bool{},
		widths: map[style]map[string]float64{}, known: map[style]map[rune]bool{},
	}
	for _, face := range faces {
		// fpdf writes into the font it cuts down; the next document needs it whole.
		pdf.AddUTF8FontFromBytes(family, face.letter, bytes.Clone(face.data))
		font, err := sfnt.Parse(face.data)
		if err != nil {
			return nil, err
		}
		f.glyphs[face.style], f.widths[face.style], f.known[face.style] = font, map[string]float64{}, map[rune]bool{}
	}
	return f, pdf.Error()
}

// codeSize keeps code, whose letters are wide, as quiet as the text around it.
const codeSize = 0.86

func (f *fonts) use(s style, size float64) {
	if s.code {
		size *= codeSize
	}
	for _, face := range faces {
		if face.style == s {
			f.pdf.SetFont(family, face.letter, size)
		}
	}
}

// width is that of a text in mm.
func (f *fonts) width(text string, s style, size float64) float64 {
	w, known := f.widths[s][text]
	if !known {
		const measured = 100.0
		f.use(s, measured)
		w = f.pdf.GetStringWidth(text) / measured
		f.widths[s][text] = w
	}
	return w * size
}

// drawable puts U+FFFD in the place of characters that a font lacks, or that a
// PDF of this kind can't hold.
func (f *fonts) drawable(text string, s style) string {
	clean := make([]byte, 0, len(text))
	for _, r := range text {
		if !f.has(r, s) {
			f.lacks[r] = true
			r = utf8.RuneError
		}
		clean = utf8.AppendRune(clean, r)
	}
	return string(clean)
}

func (f *fonts) has(r rune, s style) bool {
	has, known := f.known[s][r]
	if !known {
		index, err := f.glyphs[s].GlyphIndex(&f.buffer, r)
		has = r <= 0xFFFF && err == nil && index != 0
		f.known[s][r] = has
	}
	return has
}

// lost is how many different characters were put aside.
func (f *fonts) lost() int { return len(f.lacks) }
