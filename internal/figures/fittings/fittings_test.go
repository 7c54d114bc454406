package fittings_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fittings"
	"trialfit/internal/thread"
)

// Outside diameters and threads per inch as printed at
// http://piping-designer.com/National_Pipe_Thread (NPT) and
// https://code.dcldesign.co.uk/index.php/Pipework_-_BSP_threads (BSP).
func TestJointsPublished(t *testing.T) {
	const inch = 0.0254
	for _, c := range []struct {
		inner, outer      string
		innerD, outerD    float64 // m
		innerTPI, outerPI float64
	}{
		{"1/8 NPT internal", "R 1/8 external", 0.405 * inch, 9.728e-3, 27, 28},
		{"1/2 NPT internal", "R 1/2 external", 0.840 * inch, 20.955e-3, 14, 14},
		{"3/8 NPT internal", "1/4 NPT external", 0.675 * inch, 0.540 * inch, 18, 18},
		{"1 NPT internal", "G 1 external", 1.315 * inch, 33.249e-3, 11.5, 11},
	} {
		gap, pitch := joint(t, c.inner, c.outer)
		assert.InDelta(t, max(c.innerD-c.outerD, c.outerD-c.innerD), gap, 1e-9, "%s, %s", c.inner, c.outer)
		p := 6 * (inch/c.innerTPI - inch/c.outerPI)
		assert.InDelta(t, max(p, -p), pitch, 1e-9, "%s, %s", c.inner, c.outer)
	}
}

// Common practice: a 3/8 NPT coolant sender sits in a 1/2 NPT port through a
// 1/2 male × 3/8 female bushing; both joints are of one size.
func TestBushing(t *testing.T) {
	for _, size := range []string{"1/2 NPT", "3/8 NPT"} {
		gap, pitch := joint(t, size+" internal", size+" external")
		assert.Zero(t, gap)
		assert.Zero(t, pitch)
	}
}

// Worked by another program: 1/8 NPT and 1/8 BSP run 0.2016 mm apart in six
// threads.
func TestPitchErrorRegression(t *testing.T) {
	_, pitch := joint(t, "1/8 NPT internal", "R 1/8 external")
	assert.InDelta(t, 0.2016e-3, pitch, 5e-8)
}

func TestRanges(t *testing.T) {
	for _, f := range fittings.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// joint returns the gap of diameters and the error of pitch of two threads, in m.
func joint(t *testing.T, inner, outer string) (gap, pitch float64) {
	t.Helper()
	values := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{},
		Lists:  map[string][]string{"fittings": {"coolant"}, "fittings.coolant.joints": {"end"}},
	}
	for end, text := range map[string]string{"inner": inner, "outer": outer} {
		size, err := thread.Parse(text)
		require.NoError(t, err)
		path := "fittings.coolant.joints.end." + end
		values.Leaves[path+".major"] = figurestest.Exact(size.Major)
		values.Leaves[path+".pitch"] = figurestest.Exact(size.Pitch)
	}
	var found []float64
	for _, f := range fittings.Figures() {
		results, _ := figures.Evaluate(f, values)
		require.Len(t, results, 1)
		require.True(t, results[0].Ok(), "%+v", results[0])
		assert.Equal(t, "fittings.coolant.joints.end", results[0].Subject)
		found = append(found, results[0].Low)
	}
	return found[0], found[1]
}
