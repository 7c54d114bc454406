package cli

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"trialfit/internal/check"
	"trialfit/internal/report"
	"trialfit/internal/report/counter"
	"trialfit/internal/report/lines"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

func (a *app) rulesCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "rules",
		Short: "List and explain the rules in force, or export them",
		Args:  cobra.NoArgs,
		RunE:  func(cmd *cobra.Command, _ []string) error { return cmd.Help() },
	}
	cmd.AddCommand(a.rulesList(), a.rulesShow(), a.rulesBundle())
	return cmd
}

func (a *app) book() (*rulebook.Book, error) {
	packs, err := a.localPacks()
	if err != nil {
		return nil, err
	}
	c, err := check.New(check.Options{}, packs...)
	if err != nil {
		return nil, err
	}
	return c.Book, nil
}

// listFlags choose among the rules.
type listFlags struct {
	area, hold, level, region, questions, today string
}

func (a *app) rulesList() *cobra.Command {
	var f listFlags
	cmd := &cobra.Command{
		Use:   "list",
		Short: "List the rules in force, or what a region asks for",
		Long: `Lists the rules in force, a line each. --region alone lists what that region
and those it lies in ask for, to take to the counter: what, which paper, from
whom, by which hold point. --questions writes the letter with the questions of
one build instead, its facts filled in.`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			switch {
			case f.questions != "":
				return a.letter(cmd, f)
			case f.region != "" && f.area == "" && f.hold == "" && f.level == "":
				return a.counterList(cmd, f.region)
			default:
				return a.listRules(cmd, f)
			}
		},
	}
	cmd.Flags().StringVar(&f.area, "area", "", "only rules of this area")
	cmd.Flags().StringVar(&f.hold, "hold", "", "only rules due at this hold point")
	cmd.Flags().StringVar(&f.level, "level", "", "only rules of this level: must, should or note")
	cmd.Flags().StringVar(&f.region, "region", "", "what this region asks for; with another flag, only its rules")
	cmd.Flags().StringVar(&f.questions, "questions", "", "write the letter with the questions that this manifest raises")
	cmd.Flags().StringVar(&f.today, "today", "", "write the letter as of this date, as 2026-11-25; default is the clock's date")
	complete(cmd, "hold", rulebook.HoldPoints...)
	complete(cmd, "level", "must", "should", "note")
	return cmd
}

func (a *app) listRules(cmd *cobra.Command, f listFlags) error {
	book, err := a.book()
	if err != nil {
		return err
	}
	var chain []rulebook.Region
	if f.region != "" {
		if chain, err = book.Chain(f.region); err != nil {
			return err
		}
	}
	areas := map[string]bool{}
	var list []*rulebook.Meta
	for _, m := range book.Catalogue() {
		areas[m.Area] = true
		inRegion := f.region == "" || slices.ContainsFunc(chain, func(r rulebook.Region) bool { return r.Code == m.Region })
		if (f.area == "" || m.Area == f.area) && (f.hold == "" || m.Hold == f.hold) && (f.level == "" || m.Level == f.level) && inRegion {
			list = append(list, m)
		}
	}
	for _, choice := range []struct {
		flag, value string
		accepted    []string
	}{
		{"area", f.area, slices.Sorted(maps.Keys(areas))},
		{"hold", f.hold, rulebook.HoldPoints},
		{"level", f.level, []string{"must", "should", "note"}},
	} {
		if choice.value != "" && !slices.Contains(choice.accepted, choice.value) {
			return fmt.Errorf("--%s %q is not known: there is %s", choice.flag, choice.value, strings.Join(choice.accepted, ", "))
		}
	}
	wide := 0
	for _, m := range list {
		wide = max(wide, len(m.ID))
	}
	for _, m := range list {
		if _, err := fmt.Fprintf(cmd.OutOrStdout(), "%-*s  %-6s  %-11s  %s\n", wide, m.ID, m.Level, m.Hold, m.Title); err != nil {
			return err
		}
	}
	return nil
}

func (a *app) counterList(cmd *cobra.Command, region string) error {
	book, err := a.book()
	if err != nil {
		return err
	}
	chain, err := book.Chain(region)
	if err != nil {
		return err
	}
	if !chain[len(chain)-1].Pack {
		return fmt.Errorf("no pack examines %s: what it asks for is not known; there is %s", region, strings.Join(book.Regions(), ", "))
	}
	w := cmd.OutOrStdout()
	return counter.List(w, book, chain, width(w))
}

// letter judges at the last hold point, so that no question is left for later.
func (a *app) letter(cmd *cobra.Command, f listFlags) error {
	if f.area != "" || f.hold != "" || f.level != "" {
		return errors.New("--questions writes every question of the build: leave out --area, --hold and --level")
	}
	last := rulebook.HoldPoints[len(rulebook.HoldPoints)-1]
	c, err := a.checker(judging{hold: last, region: f.region, today: f.today, blockOn: "must"})
	if err != nil {
		return err
	}
	r, err := c.File(cmd.Context(), f.questions)
	if err != nil {
		return err
	}
	w := cmd.OutOrStdout()
	return counter.Letter(w, report.Build{Report: r, Items: items(c, r)}, c.Book, width(w))
}

