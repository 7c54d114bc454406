package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"trialfit/internal/figures/sheet"
	"trialfit/internal/input"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// Files returns every generated file by its path below root.
func Files(root string) (map[string][]byte, error) {
	rules, err := rulebook.Build(os.DirFS(filepath.Join(root, "policies")))
	if err != nil {
		return nil, fmt.Errorf("reading the rules: %w", err)
	}
	catalogue, err := rulebook.MarshalCatalogue(rules)
	if err != nil {
		return nil, err
	}
	inputSchema, err := input.Schema(schema.Manifest(), sheet.All())
	if err != nil {
		return nil, err
	}
	return map[string][]byte{
		filepath.Join(root, "policies", "catalogue.json"): catalogue,
		filepath.Join(root, "policies", "README.md"):      readme(rules),
		filepath.Join(root, "schemas", "input.json"):      inputSchema,
	}, nil
}

// readme is the catalogue as a person reads it, area by area.
func readme(rules []*rulebook.Meta) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "# Rules shipped with trialfit\n\nGenerated from the rules themselves by `go run ./internal/generate`; `trialfit rules show ID` says more of each.\n")
	area := ""
	for _, r := range rules {
		if r.Area != area {
			area = r.Area
			fmt.Fprintf(&b, "\n## %s\n\n| rule | requires that | level | from | rests on |\n|---|---|---|---|---|\n", heading(r))
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s | %s |\n", r.ID, cell(r.Title), r.Level, r.Hold, r.Basis)
	}
	fmt.Fprintf(&b, "\nApproval of a vehicle always rests with the local authority.\n")
	return b.Bytes()
}

func heading(r *rulebook.Meta) string {
	if r.Region != "" {
		return "region " + r.Region
	}
	return r.Area
}

func cell(s string) string { return strings.ReplaceAll(s, "|", `\|`) }
