package parity

import (
	"bytes"
	"encoding/json"
	"io"
	"io/fs"
	"net/http"
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

// TestDecisions compares our decision with that of the server. The bundle holds
// every region while we compile those of the build's chain only, so that a rule
// of one region that reached into another would show here.
func TestDecisions(t *testing.T) {
	base, err := check.New(check.Options{})
	require.NoError(t, err)
	url := serve(t, base.Book) + "/v1/data/" + rulebook.Query
	var failing atomic.Int64
	same := func(name string, judge func(*testing.T) (*check.Report, error)) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			r, err := judge(t)
			require.NoError(t, err)
			require.Equal(t, string(r.Decision), string(post(t, url, r.Input)))
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
			same(filepath.Base(file)+" "+what, func(t *testing.T) (*check.Report, error) {
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
	seen := map[string]bool{}
	for _, c := range cases {
		// By hand one case for each outcome of each rule tells enough; CI posts all.
		key := c.Rule + " " + c.Outcome
		if seen[key] && os.Getenv("CI") != "true" {
			continue
		}
		seen[key] = true
		same(c.Rule+"/"+c.Name, func(t *testing.T) (*check.Report, error) {
			return c.Run(t.Context(), base, t.TempDir())
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

// post asks the server for its decision on an input document. Only the
// server's answer is put into canonical form: ours is compared as it is.
func post(t *testing.T, url string, input any) []byte {
	body, err := json.Marshal(map[string]any{"input": input})
	require.NoError(t, err)
	res, err := http.Post(url, "application/json", bytes.NewReader(body))
	require.NoError(t, err)
	defer res.Body.Close()
	raw, err := io.ReadAll(res.Body)
	require.NoError(t, err)
	require.Equal(t, http.StatusOK, res.StatusCode, "%s", raw)
	var answer struct {
		Result any `json:"result"`
	}
	dec := json.NewDecoder(bytes.NewReader(raw))
	dec.UseNumber()
	require.NoError(t, dec.Decode(&answer))
	decision, err := rulebook.Canonical(answer.Result)
	require.NoError(t, err)
	return decision
}
