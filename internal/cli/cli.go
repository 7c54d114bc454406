// Package cli holds the commands of trialfit, their flags and exit codes.
package cli

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"trialfit/internal/manifest"
)

// Exit codes.
const (
	exitPass  = 0
	exitFail  = 1 // at least one build does not pass its hold point
	exitError = 2 // something could not be run: usage, unreadable input, a broken pack
)

// errFail ends a run whose builds were judged and did not all pass.
var errFail = errors.New("at least one build does not pass")

// errTold ends a run whose problems were printed already.
var errTold = errors.New("problems were printed")

// Main runs trialfit with the arguments after the program's name and returns
// the exit code.
func Main(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	root := newRoot()
	root.SetArgs(args)
	root.SetIn(stdin)
	root.SetOut(stdout)
	root.SetErr(stderr)
	err := root.Execute()
	switch {
	case err == nil:
		return exitPass
	case errors.Is(err, errFail):
		return exitFail
	case errors.Is(err, errTold):
		return exitError
	}
	var problems manifest.Problems
	if errors.As(err, &problems) {
		fmt.Fprintln(stderr, problems)
	} else {
		fmt.Fprintln(stderr, "trialfit:", strings.ReplaceAll(err.Error(), "\n", "\ntrialfit: "))
	}
	return exitError
}

// app is what the commands share.
type app struct{ packs []string }

func newRoot() *cobra.Command {
	a := &app{}
	root := &cobra.Command{
		Use:           "trialfit",
		Short:         "Says whether an engine swap may pass its next hold point, and what stands in the way",
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          cobra.NoArgs,
		RunE:          func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	root.PersistentFlags().StringArrayVar(&a.packs, "pack", nil, "folder of a local pack of rules; repeatable")
	root.AddCommand(a.checkCommand(), a.dossierCommand(), a.figuresCommand(), a.rulesCommand(), a.startCommand(), a.prebuyCommand())
	return root
}

// emphasis says whether words may be marked: on a terminal, and unless
// NO_COLOR asks for plain text.
func emphasis(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb" && term.IsTerminal(int(f.Fd()))
}

// width is that of the terminal, at most what is comfortable to read.
func width(w io.Writer) int {
	const most = 100
	if f, ok := w.(*os.File); ok {
		if columns, _, err := term.GetSize(int(f.Fd())); err == nil && columns >= 40 {
			return min(columns, most)
		}
	}
	return 80
}
