package rulebook

import (
	"bytes"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/stretchr/testify/require"
)

func bundled(t *testing.T, packs ...files) []byte {
	t.Helper()
	b, err := openPacks(packs...)
	require.NoError(t, err)
	var out bytes.Buffer
	require.NoError(t, b.WriteBundle(&out))
	return out.Bytes()
}

func TestBundle(t *testing.T) {
	local := harbour.with(files{"rules/cab/note/rule_test.rego": "package none", "rules/cab/note/cases.yaml": "cases: []"})
	raw := bundled(t, local)
	require.Equal(t, raw, bundled(t, local), "same book, same bytes")
	require.NotEqual(t, raw, bundled(t))

	read, err := bundle.NewReader(bytes.NewReader(raw)).Read()
	require.NoError(t, err)
	roots := *read.Manifest.Roots
	for _, m := range read.Modules {
		require.False(t, strings.HasSuffix(m.Path, "_test.rego"), m.Path)
		require.Contains(t, roots, string(m.Parsed.Package.Path[1].Value.(ast.String)))
	}
	for _, f := range read.Raw {
		require.Contains(t, []string{".rego", ".json", ".manifest"}, path.Ext(f.Path), f.Path)
	}
	for _, root := range slices.Sorted(maps.Keys(read.Data)) {
		require.Contains(t, roots, root)
	}
	require.Contains(t, read.Data["catalogue"], "local/acme/xz/vin")

	// A stock compiler reads it and takes our decision, whatever the region.
	stock, err := rego.New(
		rego.Query("data."+strings.ReplaceAll(Query, "/", ".")),
		rego.ParsedBundle("trialfit", &read),
	).PrepareForEval(t.Context())
	require.NoError(t, err)
	b, err := openPacks(local)
	require.NoError(t, err)
	for _, code := range []string{"US", "XZ", "XZ-N", "QQ"} {
		chain, err := b.Chain(code)
		require.NoError(t, err)
		input := smallInput()
		var regions []any
		for _, r := range chain {
			regions = append(regions, map[string]any{"code": r.Code, "name": r.Name, "pack": r.Pack})
		}
		input["regions"] = append([]any{}, regions...)
		e, err := b.Prepare(t.Context(), chain)
		require.NoError(t, err)
		ours, err := e.Decide(t.Context(), input)
		require.NoError(t, err)
		result, err := stock.Eval(t.Context(), rego.EvalInput(input))
		require.NoError(t, err)
		require.Len(t, result, 1)
		theirs, err := Canonical(result[0].Expressions[0].Value)
		require.NoError(t, err)
		require.Equal(t, string(theirs), string(ours), code)
		require.Equal(t, strings.HasPrefix(code, "XZ"), strings.Contains(string(ours), "local/acme/xz/vin"), code)
		require.Equal(t, code == "XZ-N", strings.Contains(string(ours), "local/acme/xz-n/vin"), code)
	}
}

// A book is prepared and asked from many builds at once.
func TestConcurrentUse(t *testing.T) {
	b, err := openPacks(harbour)
	require.NoError(t, err)
	const builds = 6
	decisions := make([][]byte, builds)
	faults := make([]error, builds)
	var all sync.WaitGroup
	for i := range builds {
		all.Go(func() {
			chain, _ := b.Chain([]string{"XZ", "XZ-N"}[i%2])
			e, err := b.Prepare(t.Context(), chain)
			if err == nil {
				decisions[i], err = e.Decide(t.Context(), smallInput())
			}
			faults[i] = err
		})
	}
	all.Wait()
	for i := range builds {
		require.NoError(t, faults[i])
		require.Equal(t, string(decisions[i%2]), string(decisions[i]), "same input, same bytes")
	}
	require.Len(t, b.ready.evaluators, 2)
}
