package cli

import (
	"io"
	"runtime"
	"testing"

	"github.com/spf13/cobra"
	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report/reporttest"
)

// TestEachHoldsNone: when a manifest is judged, nothing holds those before it,
// nor what was found of them, though every report tells of them all.
func TestEachHoldsNone(t *testing.T) {
	cmd := &cobra.Command{}
	cmd.SetContext(t.Context())
	cmd.SetErr(io.Discard)
	c, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	sources, err := find(cmd, c, []string{"../../examples"}, ".")
	require.NoError(t, err)
	require.Greater(t, len(sources), 2)

	var outputs []output
	for _, f := range append([]format{printed(cmd, checkFlags{})}, formats...) {
		outputs = append(outputs, output{f, stdout})
	}
	reports := newDrafts(outputs, c.Book.Spreads())
	defer reports.close()
	var held []func() bool
	none := func() {
		runtime.GC()
		for n, still := range held {
			require.False(t, still(), n)
		}
	}
	problems, err := each(cmd, sources, func(m *manifest.Manifest) error {
		none()
		b, err := judge(cmd, c, m)
		if err != nil {
			return err
		}
		held = append(held, reporttest.Held(m), reporttest.Held(b.Report), reporttest.Held(b.Report.Verdict), reporttest.Held(&b.Items[0]))
		return reports.add(b)
	})
	require.NoError(t, err)
	require.Empty(t, problems)
	require.Len(t, held, 4*len(sources))
	none()
	runtime.KeepAlive(reports)
}

// TestEachTellsAllProblems: manifests that can't be read keep no other from
// being handed on, and are told before those in which a fault is found later.
func TestEachTellsAllProblems(t *testing.T) {
	cmd := &cobra.Command{}
	cmd.SetErr(io.Discard)
	read := func(name string) source {
		return func() (*manifest.Manifest, error) { return &manifest.Manifest{File: name}, nil }
	}
	fault := func(name string) manifest.Problems { return manifest.Problems{{File: name, Message: "fault"}} }
	var seen []string
	problems, err := each(cmd, []source{
		read("a"), read("refused"), func() (*manifest.Manifest, error) { return nil, fault("unread") }, read("b"),
	}, func(m *manifest.Manifest) error {
		seen = append(seen, m.File)
		if m.File == "refused" {
			return fault(m.File)
		}
		return nil
	})
	require.NoError(t, err)
	require.Equal(t, []string{"a", "refused", "b"}, seen)
	require.Equal(t, []error{fault("unread"), fault("refused")}, problems)

	_, err = each(cmd, []source{read("a"), read("b")}, func(m *manifest.Manifest) error { return io.ErrUnexpectedEOF })
	require.ErrorIs(t, err, io.ErrUnexpectedEOF)
}
