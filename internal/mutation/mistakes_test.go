package mutation

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"trialfit/internal/check"
	"trialfit/internal/verdict"
)

// finished is the build that the mistakes are planted in.
const finished = "../../examples/patrol-truck-finished/patrol-truck-finished.build.yaml"

type mistake struct {
	Mistake string
	Change  map[string]yaml.Node
	Rule    string
}

// TestMistakes plants one mistake of the shop after the other in a build that
// passes: the rule that is there for it must catch each.
func TestMistakes(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("testdata/mistakes.yaml")
	require.NoError(t, err)
	var all []mistake
	require.NoError(t, yaml.Unmarshal(text, &all))
	require.GreaterOrEqual(t, len(all), 30)
	build, err := os.ReadFile(finished)
	require.NoError(t, err)

	c := checker(t, "inspection")
	whole, err := c.File(t.Context(), finished)
	require.NoError(t, err)
	require.Equal(t, verdict.Pass, whole.Verdict.Verdict)

	for _, m := range all {
		t.Run(m.Mistake, func(t *testing.T) {
			require.NotNil(t, c.Book.Rules[m.Rule], "no rule %s", m.Rule)
			var doc yaml.Node
			require.NoError(t, yaml.Unmarshal(build, &doc))
			for path, value := range m.Change {
				put(t, doc.Content[0], strings.Split(path, "."), value)
			}
			planted, err := c.Loader.Nodes(doc.Content[0], whole.Manifest.File, whole.Manifest.Dir)
			require.NoError(t, err)
			r, err := c.Check(t.Context(), planted)
			require.NoError(t, err)
			outcome := r.Verdict.Rules[m.Rule].Outcome
			require.True(t, outcome == verdict.NotMet || outcome == verdict.Unproven, "%s says %s; caught by: %s", m.Rule, outcome, strings.Join(caught(whole, r), ", "))
		})
	}
}

// caught lists the rules that a planted mistake has turned.
func caught(before, after *check.Report) []string {
	var ids []string
	for id, rule := range after.Verdict.Rules {
		open := rule.Outcome == verdict.NotMet || rule.Outcome == verdict.Unproven
		if was := before.Verdict.Rules[id].Outcome; open && was != rule.Outcome {
			ids = append(ids, id)
		}
	}
	return ids
}

// put sets the value at a manifest path, or takes it away where the value is
// empty. A step names a key, or in a list the id of an item.
func put(t *testing.T, at *yaml.Node, path []string, value yaml.Node) {
	t.Helper()
	step, rest := path[0], path[1:]
	gone := value.Kind == 0 || value.Tag == "!!null"
	switch at.Kind {
	case yaml.MappingNode:
		for i := 0; i < len(at.Content); i += 2 {
			if at.Content[i].Value != step {
				continue
			}
			switch {
			case len(rest) > 0:
				put(t, at.Content[i+1], rest, value)
			case gone:
				at.Content = append(at.Content[:i:i], at.Content[i+2:]...)
			default:
				at.Content[i+1] = &value
			}
			return
		}
	case yaml.SequenceNode:
		for i, item := range at.Content {
			if idOf(item) != step {
				continue
			}
			if len(rest) > 0 {
				put(t, item, rest, value)
			} else {
				require.True(t, gone, "an item is taken out whole, or changed below")
				at.Content = append(at.Content[:i:i], at.Content[i+1:]...)
			}
			return
		}
	}
	require.Fail(t, "nothing stands at "+strings.Join(path, "."))
}

func idOf(item *yaml.Node) string {
	for i := 0; i+1 < len(item.Content); i += 2 {
		if item.Content[i].Value == "id" {
			return item.Content[i+1].Value
		}
	}
	return ""
}
