package cli

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"trialfit/internal/report"
	"trialfit/internal/report/annotations"
	"trialfit/internal/report/json"
	"trialfit/internal/report/junit"
	"trialfit/internal/report/markdown"
	"trialfit/internal/report/sarif"
	"trialfit/internal/rulebook"
)

// output is one --write FORMAT=FILE.
type output struct {
	format
	file string
}

type format struct {
	name  string
	write func(io.Writer, report.Run, []*rulebook.Limit) error
}

// formats are the reports that can be written, by the name they are asked for.
var formats = []format{
	{"json", json.Write},
	{"sarif", run(sarif.Write)},
	{"junit", run(junit.Write)},
	{"markdown", run(markdown.Write)},
	{"annotations", run(annotations.Write)},
}

// run is the writer of a format that does not list the default spreads.
func run(write func(io.Writer, report.Run) error) func(io.Writer, report.Run, []*rulebook.Limit) error {
	return func(w io.Writer, r report.Run, _ []*rulebook.Limit) error { return write(w, r) }
}

func formatNames() string {
	names := make([]string, len(formats))
	for i, f := range formats {
		names[i] = f.name
	}
	return strings.Join(names, ", ")
}

// stdout as a FILE puts a report in the place of the text.
const stdout = "-"

func parseWrites(flags []string) ([]output, error) {
	named, err := readWrites(flags, strings.Split(formatNames(), ", "))
	if err != nil {
		return nil, err
	}
	outputs := make([]output, len(named))
	for i, w := range named {
		n := slices.IndexFunc(formats, func(f format) bool { return f.name == w[0] })
		outputs[i] = output{formats[n], w[1]}
	}
	return outputs, nil
}

// readWrites splits each FORMAT=FILE; the formats are those accepted here.
func readWrites(flags, accepted []string) ([][2]string, error) {
	var named [][2]string
	for _, flag := range flags {
		name, file, ok := strings.Cut(flag, "=")
		if !ok || file == "" {
			return nil, fmt.Errorf("--write %q names no file: write it as FORMAT=FILE", flag)
		}
		if !slices.Contains(accepted, name) {
			return nil, fmt.Errorf("--write %q: no format is called %q; there is %s", flag, name, strings.Join(accepted, ", "))
		}
		if slices.ContainsFunc(named, func(w [2]string) bool { return w[1] == file }) {
			return nil, fmt.Errorf("--write %q: %s is written once only", flag, file)
		}
		named = append(named, [2]string{name, file})
	}
	return named, nil
}

// save writes the whole file or none of it.
func save(file string, content func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(file), ".trialfit-*")
	if err != nil {
		return fmt.Errorf("writing %s: %w", file, err)
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if err := content(f); err != nil {
		return err
	}
	if err := f.Chmod(0o644); err != nil {
		return fmt.Errorf("writing %s: %w", file, err)
	}
	if err := f.Close(); err != nil {
		return fmt.Errorf("writing %s: %w", file, err)
	}
	if err := os.Rename(f.Name(), file); err != nil {
		return fmt.Errorf("writing %s: %w", file, err)
	}
	return nil
}
