package mutation

import (
	"bytes"
	"context"
	"errors"
	"maps"

	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// law is everything in force, as the exported bundle has it: Rego by file name,
// and the data below it.
type law struct {
	text    map[string]string
	modules map[string]*ast.Module
	data    map[string]any
	book    *rulebook.Book
}

func read(t *testing.T, book *rulebook.Book) *law {
	t.Helper()
	var packed bytes.Buffer
	require.NoError(t, book.WriteBundle(&packed))
	b, err := bundle.NewReader(&packed).Read()
	require.NoError(t, err)
	l := &law{text: map[string]string{}, modules: map[string]*ast.Module{}, data: b.Data, book: book}
	for _, m := range b.Modules {
		name := strings.TrimPrefix(m.Path, "/policies/")
		l.text[name], l.modules[name] = string(m.Raw), m.Parsed
	}
	return l
}

// file is where a rule lies.
func file(meta *rulebook.Meta) string { return strings.Join(meta.At, "/") + "/rule.rego" }

// compile compiles everything in force with some files added or replaced.
func (l *law) compile(others map[string]*ast.Module) (*ast.Compiler, ast.Errors) {
	all := maps.Clone(l.modules)
	maps.Copy(all, others)
	c := ast.NewCompiler().SetErrorLimit(0)
	c.Compile(all)
	return c, c.Errors
}

// alone is the catalogue reduced to one rule, and to the questions that it
// collects. Its package lies at the path given.
func (l *law) alone(rule string, at []string) map[string]any {
	all := l.data["catalogue"].(map[string]any)
	meta := l.book.Rules[rule]
	entry := maps.Clone(all[rule].(map[string]any))
	entry["at"] = anys(at)
	reduced := map[string]any{rule: entry}
	for id, other := range l.book.Rules {
		if meta.Collects != "" && other.Question != nil && other.Region == meta.Region {
			reduced[id] = all[id]
		}
	}
	return reduced
}

func anys(words []string) []any {
	out := make([]any, len(words))
	for i, w := range words {
		out[i] = w
	}
	return out
}

// court judges input documents.
type court struct{ query rego.PreparedEvalQuery }

// court decides with a part of the data replaced.
func (l *law) court(ctx context.Context, c *ast.Compiler, replaced map[string]any) (*court, error) {
	return l.sit(ctx, c, "data."+strings.ReplaceAll(rulebook.Query, "/", "."), replaced)
}

func (l *law) sit(ctx context.Context, c *ast.Compiler, question string, replaced map[string]any) (*court, error) {
	data := maps.Clone(l.data)
	maps.Copy(data, replaced)
	query, err := rego.New(
		rego.Query(question),
		rego.Compiler(c),
		rego.Store(inmem.NewFromObjectWithOpts(data, inmem.OptRoundTripOnWrite(false))),
		rego.StrictBuiltinErrors(true),
	).PrepareForEval(ctx)
	return &court{query}, err
}

// judge returns the verdict on an input document.
func (k *court) judge(ctx context.Context, input ast.Value) (*verdict.Verdict, error) {
	result, err := k.query.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil {
		return nil, err
	}
	if len(result) != 1 {
		return nil, errors.New("no decision")
	}
	decision, err := rulebook.Canonical(result[0].Expressions[0].Value)
	if err != nil {
		return nil, err
	}
	return verdict.Read(decision)
}

// checker opens the shipped rules.
func checker(t *testing.T, hold string) *check.Checker {
	t.Helper()
	c, err := check.New(check.Options{Hold: hold, Today: "2026-11-25"})
	require.NoError(t, err)
	return c
}
