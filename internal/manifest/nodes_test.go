package manifest_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"trialfit/internal/manifest"
)

// A manifest put together from two parts of another file says where in that
// file a fault is.
func TestNodes(t *testing.T) {
	var file struct {
		First, Second yaml.Node
	}
	text := "first:\n  trialfit: 1\n  build: {name: x}\nsecond:\n  engine:\n    mass: 745 lb\n    idle_speed: 700 lb\n"
	require.NoError(t, yaml.Unmarshal([]byte(text), &file))
	root := yaml.Node{Kind: yaml.MappingNode, Tag: "!!map", Content: append(file.First.Content, file.Second.Content...)}
	_, err := newLoader(t).Nodes(&root, "list.yaml", t.TempDir())
	require.ErrorContains(t, err, `list.yaml:7:17: "700 lb"`)
	file.Second.Content[1].Content = file.Second.Content[1].Content[:2]
	m, err := newLoader(t).Nodes(&root, "list.yaml", t.TempDir())
	require.NoError(t, err)
	require.Equal(t, manifest.Position{Line: 6, Column: 11}, m.Position("engine.mass"))
}