func (a *app) rulesShow() *cobra.Command {
	return &cobra.Command{
		Use:   "show ID [FILE|FOLDER ...]",
		Short: "Say everything about one rule, and how builds fare under it",
		Args:  cobra.MinimumNArgs(1),
		ValidArgsFunction: func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
			book, err := a.book()
			if err != nil {
				return nil, cobra.ShellCompDirectiveError
			}
			return slices.Sorted(maps.Keys(book.Rules)), cobra.ShellCompDirectiveNoFileComp
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			m := book.Rule(args[0])
			if m == nil {
				hint := ""
				if near := schema.Nearest(args[0], slices.Sorted(maps.Keys(book.Rules))); near != "" {
					hint = fmt.Sprintf(", did you mean %q?", near)
				}
				return fmt.Errorf("no rule is called %q%s", args[0], hint)
			}
			if err := showRule(cmd.OutOrStdout(), book, m); err != nil || len(args) == 1 {
				return err
			}
			return a.fare(cmd, m, args[1:])
		},
	}
}

// fare tells what a rule says of each build, at its own next hold point or at
// the rule's, whichever comes later.
func (a *app) fare(cmd *cobra.Command, m *rulebook.Meta, args []string) error {
	c, err := a.checker(judging{blockOn: "must"})
	if err != nil {
		return err
	}
	manifests, problems, err := load(cmd, c, args, ".")
	if err != nil {
		return err
	}
	w := cmd.OutOrStdout()
	p := lines.Printer{W: w, Columns: width(w)}
	for _, build := range manifests {
		r, err := c.Check(cmd.Context(), build)
		if err != nil {
			problems = append(problems, err)
			continue
		}
		rule, inForce := r.Verdict.Rules[m.ID]
		if !inForce {
			p.Line("\n%s: not in force, its region is another", build.Name())
			continue
		}
		due := ""
		if !rule.Due {
			due = fmt.Sprintf(", due at %s and not yet at %s", rule.Hold, r.Verdict.Hold)
		}
		p.Line("\n%s: %s%s", build.Name(), rule.Outcome, due)
		b := report.Build{Report: r, Items: items(c, r)}
		for _, i := range b.Items {
			if i.Rule.ID == m.ID {
				p.Wrap("  ", "    ", fmt.Sprintf("%s %s: %s: %s", b.Where(i), i.Finding.Subject, i.Finding.Outcome, report.Found(i)))
			}
		}
	}
	if p.Err != nil {
		return p.Err
	}
	return outcome(cmd, nil, problems)
}

func showRule(w io.Writer, book *rulebook.Book, m *rulebook.Meta) error {
	rows := [][2]string{
		{"requires", m.Title},
		{"why", m.Description},
		{"level", m.Level + " from " + m.Hold},
		{"outcomes", strings.Join(m.Outcomes, ", ")},
	}
	for _, hold := range rulebook.HoldPoints {
		if grade, ok := m.NeedsBasis[hold]; ok {
			rows = append(rows, [2]string{"values", "from " + hold + ": " + grade})
		}
	}
	for _, path := range m.Reads {
		row := path
		if l := book.Limit(path); l != nil {
			row += ": " + l.Value.Text + ", " + l.Title + " (" + l.Source + ")"
			if l.SetBy != "" {
				row += ", set by pack " + l.SetBy
			}
		}
		rows = append(rows, [2]string{"reads", row})
	}
	if m.Question != nil {
		rows = append(rows, [2]string{"ask", m.Question.Office + ": " + m.Question.Ask})
	}
	rows = append(rows, [2]string{"remedy", m.Remedy}, [2]string{"caution", m.Caution},
		[2]string{"source", fmt.Sprintf("%s (%s, reviewed %s)", m.Source, m.Basis, m.Reviewed)})
	for _, l := range m.Links {
		rows = append(rows, [2]string{"link", l.URL + " " + l.Title})
	}
	waivable := "no"
	if m.Waivable {
		waivable = "yes"
	}
	rows = append(rows, [2]string{"waivable", waivable}, [2]string{"since", m.Since + ", pack " + m.Pack})
	if _, err := fmt.Fprintln(w, m.ID); err != nil {
		return err
	}
	p := lines.Printer{W: w, Columns: width(w)}
	p.Rows(rows)
	return p.Err
}

func (a *app) rulesBundle() *cobra.Command {
	var out string
	cmd := &cobra.Command{
		Use:   "bundle",
		Short: "Write the rules in force as a standard OPA bundle",
		Long: `Writes every rule, limit and region in force as a standard OPA bundle. A stock
OPA server loaded with it takes the same decision as trialfit check, at
data.` + strings.ReplaceAll(rulebook.Query, "/", ".") + `, for the document that check --input-only prints.`,
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			if out != "" {
				return save(out, book.WriteBundle)
			}
			if f, ok := cmd.OutOrStdout().(*os.File); ok && term.IsTerminal(int(f.Fd())) {
				return fmt.Errorf("a bundle is not text: name a file with --out, or redirect standard output")
			}
			return book.WriteBundle(cmd.OutOrStdout())
		},
	}
	cmd.Flags().StringVar(&out, "out", "", "file to write, instead of standard output")
	return cmd
}
