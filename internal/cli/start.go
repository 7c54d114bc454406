package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/start"
)

// firstQuestions is how many things a person is asked to find out at once.
const firstQuestions = 10

func (a *app) startCommand() *cobra.Command {
	var out, from string
	cmd := &cobra.Command{
		Use:   "start NAME | start --from FILE",
		Short: "Write a first manifest, and say what to find out first",
		Long: `Writes a manifest with the name of the build and, as comments, every section
and key with its meaning and an example. --from appends to a copy of an
existing manifest the sections that it does not have.`,
		Example: "  trialfit start \"Ridge patrol truck\" --out ridge" + manifest.Suffix,
		RunE: func(cmd *cobra.Command, args []string) error {
			name := strings.TrimSpace(strings.Join(args, " "))
			if (name == "") == (from == "") {
				return errors.New("give the build's name, or a manifest with --from")
			}
			if out == "" {
				return errors.New("name the file to write with --out, - for standard output")
			}
			return a.start(cmd, name, from, out)
		},
	}
	cmd.Flags().StringVar(&out, "out", "", "file to write; its name ends in "+manifest.Suffix)
	cmd.Flags().StringVar(&from, "from", "", "existing manifest to take over")
	return cmd
}

func (a *app) start(cmd *cobra.Command, name, from, out string) error {
	c, err := a.checker(judging{blockOn: "must"})
	if err != nil {
		return err
	}
	text, err := firstText(c, name, from)
	if err != nil {
		return err
	}
	if out == manifest.Stdin {
		_, err := cmd.OutOrStdout().Write(text)
		return err
	}
	if !strings.HasSuffix(out, manifest.Suffix) {
		return fmt.Errorf("--out %q is not a manifest's name: let it end in %s", out, manifest.Suffix)
	}
	if _, err := os.Lstat(out); err == nil {
		return fmt.Errorf("--out %q exists already: name another file, nothing is overwritten", out)
	}
	if err := save(out, func(w io.Writer) error { _, err := w.Write(text); return err }); err != nil {
		return err
	}
	return printQuestions(cmd, c, out, text)
}

func firstText(c *check.Checker, name, from string) ([]byte, error) {
	if from == "" {
		return start.Manifest(c.Book.Form.Shape(), name)
	}
	m, err := c.Loader.File(from)
	if err != nil {
		return nil, err
	}
	lacking, err := start.Lacking(c.Book.Form.Shape(), m.Data)
	if err != nil {
		return nil, err
	}
	return append(bytes.TrimRight(m.Data, "\n"), append([]byte("\n"), lacking...)...), nil
}

func printQuestions(cmd *cobra.Command, c *check.Checker, out string, text []byte) error {
	m, err := c.Loader.Read(bytes.NewReader(text), filepath.ToSlash(out), filepath.Dir(out))
	if err != nil {
		return err
	}
	r, err := c.Check(cmd.Context(), m)
	if err != nil {
		return err
	}
	w := cmd.OutOrStdout()
	questions, all := start.Questions(m, items(c, r), firstQuestions)
	fmt.Fprintf(w, "wrote %s\n\nWhat to find out first for %s (%d of %d):\n", filepath.ToSlash(out), r.Verdict.Hold, len(questions), all)
	for i, q := range questions {
		fmt.Fprintf(w, "%3d. %s\n     %s\n", i+1, q.Path, q.Ask)
	}
	return nil
}
