package pictures_test

import (
	"bytes"
	"context"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"regexp"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/report/figuresheet"
	"trialfit/internal/report/pictures"
	"trialfit/internal/report/reporttest"
)

var checker = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Today: "2026-11-25"})
})

const full = "testdata/full.build.yaml"

func prepare(t *testing.T, text, file string) *check.Report {
	t.Helper()
	c, err := checker()
	require.NoError(t, err)
	m, err := c.Loader.Read(strings.NewReader(text), file, ".")
	require.NoError(t, err)
	r, err := c.Prepare(m)
	require.NoError(t, err)
	return r
}

func draw(r *check.Report) []pictures.Picture { return pictures.All(r.Manifest, r.Computed) }

func read(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile(full)
	require.NoError(t, err)
	return string(data)
}

// A van whose engine breathes by itself and whose shaft stays where it was.
func TestPartThatIsNotThere(t *testing.T) {
	r := prepare(t, "trialfit: 1\nbuild: {name: van}\ncharge_air: none\nshafts: none\n", "van.build.yaml")
	for _, p := range draw(r) {
		require.NotContains(t, []string{"charge-temperature", "joint-angles"}, p.Name)
	}
	var names []string
	for _, p := range draw(prepare(t, "trialfit: 1\nbuild: {name: van}\n", "van.build.yaml")) {
		names = append(names, p.Name)
	}
	require.Subset(t, names, []string{"charge-temperature", "joint-angles"}, "not spoken of is not none")
}

func TestPictures(t *testing.T) {
	for _, p := range draw(prepare(t, read(t), full)) {
		t.Run(p.Name, func(t *testing.T) {
			require.Empty(t, p.Missing)
			reporttest.Golden(t, p.Name+".svg", []byte(p.File()))
		})
	}
}

// element is one start tag with the text behind it.
type element struct {
	name, text string
	attributes map[string]string
}

// elements reads a drawing with a strict reader.
func elements(t *testing.T, drawing string) []element {
	t.Helper()
	dec := xml.NewDecoder(strings.NewReader(drawing))
	dec.Strict = true
	var list []element
	for {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return list
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local, attributes: map[string]string{}}
			for _, a := range token.Attr {
				e.attributes[a.Name.Local] = a.Value
			}
			list = append(list, e)
		case xml.CharData:
			if len(list) > 0 {
				list[len(list)-1].text += string(token)
			}
		}
	}
}

// TestDrawingsAreSafeAndAccessible: nothing but shapes and text in the colour
// of the page, with a title and a description.
func TestDrawingsAreSafeAndAccessible(t *testing.T) {
	allowed := strings.Fields("svg title desc text line rect circle polygon")
	for _, p := range draw(prepare(t, read(t), full)) {
		list := elements(t, p.Element())
		root := list[0]
		require.Equal(t, "svg", root.name)
		require.Equal(t, "img", root.attributes["role"])
		require.Equal(t, p.Name+"-title "+p.Name+"-desc", root.attributes["aria-labelledby"])
		require.Equal(t, []string{"title", "desc"}, []string{list[1].name, list[2].name})
		require.Equal(t, []string{p.Name + "-title", p.Name + "-desc"}, []string{list[1].attributes["id"], list[2].attributes["id"]})
		require.Contains(t, list[1].text, p.Title)
		for _, e := range list {
			require.Contains(t, allowed, e.name)
			for name, v := range e.attributes {
				require.False(t, strings.HasPrefix(name, "on") || name == "href", name)
				if name == "fill" || name == "stroke" {
					require.Equal(t, "currentColor", v)
				}
			}
		}
	}
}

// TestNumbersAreThoseOfTheSheet: every value written beside a drawing stands in
// its description, and on the sheet in the same words; or it is a value of the
// manifest that no figure reads, as the sheet would print it.
func TestNumbersAreThoseOfTheSheet(t *testing.T) {
	r := prepare(t, read(t), full)
	c, err := checker()
	require.NoError(t, err)
	require.NoError(t, c.Judge(context.Background(), r))
	var page bytes.Buffer
	require.NoError(t, figuresheet.Sheet{Build: report.Build{Report: r}}.Text(&page, 1_000_000))
	known := page.String()
	r.Manifest.Root.Walk(func(n *manifest.Node) {
		if v := n.Value; v != nil && v.Numeric && v.Kind != "" {
			known += "\n" + quantity.Print(v.Low, v.High, v.Kind, v.Unit)
		}
	})
	for _, p := range draw(r) {
		list := elements(t, p.Element())
		description := list[2].text
		values := 0
		for _, e := range list {
			if e.attributes["class"] != "value" {
				continue
			}
			require.NotContains(t, e.text, "…", "%s: cut off", p.Name)
			for _, n := range amount.FindAllString(e.text, -1) {
				values++
				require.Contains(t, description, n, p.Name)
				// What stands behind "=" is the same in the unit of the axis.
				if !strings.Contains(e.text, "= "+n) {
					require.True(t, strings.Contains(known, n), "%s: %s is not on the sheet", p.Name, n)
				}
			}
		}
		require.GreaterOrEqual(t, values, 3, p.Name)
	}
}

