package thread

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestCounterpart(t *testing.T) {
	for written, want := range map[string]string{
		"1/2 NPT internal": "1/2-14 NPT external",
		"1/8 NPT external": "1/8-27 NPT internal",
		"Rc 1/8 internal":  "R 1/8 external",
		"R 1/4 external":   "Rc 1/4 internal",
		"G 1/4 external":   "G 1/4 internal",
		"M14x1.5 internal": "M14×1.5 external",
		"-6 JIC external":  "-6 JIC 37 (9/16-18) internal",
		"-6 ORB internal":  "-6 ORB (9/16-18) external",
	} {
		thread, err := Parse(written)
		require.NoError(t, err)
		got, ok := thread.Counterpart()
		require.True(t, ok, written)
		require.Equal(t, want, got.Name(), written)
		require.True(t, Mates(thread, got) || Mates(got, thread))
	}
}
