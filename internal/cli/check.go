package cli

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/report/text"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

type checkFlags struct {
	judging
	root      string
	all       bool
	writes    []string
	inputOnly bool
	record    bool
	watch     bool
}

// judging holds the flags that say how a build is judged.
type judging struct{ hold, region, today, blockOn string }

func (j *judging) register(cmd *cobra.Command) {
	j.registerWhen(cmd)
	cmd.Flags().StringVar(&j.blockOn, "block-on", "must", "lowest level that blocks: must or should")
	complete(cmd, "block-on", "must", "should")
}

// registerWhen adds the flags of a command that judges and does not tell what
// blocks.
func (j *judging) registerWhen(cmd *cobra.Command) {
	j.blockOn = "must"
	cmd.Flags().StringVar(&j.hold, "hold", "", "judge at this hold point instead of the next one")
	cmd.Flags().StringVar(&j.region, "region", "", "judge for this region instead of the one in the manifest; several, as US-CA,US-NV, or all make a table")
	cmd.Flags().StringVar(&j.today, "today", "", "judge as of this date, as 2026-11-25; default is the clock's date")
	complete(cmd, "hold", rulebook.HoldPoints...)
}

// complete offers words for a flag to the shell.
func complete(cmd *cobra.Command, flag string, words ...string) {
	if err := cmd.RegisterFlagCompletionFunc(flag, cobra.FixedCompletions(words, cobra.ShellCompDirectiveNoFileComp)); err != nil {
		panic(err) // the flag is not declared: a mistake here
	}
}

func (j *judging) options() (check.Options, error) {
	o := check.Options{Hold: j.hold, Region: j.region, Today: j.today, BlockOn: j.blockOn}
	if o.Today == "" {
		o.Today = time.Now().Format(time.DateOnly)
	}
	if _, err := time.Parse(time.DateOnly, o.Today); err != nil {
		return o, fmt.Errorf("--today %q is not a date: write it as 2026-11-25", j.today)
	}
	if o.Hold != "" && !slices.Contains(rulebook.HoldPoints, o.Hold) {
		return o, fmt.Errorf("--hold %q is not a hold point: they are %s", o.Hold, strings.Join(rulebook.HoldPoints, ", "))
	}
	if o.BlockOn != "must" && o.BlockOn != "should" {
		return o, fmt.Errorf("--block-on %q is not a level that can block: must or should", o.BlockOn)
	}
	return o, nil
}

func (a *app) checkCommand() *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "check [flags] FILE|FOLDER|- ...",
		Short: "Judge builds at their next hold point",
		Long: `Judges each build at its next hold point and says what stands in the way.
Folders are searched for manifests, whose names end in ` + manifest.Suffix + `; "-" reads one
from standard input, its evidence below --root.

With several regions, or all that are known, it prints a table instead: where
the build could be registered, and what is in the way there first.

--write adds a report for a program: json, sarif, junit, markdown (a job
summary) or annotations (workflow commands). With "-" as its file it is printed
in place of the text.

Exit status: 0 every build passes, 1 at least one does not, 2 something could
not be run.`,
		Example: "  trialfit check examples/patrol-truck/patrol-truck.build.yaml",
		RunE: func(cmd *cobra.Command, args []string) error {
			if codes, several := f.regions(); several {
				return a.across(cmd, args, f, codes)
			}
			if f.watch {
				return a.watch(cmd, args, f)
			}
			return a.check(cmd, args, f)
		},
	}
	f.register(cmd)
	cmd.Flags().StringVar(&f.root, "root", ".", "folder of the evidence for a manifest read from standard input")
	cmd.Flags().BoolVar(&f.all, "all", false, "print every finding, those met too")
	cmd.Flags().StringArrayVar(&f.writes, "write", nil, "also write a report, as FORMAT=FILE; formats: "+formatNames())
	cmd.Flags().BoolVar(&f.inputOnly, "input-only", false, "print the document the rules see, judge nothing")
	cmd.Flags().BoolVar(&f.watch, "watch", false, "check again whenever a file beside the manifests is saved")
	cmd.Flags().BoolVar(&f.record, "record-digests", false, "record the digests of the evidence files, then judge")
	return cmd
}

func (a *app) checker(j judging) (*check.Checker, error) {
	options, err := j.options()
	if err != nil {
		return nil, err
	}
	packs, err := a.localPacks()
	if err != nil {
		return nil, err
	}
	return check.New(options, packs...)
}

