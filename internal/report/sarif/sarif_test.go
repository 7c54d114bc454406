package sarif

import (
	"bufio"
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"testing"
	"testing/iotest"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"trialfit/internal/report"
	"trialfit/internal/report/reporttest"
)

func written(t *testing.T, r reporttest.Run) []byte {
	t.Helper()
	return r.Write(t, New(&report.Spool{}))
}

func TestGolden(t *testing.T) {
	reporttest.Golden(t, "example.sarif", written(t, reporttest.Example(t)))
	reporttest.Golden(t, "sample.sarif", written(t, reporttest.Sample(t)))
}

// TestOneDocument: results written one by one make the bytes that encoding/json
// makes of the whole log.
func TestOneDocument(t *testing.T) {
	for _, r := range []reporttest.Run{reporttest.Example(t), reporttest.Sample(t), {}} {
		got := written(t, r)
		var log sarifLog
		require.NoError(t, json.Unmarshal(got, &log))
		var whole bytes.Buffer
		enc := json.NewEncoder(&whole)
		enc.SetIndent("", "  ")
		enc.SetEscapeHTML(false)
		require.NoError(t, enc.Encode(log))
		require.Equal(t, whole.String(), string(got))
	}
}

// TestRenumbered: whatever the size of the pieces read, nothing else changes
// and nothing is lost, not the last line either.
func TestRenumbered(t *testing.T) {
	const met = "\n        {\n" + index + "0,\n          \"kind\": \"fail\"\n        },\n        {\n" + index + "1,\n        \"ruleIndex\": 0,\n        }"
	want := strings.NewReplacer(index+"0", index+"11", index+"1", index+"7").Replace(met)
	require.NoError(t, iotest.TestReader(&renumbered{lines: bufio.NewReader(strings.NewReader(met)), rank: []int{11, 7}}, []byte(want)))
}

// published compiles the schema that npm's @microsoft/jest-sarif carries; see
// testdata/outside. Nothing is fetched.
func published(t *testing.T) *jsonschema.Schema {
	t.Helper()
	f, err := os.Open("../../../testdata/outside/sarif-2.1.0-rtm.5.json")
	require.NoError(t, err)
	defer f.Close()
	c := jsonschema.NewCompiler()
	c.AssertFormat = true
	require.NoError(t, c.AddResource(schema, f))
	s, err := c.Compile(schema)
	require.NoError(t, err)
	require.Equal(t, jsonschema.Draft4, s.Draft)
	return s
}

func TestPublishedSchema(t *testing.T) {
	s := published(t)
	for name, r := range map[string]reporttest.Run{
		"example": reporttest.Example(t), "sample": reporttest.Sample(t), "nothing": {},
	} {
		var log any
		require.NoError(t, json.Unmarshal(written(t, r), &log))
		require.NoError(t, s.Validate(log), name)
	}
}

// TestPublishedSchemaRefuses shows that the schema has teeth.
func TestPublishedSchemaRefuses(t *testing.T) {
	s := published(t)
	good := string(written(t, reporttest.Sample(t)))
	for name, change := range map[string][2]string{
		"a level it does not know":      {`"level": "error"`, `"level": "fatal"`},
		"a suppression of another kind": {`"kind": "external"`, `"kind": "elsewhere"`},
		"lines counted from 0":          {`"startLine": 4`, `"startLine": 0`},
		"a key it does not know":        {`"ruleIndex"`, `"ruleNumber"`},
		"a path that is no reference":   {`"uri": "plain.build.yaml"`, `"uri": "a b%"`},
	} {
		require.Contains(t, good, change[0])
		var log any
		require.NoError(t, json.Unmarshal([]byte(strings.ReplaceAll(good, change[0], change[1])), &log))
		require.Error(t, s.Validate(log), name)
	}
}

func read(t *testing.T, r reporttest.Run) run {
	t.Helper()
	var log sarifLog
	require.NoError(t, json.Unmarshal(written(t, r), &log))
	require.Len(t, log.Runs, 1)
	return log.Runs[0]
}

// TestRulesOfTheStandard: SARIF 2.1.0, 3.27.10: only a result of kind "fail" has a level.
// 3.27.23 (from memory): suppressions on all results or on none.
func TestRulesOfTheStandard(t *testing.T) {
	for _, r := range []reporttest.Run{reporttest.Example(t), reporttest.Sample(t)} {
		out := read(t, r)
		require.NotEmpty(t, out.Results)
		for _, res := range out.Results {
			require.Equal(t, "fail", res.Kind)
			require.NotEqual(t, "none", res.Level)
			require.NotNil(t, res.Suppressions)
			require.Equal(t, res.RuleID, out.Tool.Driver.Rules[res.RuleIndex].ID)
		}
		for _, rule := range out.Tool.Driver.Rules {
			require.LessOrEqual(t, len(rule.Properties.Tags), 10)
		}
	}
}

func TestOutcomes(t *testing.T) {
	type seen struct{ level, outcome, lead string }
	got := map[string]seen{}
	var waived []suppression
	for _, r := range read(t, reporttest.Sample(t)).Results {
		lead, _, _ := strings.Cut(r.Message.Text, " ")
		got[r.RuleID] = seen{r.Level, r.Properties.Outcome, lead}
		waived = append(waived, r.Suppressions...)
	}
	require.Equal(t, map[string]seen{
		"sample/brake_lines": {"error", "not met", "5/8"},
		"sample/hose_size":   {"error", "unproven", "unproven:"},
		"sample/fuse_size":   {"error", "waived", "waived:"},
		"sample/strap":       {"warning", "not met", "5/8"},
		"sample/label":       {"note", "unproven", "unproven:"},
	}, got, "what is met or due later is no result")
	require.Len(t, waived, 2)
	require.Equal(t, suppression{"external", "accepted", "lent: a|b, <i>lent</i> by @shop until the part comes: see #1; R. Example, until 2027-01-31"}, waived[0])
}

// TestFingerprints: each finding its own, and the same after lines moved and
// values changed.
func TestFingerprints(t *testing.T) {
	for _, r := range []reporttest.Run{reporttest.Example(t), reporttest.Sample(t)} {
		before := read(t, r).Results
		for b := range r.Builds {
			for i := range r.Builds[b].Items {
				item := &r.Builds[b].Items[i]
				item.At.Line += 7
				item.Found, item.Needed, item.Do = "another value", "another limit", nil
			}
		}
		after := read(t, r).Results
		seen := map[string]bool{}
		for i, res := range before {
			print := res.Fingerprints[fingerprint]
			require.Regexp(t, "^[0-9a-f]{64}$", print)
			require.False(t, seen[print], res.RuleID)
			seen[print] = true
			require.Equal(t, print, after[i].Fingerprints[fingerprint])
			require.NotEqual(t, res.Message, after[i].Message)
		}
	}
}

// TestURI: the escapes are those of RFC 3986, 2.1 and 4.2, worked out by hand.
func TestURI(t *testing.T) {
	for file, want := range map[string]string{
		"examples/a.build.yaml": "examples/a.build.yaml",
		reporttest.File:         "shop,%2050%25/%232%20one%7Ctwo.build.yaml",
		"a:b.build.yaml":        "./a:b.build.yaml",
		"../é.build.yaml":       "../%C3%A9.build.yaml",
		"/tmp/a.build.yaml":     "file:///tmp/a.build.yaml",
	} {
		require.Equal(t, want, uri(file))
	}
}

func TestHoldsNone(t *testing.T) { reporttest.HoldsNone(t, New(&report.Spool{})) }
