package rulebook

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/topdown"

	"trialfit/internal/quantity"
)

// Query is the path of the decision, below data.
const Query = "verdict/document"

// patience bounds one evaluation: a local rule that does not come to an end
// must not hold up a shop's pipeline.
const patience = 60 * time.Second

// Evaluator decides on input documents of one region chain. It is safe for
// concurrent use.
type Evaluator struct {
	query rego.PreparedEvalQuery
	book  *Book
}

// Prepare compiles what is in force for a chain of regions, once per chain. It
// is safe for concurrent use.
func (b *Book) Prepare(ctx context.Context, chain []Region) (*Evaluator, error) {
	codes := codesOf(chain)
	key := strings.Join(codes, " ")
	b.ready.Lock()
	defer b.ready.Unlock()
	if e, ok := b.ready.evaluators[key]; ok {
		return e, nil
	}
	compiler, ok := b.ready.compilers[key]
	if !ok {
		var err error
		if compiler, err = b.compiler(codes); err != nil {
			return nil, err
		}
		b.ready.compilers[key] = compiler
	}
	data, err := b.data()
	if err != nil {
		return nil, err
	}
	query, err := rego.New(
		rego.Query("data."+strings.ReplaceAll(Query, "/", ".")),
		rego.Compiler(compiler),
		rego.Store(inmem.NewFromObjectWithOpts(data, inmem.OptRoundTripOnWrite(false), inmem.OptReturnASTValuesOnRead(true))),
		rego.StrictBuiltinErrors(true),
	).PrepareForEval(ctx)
	if err != nil {
		return nil, fmt.Errorf("preparing the rules: %s", oneLine(err))
	}
	e := &Evaluator{query, b}
	b.ready.evaluators[key] = e
	return e, nil
}

func codesOf(chain []Region) []string {
	codes := make([]string, len(chain))
	for i, r := range chain {
		codes[i] = r.Code
	}
	return codes
}

// Together compiles what is in force in any of the chains at once, for whoever
// is going to judge in many of them: rules of a region that a document does not
// name take no part in its verdict.
func (b *Book) Together(chains ...[]Region) error {
	if b.compiled(chains) {
		return nil
	}
	compiler, err := b.compiler(codesOf(slices.Concat(chains...)))
	if err != nil {
		return err
	}
	b.ready.Lock()
	defer b.ready.Unlock()
	for _, chain := range chains {
		b.ready.compilers[strings.Join(codesOf(chain), " ")] = compiler
	}
	return nil
}

func (b *Book) compiled(chains [][]Region) bool {
	b.ready.Lock()
	defer b.ready.Unlock()
	return !slices.ContainsFunc(chains, func(chain []Region) bool { return b.ready.compilers[strings.Join(codesOf(chain), " ")] == nil })
}

// compiler parses and compiles the Rego of all packs and of the regions named.
func (b *Book) compiler(codes []string) (*ast.Compiler, error) {
	var chosen []source
	for _, s := range b.sources {
		if s.region == "" || containsFold(codes, s.region) {
			chosen = append(chosen, s)
		}
	}
	modules, err := parseAll(chosen)
	if err != nil {
		return nil, err
	}
	return compile(modules)
}

func compile(modules map[string]*ast.Module) (*ast.Compiler, error) {
	c := ast.NewCompiler().WithCapabilities(capabilities()).WithStrict(true)
	c.Compile(modules)
	if c.Failed() {
		return nil, regoFault(c.Errors)
	}
	return c, nil
}

func containsFold(codes []string, folder string) bool {
	for _, code := range codes {
		if strings.EqualFold(code, folder) {
			return true
		}
	}
	return false
}

// parseAll parses files side by side: parsing is the larger half of a cold start.
func parseAll(sources []source) (map[string]*ast.Module, error) {
	modules := make([]*ast.Module, len(sources))
	faults := make([]error, len(sources))
	var wg sync.WaitGroup
	for i, s := range sources {
		wg.Go(func() {
			modules[i], faults[i] = ast.ParseModuleWithOpts(s.name, string(s.data), ast.ParserOptions{Capabilities: capabilities()})
		})
	}
	wg.Wait()
	for _, err := range faults {
		if err != nil {
			return nil, regoFault(err)
		}
	}
	out := make(map[string]*ast.Module, len(sources))
	for i, s := range sources {
		out[s.name] = modules[i]
	}
	return out, nil
}

// Decide returns the verdict document for an input document, as canonical
// JSON. The error is a *PackError when a local pack can't be judged by.
func (e *Evaluator) Decide(ctx context.Context, input any) ([]byte, error) {
	limited, cancel := context.WithTimeout(ctx, e.book.patience)
	defer cancel()
	value, err := ast.InterfaceToValue(input)
	if err != nil {
		return nil, fmt.Errorf("reading the input document: %w", err)
	}
	result, err := e.query.Eval(limited, rego.EvalParsedInput(value))
	switch {
	case ctx.Err() != nil:
		return nil, fmt.Errorf("judging the build: %w", ctx.Err())
	case limited.Err() != nil:
		return nil, e.book.impatient()
	case err != nil:
		return nil, e.book.blame(err)
	case len(result) != 1:
		return nil, errors.New("judging the build gave no decision")
	}
	return Canonical(result[0].Expressions[0].Value)
}

func (b *Book) impatient() error {
	err := fmt.Errorf("judging the build takes more than %v", b.patience)
	if len(b.Packs) == 1 {
		return err
	}
	var folders []string
	for _, p := range b.Packs[1:] {
		folders = append(folders, p.folder)
	}
	return &PackError{strings.Join(folders, ", "), fmt.Errorf("%w: one of its rules does not come to an end", err)}
}

// blame names the local pack whose rule an evaluation stopped at.
func (b *Book) blame(err error) error {
	var stop *topdown.Error
	if errors.As(err, &stop) && stop.Location != nil {
		for _, p := range b.Packs[1:] {
			if inside, ok := strings.CutPrefix(stop.Location.File, "local/"+p.Name+"/"); ok {
				what, _, _ := strings.Cut(stop.Message, ":\n") // the values themselves follow
				return &PackError{p.folder, within(inside, &placed{stop.Location.Row, stop.Location.Col, what})}
			}
		}
	}
	return fmt.Errorf("judging the build: %s", oneLine(err))
}

// Canonical writes a decision as JSON with sorted keys and one trailing newline.
func Canonical(v any) ([]byte, error) {
	var buf bytes.Buffer
	enc := json.NewEncoder(&buf)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	if err := enc.Encode(v); err != nil {
		return nil, fmt.Errorf("writing JSON: %w", err)
	}
	return buf.Bytes(), nil
}

// number is a canonical decimal for machine output.
func number(x float64) json.Number { return json.Number(quantity.Canonical(x)) }
