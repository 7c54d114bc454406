package meta

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/schema"
	"trialfit/internal/verdict"
)

// printed finds the leaves that a document prints: it fills every leaf of the
// manifest that only a document reads with a text of its own and looks for that
// in the dossiers.
func printed(t *testing.T) map[string]bool {
	t.Helper()
	f := filler{marks: map[string]string{}}
	filled := f.object(schema.Manifest(), "")
	filled["trialfit"] = 1
	text, err := yaml.Marshal(filled)
	require.NoError(t, err)
	c := dossiertest.Checker(t)
	m, err := c.Loader.Read(strings.NewReader(string(text)), "filled.build.yaml", t.TempDir())
	require.NoError(t, err)
	r, err := c.Check(context.Background(), m)
	require.NoError(t, err)
	b := report.Build{Report: r, Items: verdict.Case{Manifest: m, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()}
	all := strings.Join(append(dossiertest.Texts(dossiertest.Document(t, b)), dossiertest.Texts(dossiertest.Book(t, b))...), "\n")
	found := map[string]bool{}
	for path, mark := range f.marks {
		found[path] = strings.Contains(all, mark)
	}
	return found
}

type filler struct {
	marks map[string]string
	n     int
}

// object fills what is below an object or a list item.
func (f *filler) object(s *schema.Shape, path string) map[string]any {
	out := map[string]any{}
	for _, field := range s.Fields {
		at := strings.TrimPrefix(path+"."+field.Name, ".")
		switch field.Type {
		case schema.Object:
			if inside := f.object(field, at); len(inside) > 0 {
				out[field.Name] = inside
			}
		case schema.List:
			if inside := f.object(field, at+".*"); len(inside) > 1 {
				out[field.Name] = []any{inside}
			}
		default:
			if value := f.leaf(field, at, slices.Contains(s.Required, field.Name)); value != nil {
				out[field.Name] = value
			}
		}
	}
	return out
}

// leaf fills one that only a document reads, and what a list item can't be
// without.
func (f *filler) leaf(s *schema.Shape, path string, required bool) any {
	if s.Reader != "document" {
		switch {
		case s.Leaf == schema.LeafID && s.Ref == "" && !strings.HasPrefix(path, "build."):
			return "item"
		case (required || strings.HasPrefix(path, "waivers.")) && s.Ref == "" && len(s.Examples) > 0:
			return fmt.Sprint(s.Examples[0])
		}
		return nil
	}
	f.n++
	var mark any
	switch s.Leaf {
	case schema.LeafQuantity:
		mark = fmt.Sprintf("%d %s", 7000+f.n, quantity.Symbols(s.Quantity)[0])
	case schema.LeafDate:
		mark = fmt.Sprintf("2001-%02d-%02d", 1+f.n/28%12, 1+f.n%28)
	case schema.LeafInteger:
		mark = 1900 + f.n
	case schema.LeafText:
		mark = fmt.Sprintf("mark %d of a test", f.n)
	default:
		mark = s.Examples[0]
	}
	f.marks[path] = strings.ReplaceAll(fmt.Sprint(mark), "-", " ")
	if s.Leaf == schema.LeafDate {
		f.marks[path] = fmt.Sprint(mark)
	}
	return mark
}
