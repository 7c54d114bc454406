package junit

import (
	"encoding/xml"
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/report"
	"trialfit/internal/report/reporttest"
)

func written(t *testing.T, r reporttest.Run) string {
	t.Helper()
	return string(r.Write(t, New(&report.Spool{})))
}

func TestGolden(t *testing.T) {
	reporttest.Golden(t, "example.xml", []byte(written(t, reporttest.Example(t))))
	reporttest.Golden(t, "sample.xml", []byte(written(t, reporttest.Sample(t))))
}

// TestOneDocument: suites written one by one make the bytes that encoding/xml
// makes of the whole document.
func TestOneDocument(t *testing.T) {
	sample := reporttest.Sample(t)
	for name, r := range map[string]reporttest.Run{
		"example": reporttest.Example(t), "sample": sample, "nothing": {},
		"unread": {Unread: sample.Unread}, "judged": {Builds: sample.Builds},
	} {
		got := written(t, r)
		var doc suites
		require.NoError(t, xml.Unmarshal([]byte(got), &doc))
		require.Len(t, doc.Suites, len(r.Builds)+len(r.Unread), name)
		whole, err := xml.MarshalIndent(doc, "", "  ")
		require.NoError(t, err)
		require.Equal(t, xml.Header+string(whole)+"\n", got, name)
	}
}

// validate holds a document against the XSD of the JUnit XML that Jenkins
// reads; see testdata/outside.
func validate(t *testing.T, doc string) error {
	t.Helper()
	program, err := exec.LookPath("xmllint")
	if err != nil {
		require.Empty(t, os.Getenv("CI"), "xmllint is not installed (Debian package libxml2-utils)")
		t.Skip("xmllint is not installed (Debian package libxml2-utils)")
	}
	cmd := exec.Command(program, "--noout", "--nonet", "--schema", "../../../testdata/outside/jenkins-junit.xsd", "-")
	cmd.Stdin = strings.NewReader(doc)
	out, err := cmd.CombinedOutput()
	t.Logf("%s", out)
	return err
}

func TestPublishedSchema(t *testing.T) {
	for name, r := range map[string]reporttest.Run{
		"example": reporttest.Example(t), "sample": reporttest.Sample(t), "nothing": {},
	} {
		require.NoError(t, validate(t, written(t, r)), name)
	}
}

// TestPublishedSchemaRefuses shows that the schema has teeth.
func TestPublishedSchemaRefuses(t *testing.T) {
	good := written(t, reporttest.Sample(t))
	for name, change := range map[string][2]string{
		"an attribute it does not know": {`<testcase classname`, `<testcase line="4" classname`},
		"an element it does not know":   {`<system-out>`, `<note></note><system-out>`},
		"a case without a name":         {`name="sample/strap"`, ``},
		"no XML":                        {`</testsuites>`, ``},
	} {
		require.Contains(t, good, change[0])
		require.Error(t, validate(t, strings.Replace(good, change[0], change[1], 1)), name)
	}
}

// TestHostileText: a reader gets back what was written, with a mark where XML
// 1.0 (2.2, Char) has no place for a character.
func TestHostileText(t *testing.T) {
	doc := written(t, reporttest.Sample(t))
	require.NotContains(t, doc, "\x00")
	require.NotContains(t, doc, "\ufffe")
	var back suites
	require.NoError(t, xml.Unmarshal([]byte(doc), &back))
	for _, s := range back.Suites {
		for _, c := range s.Cases {
			if c.Name == "sample/brake_lines" {
				require.Contains(t, c.Failure.Text, "50% off: a|b, <b>x</b> & `rm`")
				require.Contains(t, c.Failure.Text, "]]> {0}")
				require.Contains(t, c.Failure.Text, "no\ufffd\ufffd[1m")
			}
		}
	}
}

func TestOutcomes(t *testing.T) {
	var back suites
	require.NoError(t, xml.Unmarshal([]byte(written(t, reporttest.Sample(t))), &back))
	got := map[string]string{}
	for _, s := range back.Suites {
		for _, c := range s.Cases {
			require.Equal(t, s.Name, c.Class)
			first, _, _ := strings.Cut(c.Skipped, "\n")
			switch {
			case c.Error != nil:
				got[s.Name+" "+c.Name] = "error: " + c.Error.Type
			case c.Failure != nil:
				got[s.Name+" "+c.Name] = "failure: " + c.Failure.Type
			case first != "":
				got[s.Name+" "+c.Name] = "skipped: " + first
			default:
				got[s.Name+" "+c.Name] = "passed"
			}
		}
	}
	const waived = "skipped: electrical.circuits.pump: waived: lent: a|b, <i>lent</i> by @shop until the part comes: see #1; R. Example, until 2027-01-31"
	require.Equal(t, map[string]string{
		"bad manifest":                   "error: could not be judged",
		"#2 one|two sample/absent":       "passed",
		"#2 one|two sample/brake_lines":  "failure: not met",
		"#2 one|two sample/fuse_size":    waived,
		"#2 one|two sample/hose_size":    "failure: unproven",
		"#2 one|two sample/label":        "skipped: note, unproven:",
		"#2 one|two sample/sender_seals": "skipped: due at road-test, so far not met:",
		"#2 one|two sample/strap":        "skipped: should, not met:",
		"plain sample/fuse_size":         waived,
	}, got)
	require.Equal(t, [3]int{9, 2, 1}, [3]int{back.Tests, back.Failures, back.Errors})
}

// TestNamesHoldNoValues: the names of a run do not change with its values.
func TestNamesHoldNoValues(t *testing.T) {
	r := reporttest.Sample(t)
	names := func() (all []string) {
		var back suites
		require.NoError(t, xml.Unmarshal([]byte(written(t, r)), &back))
		for _, s := range back.Suites {
			for _, c := range s.Cases {
				all = append(all, c.Class+" "+c.Name)
			}
		}
		return all
	}
	before := names()
	for i := range r.Builds[0].Items {
		r.Builds[0].Items[i].Found = "another value"
		r.Builds[0].Items[i].At.Line++
	}
	require.Equal(t, before, names())
}

func TestHoldsNone(t *testing.T) { reporttest.HoldsNone(t, New(&report.Spool{})) }
