package rulebook

import (
	"archive/tar"
	"compress/gzip"
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strings"
)

// WriteBundle writes everything in force as a standard OPA bundle: a stock OPA
// server loaded with it takes the same decision. Same book, same bytes.
func (b *Book) WriteBundle(w io.Writer) error {
	data, err := b.data()
	if err != nil {
		return err
	}
	rawData, err := Canonical(data)
	if err != nil {
		return err
	}
	manifest, err := Canonical(map[string]any{
		"roots":        []string{"lib", "verdict", "rules", "regions", "local", "catalogue", "limits", "holds", "readings"},
		"rego_version": 1,
		"metadata":     map[string]any{"trialfit": Version, "packs": b.Packs, "decision": Query},
	})
	if err != nil {
		return err
	}
	files := map[string][]byte{"/.manifest": manifest, "/data.json": rawData}
	for _, s := range b.sources {
		files["/"+s.name] = s.data
	}
	names := make([]string, 0, len(files))
	for name := range files {
		names = append(names, name)
	}
	slices.Sort(names)
	zipped := gzip.NewWriter(w)
	archive := tar.NewWriter(zipped)
	for _, name := range names {
		header := &tar.Header{Name: name, Mode: 0o644, Size: int64(len(files[name])), Format: tar.FormatUSTAR}
		if err := archive.WriteHeader(header); err != nil {
			return fmt.Errorf("writing the bundle: %w", err)
		}
		if _, err := archive.Write(files[name]); err != nil {
			return fmt.Errorf("writing the bundle: %w", err)
		}
	}
	if err := archive.Close(); err != nil {
		return fmt.Errorf("writing the bundle: %w", err)
	}
	if err := zipped.Close(); err != nil {
		return fmt.Errorf("writing the bundle: %w", err)
	}
	return nil
}

// MarshalCatalogue writes the catalogue as it is embedded.
func MarshalCatalogue(list []*Meta) ([]byte, error) {
	out, err := json.MarshalIndent(list, "", "  ")
	if err != nil {
		return nil, fmt.Errorf("writing the catalogue: %w", err)
	}
	return append([]byte(strings.ReplaceAll(string(out), `\u003e`, ">")), '\n'), nil
}
