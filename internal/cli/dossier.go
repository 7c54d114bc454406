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
	"trialfit/internal/dossier"
	"trialfit/internal/dossier/page"
	"trialfit/internal/dossier/paper"
	"trialfit/internal/report"
	"trialfit/internal/rulebook"
)

type dossierFlags struct {
	judging
	out, reader string
}

// reader is whom a dossier is for.
type reader struct {
	write func(report.Build, *rulebook.Book) (*dossier.Document, error)
	hold  string // at which it is final
}

var readers = map[string]reader{
	"inspector": {dossier.Inspector, dossier.AtInspection},
	"owner":     {dossier.Owner, dossier.AtHandover},
}

// papers are the forms of a dossier by the end of the file's name.
var papers = map[string]func(io.Writer, *dossier.Document) error{".html": page.Write, ".pdf": paper.Write}

func (a *app) dossierCommand() *cobra.Command {
	var f dossierFlags
	cmd := &cobra.Command{
		Use:   "dossier [flags] --out FILE.pdf|FILE.html|FOLDER BUILD" + ".build.yaml",
		Short: "Write the summary of a build for an inspector, or the owner's book",
		Long: `Writes what an inspector needs who has ten minutes: the vehicle, what was
changed, what the region asks for and how it stands, figures with their limits,
readings, papers, what is open, and room for findings. It is judged at
inspection, and marked as a draft on every page unless it passes there.

--for owner writes the hand-over book instead, judged at handover: service
parts, fluids, torques to check again, fuses, gauges, limits, cautions.

--out chooses the form by its name; a folder gets both. Paper and units are
those of the region. Evidence that can't be shown is told and stops nothing.

Exit status: 0 written, a draft too; 2 it could not be written.`,
		Example: "  trialfit dossier --out patrol-truck.pdf examples/patrol-truck/patrol-truck.build.yaml",
		RunE:    func(cmd *cobra.Command, args []string) error { return a.dossier(cmd, args, f) },
	}
	f.registerWhen(cmd)
	cmd.Flags().Lookup("hold").Usage = "judge at this hold point instead of inspection, or handover for the owner"
	cmd.Flags().Lookup("region").Usage = "judge for this region instead of the one in the manifest"
	cmd.Flags().StringVar(&f.out, "out", "", "file to write, .pdf or .html, or a folder for both")
	cmd.Flags().StringVar(&f.reader, "for", "inspector", "who reads it: inspector or owner")
	complete(cmd, "for", "inspector", "owner")
	return cmd
}

func (a *app) dossier(cmd *cobra.Command, args []string, f dossierFlags) error {
	reader, known := readers[f.reader]
	switch {
	case len(args) != 1:
		return fmt.Errorf("a dossier is that of one build: %d were named", len(args))
	case f.out == "":
		return errors.New("--out names no file: write it as --out FILE.pdf, --out FILE.html, or a folder for both")
	case !known:
		return fmt.Errorf("--for %q reads no dossier: inspector or owner", f.reader)
	}
	if _, several := f.regions(); several {
		return fmt.Errorf("--region %q names more than one: a dossier is for one", f.region)
	}
	if f.hold == "" {
		f.hold = reader.hold
	}
	options, err := f.options()
	if err != nil {
		return err
	}
	packs, err := a.localPacks()
	if err != nil {
		return err
	}
	options.TakeRefused = true
	c, err := check.New(options, packs...)
	if err != nil {
		return err
	}
	manifests, problems, err := load(cmd, c, args, ".")
	switch {
	case err != nil:
		return err
	case len(problems) > 0:
		return outcome(cmd, nil, problems)
	case len(manifests) != 1:
		return fmt.Errorf("a dossier is that of one build: %d were found", len(manifests))
	}
	b, err := judge(cmd, c, manifests[0])
	if err != nil {
		return err
	}
	d, err := reader.write(b, c.Book)
	if err != nil {
		return err
	}
	outs, err := f.files(b.Report.Manifest.Name())
	if err != nil {
		return err
	}
	for _, file := range outs {
		draw := papers[strings.ToLower(filepath.Ext(file))]
		if err := save(file, func(w io.Writer) error { return draw(w, d) }); err != nil {
			return err
		}
		line := "written: " + filepath.ToSlash(file)
		if d.Draft != "" {
			line += " (" + d.Draft + ")"
		}
		fmt.Fprintln(cmd.OutOrStdout(), line)
	}
	return nil
}

// files are those that --out asks for.
func (f dossierFlags) files(build string) ([]string, error) {
	if papers[strings.ToLower(filepath.Ext(f.out))] != nil {
		return []string{f.out}, nil
	}
	info, err := os.Stat(f.out)
	if err != nil && !strings.HasSuffix(f.out, "/") || err == nil && !info.IsDir() {
		return nil, fmt.Errorf("--out %q is neither a folder nor a file that ends in .pdf or .html", f.out)
	}
	if err := os.MkdirAll(f.out, 0o755); err != nil {
		return nil, fmt.Errorf("making the folder for the dossier: %w", err)
	}
	var outs []string
	for ext := range papers {
		outs = append(outs, filepath.Join(f.out, build+"."+f.reader+ext))
	}
	slices.Sort(outs)
	return outs, nil
}
