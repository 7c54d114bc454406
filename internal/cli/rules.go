package cli

import (
	"fmt"
	"io"
	"maps"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"trialfit/internal/check"
	"trialfit/internal/report/text"
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

func (a *app) rulesList() *cobra.Command {
	return &cobra.Command{
		Use:   "list",
		Short: "List every rule in force",
		Args:  cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			book, err := a.book()
			if err != nil {
				return err
			}
			list := book.Catalogue()
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
		},
	}
}

func (a *app) rulesShow() *cobra.Command {
	return &cobra.Command{
		Use:   "show ID",
		Short: "Say everything about one rule",
		Args:  cobra.ExactArgs(1),
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
			return showRule(cmd.OutOrStdout(), book, m)
		},
	}
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
	return text.Rows(w, width(w), rows)
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
