package cli

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/figuresheet"
	"trialfit/internal/report/pictures"
)

type figuresFlags struct {
	judging
	format, root, svg string
	show              []string
}

// sheetFormats are the forms of the calculation sheet.
var sheetFormats = []string{"text", "json", "csv"}

func (a *app) figuresCommand() *cobra.Command {
	var f figuresFlags
	cmd := &cobra.Command{
		Use:   "figures [flags] FILE|FOLDER|- ...",
		Short: "Print the calculation sheet of a build",
		Long: `Prints every engineering figure of a build, by discipline: formula, the same
with the numbers put in, range in the builder's units and in SI, the limits that
rules hold it against with what is left, the size that would do where one is too
small, each input with its line, source, and what is missing where there is no
value.

--format csv is a table for a spreadsheet, a row for each figure and subject:
UTF-8, commas, CRLF at the end of a row. Text that a spreadsheet would run as a
formula begins with an apostrophe.

--svg draws, in place of the sheet: axle loads, road speeds in every gear, joint
angles, temperatures of the charge, losses of the cranking loop and of the
exhaust. Each has its values as ranges. What could not be drawn is said, with
what is missing.`,
		Example: `  trialfit figures examples/patrol-truck/patrol-truck.build.yaml
  trialfit figures --show mass.axle_load_front_laden --show electrical examples/patrol-truck`,
		RunE: func(cmd *cobra.Command, args []string) error { return a.figures(cmd, args, f) },
	}
	f.registerWhen(cmd)
	cmd.Flags().StringVar(&f.format, "format", "text", "text, json or csv")
	cmd.Flags().StringArrayVar(&f.show, "show", nil, "only this figure, by its id, or this discipline; repeatable")
	cmd.Flags().StringVar(&f.root, "root", ".", "folder of the evidence for a manifest read from standard input")
	cmd.Flags().StringVar(&f.svg, "svg", "", "draw the pictures of one build into this folder instead")
	complete(cmd, "format", sheetFormats...)
	return cmd
}

func (a *app) figures(cmd *cobra.Command, args []string, f figuresFlags) error {
	if len(args) == 0 {
		return errors.New("name at least one manifest or folder, or - for standard input")
	}
	if !slices.Contains(sheetFormats, f.format) {
		return fmt.Errorf("--format %q is not a form of the sheet: %s", f.format, strings.Join(sheetFormats, ", "))
	}
	if f.svg != "" && (cmd.Flags().Changed("format") || cmd.Flags().Changed("show")) {
		return errors.New("--svg draws in place of the sheet: leave out --format and --show")
	}
	c, err := a.checker(f.judging)
	if err != nil {
		return err
	}
	var ids []string
	if len(f.show) > 0 {
		if ids, err = figuresheet.Select(c.Figures, f.show); err != nil {
			return fmt.Errorf("--show %w", err)
		}
	}
	manifests, problems, err := load(cmd, c, args, f.root)
	if err != nil {
		return err
	}
	if len(manifests) > 1 && f.format == "csv" {
		return fmt.Errorf("--format csv is the table of one build: %d were named", len(manifests))
	}
	if len(manifests) > 1 && f.svg != "" {
		return fmt.Errorf("--svg is a folder for the pictures of one build: %d were named", len(manifests))
	}
	var sheets []figuresheet.Sheet
	for _, m := range manifests {
		b, err := judge(cmd, c, m)
		var faults manifest.Problems
		switch {
		case errors.As(err, &faults):
			problems = append(problems, err)
		case err != nil:
			return err
		default:
			sheets = append(sheets, figuresheet.Sheet{Build: b, Figures: ids})
		}
	}
	out := cmd.OutOrStdout()
	switch {
	case f.svg != "":
		for _, s := range sheets {
			err = drawPictures(out, s.Build, f.svg)
		}
	case f.format == "json":
		err = figuresheet.JSON(out, sheets)
	case f.format == "csv":
		for _, s := range sheets {
			err = s.CSV(out)
		}
	default:
		for i, s := range sheets {
			if i > 0 {
				fmt.Fprint(out, "\n", strings.Repeat("─", 40), "\n\n")
			}
			err = errors.Join(err, s.Text(out, width(out)))
		}
	}
	if err != nil {
		return err
	}
	return outcome(cmd, nil, problems)
}

// drawPictures writes what can be drawn into a folder, and tells what can't.
func drawPictures(out io.Writer, b report.Build, dir string) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("making the folder for the pictures: %w", err)
	}
	for _, p := range pictures.All(b.Report.Manifest, b.Report.Computed) {
		if !p.Drawn() {
			fmt.Fprintf(out, "not drawn: %s; lacking: %s\n", p.Title, strings.Join(p.Missing, ", "))
			continue
		}
		file := filepath.Join(dir, p.Name+".svg")
		write := func(w io.Writer) error {
			_, err := io.WriteString(w, p.File())
			return err
		}
		if err := save(file, write); err != nil {
			return err
		}
		fmt.Fprintf(out, "drawn: %s\n", filepath.ToSlash(file))
	}
	return nil
}

// judge gives a loaded build with its findings explained.
func judge(cmd *cobra.Command, c *check.Checker, m *manifest.Manifest) (report.Build, error) {
	r, err := c.Check(cmd.Context(), m)
	if err != nil {
		return report.Build{}, err
	}
	r.Input = nil // the largest part, and no report needs it
	return report.Build{Report: r, Items: items(c, r)}, nil
}
