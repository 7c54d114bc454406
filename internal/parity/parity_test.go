package parity

import (
	"bytes"
	"encoding/json"
	"io"
	"io/fs"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
	"trialfit/internal/rulecase"
	"trialfit/internal/verdict"
)

// TestDecisions compares our decision with that of the server: whole on every
// example and, in CI, on every 25th case (by hand on one case of each outcome), and on
// every case what its own rule says. The bundle holds every region while we compile those of the build's
// chain only, and in a case its own rule only, so that a rule that reached into
// another would show here.
func TestDecisions(t *testing.T) {
	base, err := check.New(check.Options{})
	require.NoError(t, err)
	server := serve(t, base.Book) + "/v1/data/"
	var failing atomic.Int64
	whole := func(name string, judge func(*testing.T) (*check.Report, error)) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			r, err := judge(t)
			require.NoError(t, err)
			require.Equal(t, string(r.Decision), string(canonical(t, post(t, server+rulebook.Query, r.Input))))
			if r.Verdict.Verdict == verdict.Fail {
				failing.Add(1)
			}
		})
	}
	t.Cleanup(func() { require.NotZero(t, failing.Load(), "no decision but PASS was compared") })

	examples, err := check.Find([]string{"../../examples"})
	require.NoError(t, err)
	require.NotEmpty(t, examples)
	for _, file := range examples {
		with := func(what string, o check.Options) {
			whole(filepath.Base(file)+" "+what, func(t *testing.T) (*check.Report, error) {
				checker := *base
				checker.Options = o
				checker.Options.Today = rulecase.Today
				return checker.File(t.Context(), file)
			})
		}
		for _, hold := range rulebook.HoldPoints {
			with("at "+hold, check.Options{Hold: hold})
		}
		for _, region := range append(regions(t), "ZZ") { // ZZ: a code that no pack knows
			with("in "+region, check.Options{Hold: "handover", Region: region})
		}
		with("with advice that blocks", check.Options{Hold: "handover", BlockOn: "should"})
	}

	cases, err := rulecase.Load(os.DirFS("../../policies"))
	require.NoError(t, err)
	require.NotEmpty(t, cases)
	for _, code := range append(regions(t), "") { // compiled once, before books of one rule are split off
		chain, err := base.Book.Chain(code)
		require.NoError(t, err)
		_, err = base.Book.Prepare(t.Context(), chain)
		require.NoError(t, err)
	}
	alone, seen := map[string]*check.Checker{}, map[string]bool{}
	for n, c := range cases {
		name := c.Rule + "/" + c.Name
		if alone[c.Rule] == nil {
			alone[c.Rule] = rulecase.Alone(base, c.Rule)
		}
		if !seen[c.Outcome] || os.Getenv("CI") == "true" && n%25 == 0 {
			seen[c.Outcome] = true
			whole(name+", whole", func(t *testing.T) (*check.Report, error) {
				return c.Run(t.Context(), base, t.TempDir())
			})
		}
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			r, err := c.Run(t.Context(), alone[c.Rule], t.TempDir())
			require.NoError(t, err)
			ours := decode(t, r.Decision).(map[string]any)["rules"].(map[string]any)[c.Rule]
			theirs := post(t, server+"verdict/rules/"+url.PathEscape(c.Rule), r.Input)
			require.Equal(t, string(canonical(t, ours)), string(canonical(t, theirs)))
		})
	}
}

// regions lists the codes of the shipped regions.
func regions(t *testing.T) []string {
	folders, err := fs.ReadDir(os.DirFS("../../policies"), "regions")
	require.NoError(t, err)
	codes := make([]string, len(folders))
	for i, f := range folders {
		codes[i] = strings.ToUpper(f.Name())
	}
	return codes
}

// post asks the server for what it says on an input document.
func post(t *testing.T, address string, input any) any {
	body, err := json.Marshal(map[string]any{"input": input})
	require.NoError(t, err)
	res, err := http.Post(address, "application/json", bytes.NewReader(body))
	require.NoError(t, err)
	defer res.Body.Close()
	raw, err := io.ReadAll(res.Body)
	require.NoError(t, err)
	require.Equal(t, http.StatusOK, res.StatusCode, "%s", raw)
	answer := decode(t, raw).(map[string]any)
	require.Contains(t, answer, "result")
	return answer["result"]
}

func decode(t *testing.T, raw []byte) (v any) {
	dec := json.NewDecoder(bytes.NewReader(raw))
	dec.UseNumber()
	require.NoError(t, dec.Decode(&v))
	return v
}

func canonical(t *testing.T, v any) []byte {
	out, err := rulebook.Canonical(v)
	require.NoError(t, err)
	return out
}