// amount is a number, or a range, with its unit.
var amount = regexp.MustCompile(`-?\d[\d.]*(?:\.\.-?\d[\d.]*)?(?: [^\s,;()]+|°)`)

// TestEveryNumberHasAUnit: the numbers of an axis share the unit at its end,
// the others carry their own.
func TestEveryNumberHasAUnit(t *testing.T) {
	bare := regexp.MustCompile(`\d$`)
	for _, p := range draw(prepare(t, read(t), full)) {
		unit := false
		for _, e := range elements(t, p.Element()) {
			switch e.attributes["class"] {
			case "value":
				require.NotRegexp(t, bare, e.text, p.Name)
			case "tick":
				unit = unit || !regexp.MustCompile(`^-?[\d.]+$`).MatchString(e.text)
			}
		}
		require.True(t, unit, p.Name)
	}
}

// TestSaysWhatIsMissing: a build that says nothing gets no picture, and every
// picture names what it lacks.
func TestSaysWhatIsMissing(t *testing.T) {
	for _, p := range draw(prepare(t, "trialfit: 1\nbuild: {}\n", "empty.build.yaml")) {
		require.False(t, p.Drawn(), p.Name)
		require.NotEmpty(t, p.Missing, p.Name)
		for _, path := range p.Missing {
			require.NotContains(t, path, "figure ", "%s needs a figure that no package declares", p.Name)
		}
	}
}

// TestPartsMayLack: what is not needed for the rest is left out, and said.
func TestPartsMayLack(t *testing.T) {
	text := strings.NewReplacer(
		`ratings: {front_axle: "2950 lb", `, `ratings: {`,
		"  economy_low: \"1600 rpm\"\n", "",
		"    joint_angle_limit: \"8 deg\"\n", "",
		"  back_pressure_limit: \"3 inHg\"\n", "",
	).Replace(read(t))
	said := map[string]string{
		"axle-loads":       "lacking: chassis.ratings.front_axle",
		"road-speeds":      "lacking: engine.economy_low",
		"joint-angles":     "lacking: shafts.rear.joint_angle_limit",
		"exhaust-pressure": "lacking: exhaust.back_pressure_limit",
	}
	for _, p := range draw(prepare(t, text, full)) {
		require.True(t, p.Drawn(), p.Name)
		require.Contains(t, p.Element(), said[p.Name])
	}
}

// TestHostileText: the name of a build is shown and does nothing else.
func TestHostileText(t *testing.T) {
	name := `<script>alert(1)<script>&"'` + "\u202e\u200f\x1b\x00]]>" + strings.Repeat(" long", 40)
	for _, p := range draw(prepare(t, read(t), name+".build.yaml")) {
		for _, drawing := range []string{p.Element(), p.File()} {
			require.NotContains(t, drawing, "<script")
			require.NotContains(t, drawing, "\u202e")
			require.NotContains(t, drawing, "\u200f")
			list := elements(t, drawing)
			require.Contains(t, list[1].text, "<script>alert(1)<script>")
		}
	}
}

// TestTextStaysInside keeps labels between the edges, by the measure that they
// were laid out with: ids as long as they may be.
func TestTextStaysInside(t *testing.T) {
	long := strings.Repeat("very-long-name-", 6)
	text := strings.NewReplacer("id: battery-to-starter", "id: "+long+"a", "id: downpipe", "id: "+long+"b", "id: fifth", "id: "+long+"c").Replace(read(t))
	for _, p := range draw(prepare(t, text, full)) {
		require.True(t, p.Drawn(), p.Name)
		for _, e := range elements(t, p.Element()) {
			if e.name == "text" {
				require.LessOrEqual(t, len([]rune(e.text)), 92, "%s: %q", p.Name, e.text)
			}
		}
	}
}

func TestSameBuildSameBytes(t *testing.T) {
	first, second := draw(prepare(t, read(t), full)), draw(prepare(t, read(t), full))
	for i := range first {
		require.Equal(t, first[i].File(), second[i].File())
	}
}
