package cli

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/prebuy"
	"trialfit/internal/report/choice"
)

// choiceForms are the reports of a shortlist, by name.
var choiceForms = map[string]func(io.Writer, *prebuy.Result) error{
	"json": choice.JSON, "markdown": choice.Markdown, "html": choice.HTML,
}

type prebuyFlags struct {
	today  string
	writes []string
	all    bool
	start  string
	record bool
}

func (a *app) prebuyCommand() *cobra.Command {
	var f prebuyFlags
	cmd := &cobra.Command{
		Use:   "prebuy SHORTLIST [COMBINATION]",
		Short: "Compare vehicles and donors before any is bought",
		Long: `Reads a shortlist, NAME` + prebuy.Suffix + `: what is wanted, the vehicles and
donors for sale, and what each part costs that none of them brings. It says
which combinations can't work and why, what the others cost to finish, what to
take from which, what to ask and measure first, and at which price the choice
would turn. Every combination is judged at plan in each region of the intent.

--write adds the answer as json, markdown or html: one page with a sheet to
print. --start DIR COMBINATION begins the build's manifest from the one chosen.

Exit status: 0 at least one combination may work, 1 none does, 2 something
could not be run.`,
		Example: "  trialfit prebuy examples/shortlists/heated-wagon" + prebuy.Suffix,
		RunE: func(cmd *cobra.Command, args []string) error {
			switch {
			case len(args) == 0 || len(args) > 2:
				return errors.New("name one shortlist, NAME" + prebuy.Suffix)
			case f.start == "" && len(args) == 2:
				return fmt.Errorf("%q: a combination is named with --start DIR", args[1])
			case f.start != "" && len(args) == 1:
				return errors.New("--start begins a build: name its combination, as CHASSIS+DONOR")
			}
			return a.prebuy(cmd, args, f)
		},
	}
	cmd.Flags().StringVar(&f.today, "today", "", "judge as of this date, as 2026-11-25; default is the clock's date")
	cmd.Flags().BoolVar(&f.all, "all", false, "print every combination and reason, and all that is taken for the leading ones")
	cmd.Flags().StringArrayVar(&f.writes, "write", nil, "also write the answer, as FORMAT=FILE; formats: json, markdown, html")
	cmd.Flags().BoolVar(&f.record, "record-digests", false, "record the digests of the candidates' evidence files, then compare")
	cmd.Flags().StringVar(&f.start, "start", "", "folder to begin the build in, with the combination chosen")
	return cmd
}

func (a *app) prebuy(cmd *cobra.Command, args []string, f prebuyFlags) error {
	writes, err := readWrites(f.writes, []string{"json", "markdown", "html"})
	if err != nil {
		return err
	}
	c, err := a.checker(judging{today: f.today, blockOn: "must"})
	if err != nil {
		return err
	}
	s, err := prebuy.Read(args[0], c.Book)
	if err != nil {
		return err
	}
	if f.record {
		name, err := s.Record()
		if err != nil {
			return err
		}
		said := "recorded " + filepath.ToSlash(name)
		if name == "" {
			said = s.File + ": no evidence file to record"
		}
		fmt.Fprintln(cmd.ErrOrStderr(), said)
	}
	if f.start != "" {
		return begin(cmd, c, s, f.start, args[1])
	}
	shown := newProgress(cmd.ErrOrStderr(), len(s.Chassis)*len(s.Donors))
	r, err := prebuy.Run(cmd.Context(), s, c, func(done, total int) {
		if done%progressStep == 0 || done == total {
			shown.at(done, "combinations")
		}
	})
	shown.end()
	if err != nil {
		return err
	}
	out := cmd.OutOrStdout()
	if !slices.ContainsFunc(writes, func(w [2]string) bool { return w[1] == stdout }) {
		if err := choice.Text(out, r, width(out), f.all); err != nil {
			return fmt.Errorf("writing the answer: %w", err)
		}
	}
	for _, w := range writes {
		content := func(to io.Writer) error { return choiceForms[w[0]](to, r) }
		if w[1] == stdout {
			err = content(out)
		} else {
			err = save(w[1], content)
		}
		if err != nil {
			return err
		}
	}
	if len(r.Ranked) == 0 {
		return errFail
	}
	return nil
}

// progressStep is how many combinations are done between two looks at how far
// it is.
const progressStep = 10

// combination splits CHASSIS+DONOR.
func combination(s *prebuy.Shortlist, id string) (chassis, donor *prebuy.Candidate, err error) {
	first, second, joined := strings.Cut(id, "+")
	find := func(list []*prebuy.Candidate, id, what string) *prebuy.Candidate {
		var ids []string
		for _, c := range list {
			if c.ID == id {
				return c
			}
			ids = append(ids, c.ID)
		}
		if err == nil {
			err = fmt.Errorf("%q is not a %s of the shortlist: there is %s", id, what, strings.Join(ids, ", "))
		}
		return nil
	}
	if !joined {
		return nil, nil, fmt.Errorf("%q is not a combination: name it as CHASSIS+DONOR", id)
	}
	chassis, donor = find(s.Chassis, first, "chassis"), find(s.Donors, second, "donor")
	return chassis, donor, err
}
