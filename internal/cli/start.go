package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/start"
	"trialfit/schemas"
)

// firstQuestions is how many things a person is asked to find out at once.
const firstQuestions = 10

func (a *app) startCommand() *cobra.Command {
	var out, from, schema string
	cmd := &cobra.Command{
		Use:   "start NAME | start --from FILE",
		Short: "Write a first manifest, and say what to find out first",
		Long: `Writes a manifest with the name of the build and, as comments, every section
and key with its meaning and an example. --from appends to a copy of an
existing manifest the sections that it does not have. --schema also writes the
manifest's JSON Schema to a file, and a first line that leads a YAML editor
there: it completes and explains what you type.`,
		Example: "  trialfit start \"Ridge patrol truck\" --out ridge" + manifest.Suffix,
		RunE: func(cmd *cobra.Command, args []string) error {
			name := strings.TrimSpace(strings.Join(args, " "))
			if (name == "") == (from == "") {
				return errors.New("give the build's name, or a manifest with --from")
			}
			if out == "" {
				return errors.New("name the file to write with --out, - for standard output")
			}
			return a.start(cmd, name, from, out, schema)
		},
	}
	cmd.Flags().StringVar(&out, "out", "", "file to write; its name ends in "+manifest.Suffix)
	cmd.Flags().StringVar(&from, "from", "", "existing manifest to take over")
	cmd.Flags().StringVar(&schema, "schema", "", "also write the manifest's JSON Schema to this file, for editors")
	return cmd
}

func (a *app) start(cmd *cobra.Command, name, from, out, schema string) error {
	c, err := a.checker(judging{blockOn: "must"})
	if err != nil {
		return err
	}
	text, err := firstText(c, name, from)
	if err != nil {
		return err
	}
	if out != manifest.Stdin {
		if !strings.HasSuffix(out, manifest.Suffix) {
			return fmt.Errorf("--out %q is not a manifest's name: let it end in %s", out, manifest.Suffix)
		}
		if _, err := os.Lstat(out); err == nil {
			return fmt.Errorf("--out %q exists already: name another file, nothing is overwritten", out)
		}
	}
	if schema != "" {
		if text, err = forEditors(text, out, schema); err != nil {
			return err
		}
	}
	if out == manifest.Stdin {
		_, err := cmd.OutOrStdout().Write(text)
		return err
	}
	if err := save(out, func(w io.Writer) error { _, err := w.Write(text); return err }); err != nil {
		return err
	}
	return printQuestions(cmd, c, out, text)
}

// forEditors writes the manifest's schema and returns the text with a first
// line that leads there.
func forEditors(text []byte, out, file string) ([]byte, error) {
	if filepath.Ext(file) != ".json" {
		return nil, fmt.Errorf("--schema %q is not a schema's name: let it end in .json", file)
	}
	folder := "."
	if out != manifest.Stdin {
		folder = filepath.Dir(out)
	}
	way, err := filepath.Rel(folder, file)
	if err != nil {
		return nil, fmt.Errorf("finding the way from %s to --schema %q: %w", out, file, err)
	}
	schema, err := fs.ReadFile(schemas.FS, "manifest.json")
	if err != nil {
		return nil, err
	}
	if err := save(file, func(w io.Writer) error { _, err := w.Write(schema); return err }); err != nil {
		return nil, err
	}
	return start.Modeline(text, filepath.ToSlash(way)), nil
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
	fmt.Fprintf(w, "wrote %s\n", filepath.ToSlash(out))
	stages := report.Build{Report: r, Items: items(c, r)}.ToFindOut()
	if len(stages) == 0 {
		return nil
	}
	next := stages[0]
	shown := next.Asks[:min(len(next.Asks), firstQuestions)]
	fmt.Fprintf(w, "\nWhat to find out first, for %s (%d of %d):\n", next.Hold, len(shown), len(next.Asks))
	for i, ask := range shown {
		fmt.Fprintf(w, "%3d. %s\n     %s\n", i+1, ask.Path, ask.What)
	}
	return nil
}
