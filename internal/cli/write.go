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

// format is a kind of report. Its builds are kept in body until it is written;
// spreads are the default ones in force.
type format struct {
	name string
	form func(body *report.Spool, spreads []*rulebook.Limit) report.Form
}

// formats are the reports that can be written, by the name they are asked for.
var formats = []format{
	{"json", func(body *report.Spool, spreads []*rulebook.Limit) report.Form { return json.New(body, spreads) }},
	{"sarif", func(body *report.Spool, _ []*rulebook.Limit) report.Form { return sarif.New(body) }},
	{"junit", func(body *report.Spool, _ []*rulebook.Limit) report.Form { return junit.New(body) }},
	{"markdown", func(*report.Spool, []*rulebook.Limit) report.Form { return markdown.New() }},
	{"annotations", func(*report.Spool, []*rulebook.Limit) report.Form { return annotations.New() }},
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

// drafts are the reports of a run while builds are added to them.
type drafts []*draft

type draft struct {
	output
	body report.Spool
	form report.Form
}

func newDrafts(outputs []output, spreads []*rulebook.Limit) drafts {
	all := make(drafts, len(outputs))
	for i, o := range outputs {
		d := &draft{output: o}
		d.form = o.form(&d.body, spreads)
		all[i] = d
	}
	return all
}

func (all drafts) add(b report.Build) error {
	for _, d := range all {
		if err := d.form.Add(b); err != nil {
			return err
		}
	}
	return nil
}

// write prints each report or saves it, once all builds are added.
func (all drafts) write(out io.Writer, s report.Summary) error {
	for _, d := range all {
		content := func(w io.Writer) error { return d.form.End(w, s) }
		var err error
		if d.file == stdout {
			err = content(out)
		} else {
			err = save(d.file, content)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func (all drafts) close() {
	for _, d := range all {
		d.body.Close()
	}
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
