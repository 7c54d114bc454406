package cli

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
)

// output is one --write FORMAT=FILE.
type output struct{ format, file string }

var formats = []string{"json"}

func parseWrites(flags []string) ([]output, error) {
	outputs := make([]output, len(flags))
	for i, flag := range flags {
		format, file, ok := strings.Cut(flag, "=")
		if !ok || file == "" {
			return nil, fmt.Errorf("--write %q names no file: write it as FORMAT=FILE", flag)
		}
		if format != "json" {
			return nil, fmt.Errorf("--write %q: no format is called %q; there is %s", flag, format, strings.Join(formats, ", "))
		}
		outputs[i] = output{format, file}
	}
	return outputs, nil
}

// write writes the whole file or none of it.
func (o output) write(content func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(o.file), ".trialfit-*")
	if err != nil {
		return fmt.Errorf("writing %s: %w", o.file, err)
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
		return fmt.Errorf("writing %s: %w", o.file, err)
	}
	if err := f.Close(); err != nil {
		return fmt.Errorf("writing %s: %w", o.file, err)
	}
	if err := os.Rename(f.Name(), o.file); err != nil {
		return fmt.Errorf("writing %s: %w", o.file, err)
	}
	return nil
}
