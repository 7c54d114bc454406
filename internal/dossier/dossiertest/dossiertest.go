// Package dossiertest holds the documents that the tests of every form of a
// dossier share. Everything in the builds made here is invented.
package dossiertest

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/dossier"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/verdict"
)

var checker = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Today: "2026-11-25", Hold: "inspection", TakeRefused: true})
})

// Checker is the one that judged the builds.
func Checker(t testing.TB) *check.Checker {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	return c
}

// Root is the folder of the module.
func Root() string {
	_, here, _, _ := runtime.Caller(0)
	return filepath.Join(filepath.Dir(here), "..", "..", "..")
}

// Examples are the manifests under examples.
func Examples(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(Root(), "examples", "*", "*"+manifest.Suffix))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

var (
	builds = map[string]report.Build{}
	lock   sync.Mutex
)

// Build is a manifest judged at inspection, once for all tests of a package:
// they do not change it.
func Build(t testing.TB, file string) report.Build {
	t.Helper()
	lock.Lock()
	defer lock.Unlock()
	b, known := builds[file]
	if !known {
		c := Checker(t)
		m, err := c.Loader.File(file)
		require.NoError(t, err)
		b = judged(t, c, m)
		builds[file] = b
	}
	return b
}

func judged(t testing.TB, c *check.Checker, m *manifest.Manifest) report.Build {
	t.Helper()
	m.File = filepath.Base(m.File)
	m.Root.Walk(func(n *manifest.Node) {
		if n.Value != nil {
			n.Value.Text = strings.ReplaceAll(n.Value.Text, "@@", unseen)
		}
	})
	r, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	items := verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	return report.Build{Report: r, Items: items}
}

// Document is the inspector's of a build.
func Document(t testing.TB, b report.Build) *dossier.Document {
	t.Helper()
	d, err := dossier.Inspector(b, Checker(t).Book)
	require.NoError(t, err)
	return d
}

// Book is the owner's.
func Book(t testing.TB, b report.Build) *dossier.Document {
	t.Helper()
	d, err := dossier.Owner(b, Checker(t).Book)
	require.NoError(t, err)
	return d
}

// Hostile is text that means something to a browser or a template, with
// characters that fonts lack.
const Hostile = `</td><script>alert(1)</script> <b>x</b> & "q" 'a' javascript:alert(1) ]]> {{.}} @@ 漢字 🚗 שלום`

// unseen takes the place of @@ after a manifest was read: the loader refuses
// such characters, and a document must not rely on that.
const unseen = "\u202e\u200f\x00\x1b[31m\ufffe"

// long is a word that no column holds.
var long = strings.Repeat("Überlang", 24)

// Monster is a build with more of everything than anyone has: so many papers,
// pictures among them, names that no line holds, and hostile text.
func Monster(t testing.TB, papers int) report.Build {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(dir, "evidence"), 0o755))
	var b strings.Builder
	fmt.Fprintf(&b, "trialfit: 1\nbuild: {name: %q, shop: %q}\n", Hostile, long)
	fmt.Fprintf(&b, "registration: {region: GB, use: private, first_registered: 2001-05-01}\n")
	fmt.Fprintf(&b, "chassis: {make: %q, model: %q, model_year: 1999, vin: ZZZ1AB233X1000001}\n", long, Hostile)
	fmt.Fprintf(&b, "engine: {family: %q, fuel: diesel, mass: {value: \"300..330 kg\", basis: measured}}\n", Hostile+long)
	b.WriteString("parts:\n")
	for i := range 40 {
		fmt.Fprintf(&b, "  - {id: part-%d, what: %q, source: %q, state: fitted}\n", i, long, strings.Repeat(Hostile+" ", 1+i%9))
	}
	if papers == 0 {
		b.WriteString("evidence: none\n")
	} else {
		b.WriteString("evidence:\n")
	}
	for i := range papers {
		name := fmt.Sprintf("evidence/%03d%s", i, []string{".jpg", ".png", ".txt"}[i%3])
		content := []byte(fmt.Sprint("invented paper ", i))
		if i%3 < 2 && i < 90 {
			content = Photograph(t, 40+i, 200-2*i, i%3 == 1)
		}
		require.NoError(t, os.WriteFile(filepath.Join(dir, filepath.FromSlash(name)), content, 0o644))
		fmt.Fprintf(&b, "  - {id: paper-%d, kind: photograph, title: %q, issuer: %q, date: 2026-01-02, file: %s, shows: none}\n", i, fmt.Sprint(i, " ", long, " ", Hostile), long, name)
	}
	b.WriteString("waivers: none\n")
	file := filepath.Join(dir, "monster"+manifest.Suffix)
	require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o644))
	c := Checker(t)
	m, err := c.Loader.File(file)
	require.NoError(t, err)
	if papers > 0 {
		_, err = check.Record(m)
		require.NoError(t, err)
	}
	return judged(t, c, m)
}

// Photograph is a picture of two colours, as a JPEG or PNG.
func Photograph(t testing.TB, width, height int, asPNG bool) []byte {
	t.Helper()
	img := image.NewRGBA(image.Rect(0, 0, max(width, 8), max(height, 8)))
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			c := color.RGBA{uint8(2 * x), uint8(3 * y), 90, 255}
			img.SetRGBA(x, y, c)
		}
	}
	var out bytes.Buffer
	if asPNG {
		require.NoError(t, png.Encode(&out, img))
	} else {
		require.NoError(t, jpeg.Encode(&out, img, nil))
	}
	return out.Bytes()
}

// Texts lists every text of a document in reading order, links and looks left
// out.
func Texts(d *dossier.Document) []string {
	var list []string
	add := func(s string) {
		if strings.TrimSpace(s) != "" {
			list = append(list, s)
		}
	}
	blocks := func(blocks []dossier.Block) {
		for _, b := range blocks {
			switch b := b.(type) {
			case dossier.Heading:
				add(b.Text)
			case dossier.Paragraph:
				add(b.Text.String())
			case dossier.List:
				for _, item := range b.Items {
					add(item.String())
				}
			case dossier.Facts:
				for _, f := range b {
					add(f.Label)
					cell(f.Value, add)
				}
			case dossier.Table:
				add(b.Caption)
				for _, row := range b.Rows {
					for _, c := range row.Cells {
						cell(c, add)
					}
				}
			case dossier.Photos:
				for _, p := range b {
					add(p.Caption.String())
				}
			case dossier.Boxes:
				for _, box := range b {
					add(box.Label)
				}
			}
		}
	}
	add(d.Title)
	add(d.Build)
	blocks(d.Lead)
	for _, s := range d.Sections {
		add(s.Title)
		blocks(s.Blocks)
	}
	return list
}

func cell(c dossier.Cell, add func(string)) {
	for _, line := range c {
		add(line.String())
	}
}