func (a *app) check(cmd *cobra.Command, args []string, f checkFlags) error {
	if len(args) == 0 {
		return errors.New("name at least one manifest or folder, or - for standard input")
	}
	outputs, err := parseWrites(f.writes)
	if err != nil {
		return err
	}
	if f.inputOnly && len(outputs) > 0 {
		return errors.New("--input-only judges nothing: there is no report to --write")
	}
	c, err := a.checker(f.judging)
	if err != nil {
		return err
	}
	manifests, err := find(cmd, c, args, f.root)
	if err != nil {
		return err
	}
	if f.record {
		if err := record(cmd, manifests); err != nil {
			return err
		}
	}
	if f.inputOnly {
		return inputs(cmd, c, manifests)
	}
	if !slices.ContainsFunc(outputs, func(o output) bool { return o.file == stdout }) {
		outputs = append([]output{{printed(cmd, f), stdout}}, outputs...)
	}
	reports := newDrafts(outputs, c.Book.Spreads())
	defer reports.close()
	return judgeAll(cmd, c, manifests, reports)
}

// judgeAll judges one manifest after the other and writes the reports.
func judgeAll(cmd *cobra.Command, c *check.Checker, manifests []source, reports drafts) error {
	var sum report.Summary
	problems, err := each(cmd, manifests, func(m *manifest.Manifest) error {
		b, err := judge(cmd, c, m)
		if err != nil {
			return err
		}
		sum.Count(b)
		return reports.add(b)
	})
	if err != nil {
		return err
	}
	sum.Unread = unread(problems)
	if err := reports.write(cmd.OutOrStdout(), sum); err != nil {
		return err
	}
	return outcome(cmd, failure(sum), problems)
}

func items(c *check.Checker, r *check.Report) []verdict.Item {
	return verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
}

// inputs prints the document that the rules see of each manifest.
func inputs(cmd *cobra.Command, c *check.Checker, manifests []source) error {
	problems, err := each(cmd, manifests, func(m *manifest.Manifest) error {
		return printInput(cmd.OutOrStdout(), c, m)
	})
	if err != nil {
		return err
	}
	return outcome(cmd, nil, problems)
}

func printInput(w io.Writer, c *check.Checker, m *manifest.Manifest) error {
	r, err := c.Prepare(m)
	if err != nil {
		return err
	}
	out, err := rulebook.Canonical(r.Input)
	if err != nil {
		return err
	}
	_, err = w.Write(out)
	return err
}

// printed is the report for people, where no other one takes its place.
func printed(cmd *cobra.Command, f checkFlags) format {
	out := cmd.OutOrStdout()
	return format{"text", func(body *report.Spool, spreads []*rulebook.Limit) report.Form {
		return text.New(body, text.Options{
			Width: width(out), Emphasis: emphasis(out), All: f.all, Given: f.today != "", Spreads: spreads,
		})
	}}
}

// unread gives each report the problems of the builds it can't tell of.
func unread(problems []error) []manifest.Problems {
	var all []manifest.Problems
	for _, err := range problems {
		var told manifest.Problems
		if !errors.As(err, &told) {
			told = manifest.Problems{{Message: err.Error()}}
		}
		all = append(all, told)
	}
	return all
}

// mostProblems is the number of lines told about one manifest; a report that is
// written holds them all.
const mostProblems = 50

// tell prints what is wrong with one manifest.
func tell(w io.Writer, err error) {
	var problems manifest.Problems
	if !errors.As(err, &problems) || len(problems) <= mostProblems {
		fmt.Fprintln(w, err)
		return
	}
	fmt.Fprintln(w, problems[:mostProblems])
	fmt.Fprintf(w, "%s: … and %d more like these\n", problems[0].File, len(problems)-mostProblems)
}

// failure is the end of a run in which not all builds pass.
func failure(s report.Summary) error {
	if s.Fail > 0 {
		return errFail
	}
	return nil
}

// outcome tells the problems and chooses the exit code: what could not be
// judged weighs more than what did not pass, for which failed stands.
func outcome(cmd *cobra.Command, failed error, problems []error) error {
	for _, p := range problems {
		tell(cmd.ErrOrStderr(), p)
	}
	if len(problems) > 0 {
		return errTold
	}
	return failed
}
