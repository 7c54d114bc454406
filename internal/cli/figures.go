package cli

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/input"
	"trialfit/internal/report/figuresheet"
)

func (a *app) figuresCommand() *cobra.Command {
	var format, root string
	cmd := &cobra.Command{
		Use:     "figures [flags] FILE|FOLDER|- ...",
		Short:   "Print the calculation sheet of a build",
		Example: "  trialfit figures examples/patrol-truck/patrol-truck.build.yaml",
		RunE: func(cmd *cobra.Command, args []string) error {
			if format != "text" && format != "json" {
				return fmt.Errorf("--format %q is not a form of the sheet: text or json", format)
			}
			return a.figures(cmd, args, format, root)
		},
	}
	cmd.Flags().StringVar(&format, "format", "text", "text or json")
	cmd.Flags().StringVar(&root, "root", ".", "folder of the evidence for a manifest read from standard input")
	return cmd
}

func (a *app) figures(cmd *cobra.Command, args []string, format, root string) error {
	if len(args) == 0 {
		return errors.New("name at least one manifest or folder, or - for standard input")
	}
	packs, err := a.localPacks()
	if err != nil {
		return err
	}
	c, err := check.New(check.Options{}, packs...)
	if err != nil {
		return err
	}
	manifests, problems, err := load(cmd, c, args, root)
	if err != nil {
		return err
	}
	var sheets []figuresheet.Sheet
	for _, m := range manifests {
		sheets = append(sheets, figuresheet.Sheet{Manifest: m, Computed: input.Compute(c.Figures, m)})
	}
	if format == "json" {
		err = figuresheet.JSON(cmd.OutOrStdout(), sheets)
	} else {
		for _, s := range sheets {
			err = errors.Join(err, s.Text(cmd.OutOrStdout(), width(cmd.OutOrStdout())))
		}
	}
	if err != nil {
		return err
	}
	return outcome(cmd, nil, problems)
}
