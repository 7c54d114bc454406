package manifest_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
)

// BenchmarkLoad reads the example from memory.
func BenchmarkLoad(b *testing.B) {
	l := newLoader(b)
	text := readFile(b, example)
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		_, err := l.Read(strings.NewReader(text), "example"+manifest.Suffix, ".")
		require.NoError(b, err)
	}
}

// BenchmarkLoadLong reads manifests of ten times the length of each other:
// the time for a byte stays about the same.
func BenchmarkLoadLong(b *testing.B) {
	l := newLoader(b)
	for _, items := range []int{100, 1000, 10000} {
		var text strings.Builder
		text.WriteString("trialfit: 1\nbuild: {}\nevidence:\n")
		for i := range items {
			fmt.Fprintf(&text, "  - {id: e%d, kind: letter, file: e.txt, shows: [{id: s, path: electrical.loads.l%d.current, value: 5 A}]}\n", i, i)
		}
		text.WriteString("electrical:\n  loads:\n")
		for i := range items {
			fmt.Fprintf(&text, "    - {id: l%d, current: {value: 5 A, evidence: [e%d]}}\n", i, i)
		}
		b.Run(fmt.Sprint(items), func(b *testing.B) {
			b.SetBytes(int64(text.Len()))
			for b.Loop() {
				_, err := l.Read(strings.NewReader(text.String()), "long"+manifest.Suffix, ".")
				require.NoError(b, err)
			}
		})
	}
}
