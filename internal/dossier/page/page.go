// Package page draws a document as one HTML file that needs no other: no
// network, no script. It reads on a telephone as on paper, in light and dark.
package page

import (
	"embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"strings"

	"trialfit/internal/dossier"
)

//go:embed page.html style.css
var files embed.FS

var page = template.Must(template.New("page.html").Funcs(template.FuncMap{
	"kind": kind, "style": style, "drawing": drawing, "photo": photo, "download": download, "label": label, "percent": percent, "headed": headed, "number": number, "quoted": quoted,
}).ParseFS(files, "page.html"))

// Write draws a document. The error is one of writing.
func Write(w io.Writer, d *dossier.Document) error {
	if err := page.Execute(w, d); err != nil {
		return fmt.Errorf("writing the HTML: %w", err)
	}
	return nil
}

// kind is the name of a block's type, for the template to choose by.
func kind(b dossier.Block) string {
	_, name, _ := strings.Cut(fmt.Sprintf("%T", b), ".")
	return name
}

// style is the style sheet, which is ours.
func style() (template.CSS, error) {
	css, err := files.ReadFile("style.css")
	return template.CSS(css), err
}

// drawing is an SVG element, whose text is escaped where it is made.
func drawing(d dossier.Drawing) template.HTML { return template.HTML(d.Picture.Element()) }

func photo(p dossier.Photo) template.URL { return data("image/jpeg", p.JPEG) }

func download(f dossier.File) template.URL { return data(f.Type, f.Data) }

func data(kind string, content []byte) template.URL {
	return template.URL("data:" + kind + ";base64," + base64.StdEncoding.EncodeToString(content))
}

// label is the head of a column, for rows that stand below one another.
func label(t dossier.Table, column int) string {
	if column < len(t.Head) {
		return t.Head[column]
	}
	return ""
}

// percent is the width of a column.
func percent(t dossier.Table, column int) string {
	sum := 0.0
	for _, s := range t.Shares {
		sum += s
	}
	return fmt.Sprintf("%.1f%%", 100*t.Shares[column]/sum)
}

// headed is whether the first cell of a row names the row.
func headed(column int) bool { return column == 0 }

// number counts from 1.
func number(i int) int { return i + 1 }

// quoted is a text as a string of CSS, every character but letters and digits
// by its number.
func quoted(s string) template.CSS {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range s {
		if r >= '0' && r <= '9' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' {
			b.WriteRune(r)
		} else {
			fmt.Fprintf(&b, `\%06x`, r)
		}
	}
	b.WriteByte('"')
	return template.CSS(b.String())
}
