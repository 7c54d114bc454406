package annotations

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
	"trialfit/internal/report/reporttest"
	"trialfit/internal/report/wording"
)

func written(t *testing.T, r reporttest.Run) string {
	t.Helper()
	return string(r.Write(t, New()))
}

func TestGolden(t *testing.T) {
	reporttest.Golden(t, "example.txt", []byte(written(t, reporttest.Example(t))))
	reporttest.Golden(t, "sample.txt", []byte(written(t, reporttest.Sample(t))))
}

// TestEscapes: what npm's @actions/core 3.0.1 printed for the same arguments,
// run with node 20.
func TestEscapes(t *testing.T) {
	for _, c := range []struct {
		command command
		want    string
	}{
		{
			command{kind: "error", file: "a,b:c%.yaml", title: "x: y, 5 %", message: "50 %: a, b\n::error::no", at: manifest.Position{Line: 3, Column: 7}},
			"::error file=a%2Cb%3Ac%25.yaml,line=3,col=7,title=x%3A y%2C 5 %25::50 %25: a, b%0A::error::no\n",
		},
		{
			command{kind: "warning", title: "%0A", message: "%0A"},
			"::warning title=%250A::%250A\n",
		},
		{
			command{kind: "notice", file: "é/ø.yaml", title: "t", message: "±5 °C"},
			"::notice file=é/ø.yaml,title=t::±5 °C\n",
		},
	} {
		require.Equal(t, c.want, c.command.String())
	}
	require.Equal(t, "a%0D%0Ab%25", data.Replace("a\r\nb%"))
	require.Equal(t, "a%0D%0Ab%25%3A%2C", property.Replace("a\r\nb%:,"))
}

// TestOneLineEach: text from a manifest never starts a command of its own.
func TestOneLineEach(t *testing.T) {
	out := written(t, reporttest.Sample(t))
	require.NotContains(t, out, "\r")
	lines := strings.Split(strings.TrimSuffix(out, "\n"), "\n")
	require.Len(t, lines, 2+2+1+1+1)
	for i, kind := range []string{"error", "error", "error", "error", "warning", "notice", "notice"} {
		require.True(t, strings.HasPrefix(lines[i], "::"+kind+" "), lines[i])
	}
}

// TestMost: no more than sites keep of each kind, and the rest is counted.
func TestMost(t *testing.T) {
	r := reporttest.Sample(t)
	r.Unread = nil
	one := r.Builds[0].Items
	for range 11 {
		r.Builds[0].Items = append(r.Builds[0].Items, one...)
	}
	out := written(t, r)
	for _, kind := range kinds {
		require.Equal(t, most, strings.Count("\n"+out, "\n::"+kind+" "), kind)
	}
	// Twelve of each: two errors, one warning and one notice a time, and the closing notice.
	require.Contains(t, out, "not shown here: 14 more of kind error, 2 more of kind warning, 3 more of kind notice")
	require.True(t, strings.HasSuffix(out, wording.Deferral+"\n"))
}

// TestManyBuilds: of many builds the first are named and the rest is counted.
func TestManyBuilds(t *testing.T) {
	r := reporttest.Sample(t)
	for range 6 {
		r.Builds = append(r.Builds, r.Builds[0])
	}
	require.NotContains(t, written(t, reporttest.Run{Builds: r.Builds}), "more builds")
	r.Builds = append(r.Builds, r.Builds...)
	out := written(t, r)
	require.Contains(t, out, "%0A6 more builds%0A")
	require.Contains(t, out, "title=17 builds%3A 2 PASS%2C 14 FAIL%2C 1 could not be read::")
}

func TestStandardInput(t *testing.T) {
	c := command{kind: "error", file: manifest.Stdin, title: "t", message: "m", at: manifest.Position{Line: 1, Column: 1}}
	require.Equal(t, "::error title=t::m\n", c.String())
}

func TestHoldsNone(t *testing.T) { reporttest.HoldsNone(t, New()) }
