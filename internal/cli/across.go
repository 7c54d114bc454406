package cli

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/matrix"
)

// everyRegion as --region stands for each one that a pack examines.
const everyRegion = "all"

// regions returns the codes of --region where it names more than one.
func (j *judging) regions() (codes []string, several bool) {
	for code := range strings.SplitSeq(j.region, ",") {
		if code = strings.TrimSpace(code); code != "" && !slices.Contains(codes, code) {
			codes = append(codes, code)
		}
	}
	return codes, len(codes) > 1 || slices.Equal(codes, []string{everyRegion})
}

// matrixForms are the reports of a table of regions, by name.
var matrixForms = map[string]func(io.Writer, []matrix.Build) error{
	"json": matrix.JSON, "markdown": matrix.Markdown, "csv": matrix.CSV,
}

// across judges each build in several regions and prints one table for each.
func (a *app) across(cmd *cobra.Command, args []string, f checkFlags, codes []string) error {
	switch {
	case len(args) == 0:
		return errors.New("name at least one manifest or folder, or - for standard input")
	case f.inputOnly || f.watch || f.record:
		return errors.New("a table of regions judges files once: leave out --input-only, --watch and --record-digests")
	}
	writes, err := readWrites(f.writes, []string{"json", "markdown", "csv"})
	if err != nil {
		return err
	}
	one := f.judging
	one.region = ""
	c, err := a.checker(one)
	if err != nil {
		return err
	}
	if slices.Contains(codes, everyRegion) {
		codes = c.Book.Regions()
	}
	manifests, err := find(cmd, c, args, f.root)
	if err != nil {
		return err
	}
	var builds []matrix.Build
	var sum report.Summary
	problems, err := each(cmd, manifests, func(m *manifest.Manifest) error {
		b, err := inRegions(cmd, c, m, codes)
		if err != nil {
			return err
		}
		for _, there := range b.Regions {
			sum.Count(there)
		}
		builds = append(builds, b)
		return nil
	})
	if err != nil {
		return err
	}
	out := cmd.OutOrStdout()
	if len(builds) > 0 {
		if !slices.ContainsFunc(writes, func(w [2]string) bool { return w[1] == stdout }) {
			if err := matrix.Text(out, builds, width(out)); err != nil {
				return fmt.Errorf("writing the table: %w", err)
			}
		}
		for _, w := range writes {
			content := func(to io.Writer) error { return matrixForms[w[0]](to, builds) }
			if w[1] == stdout {
				err = content(out)
			} else {
				err = save(w[1], content)
			}
			if err != nil {
				return err
			}
		}
	}
	return outcome(cmd, failure(sum), problems)
}

func inRegions(cmd *cobra.Command, c *check.Checker, m *manifest.Manifest, codes []string) (matrix.Build, error) {
	reports, err := c.Across(cmd.Context(), m, codes)
	if err != nil {
		return matrix.Build{}, err
	}
	var b matrix.Build
	for _, r := range reports {
		b.Regions = append(b.Regions, report.Build{Report: r, Items: items(c, r)})
		r.Input = nil // the largest part, and no report needs it
	}
	return b, nil
}
