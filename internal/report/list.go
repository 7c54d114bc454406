package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"
)

// List is a list in a JSON document whose items are written before the rest of
// the document is known.
type List struct {
	body   *Spool
	key    string
	indent string // of the line with the key
	some   bool
}

// NewList keeps the items of the list with this key, depth levels deep in its document.
func NewList(body *Spool, key string, depth int) *List {
	return &List{body: body, key: key, indent: strings.Repeat(step, depth)}
}

// step is the indentation of one level.
const step = "  "

// Add writes one more item.
func (l *List) Add(item any) error {
	indent := l.indent + step
	text, err := encode(item, indent)
	if err != nil {
		return err
	}
	lead := ",\n"
	if !l.some {
		lead, l.some = "\n", true
	}
	_, err = fmt.Fprintf(l.body, "%s%s%s", lead, indent, text)
	return err
}

// Into writes a document in which the list is empty, and its items, read
// through items, in their place.
func (l *List) Into(w io.Writer, document any, items io.Reader) error {
	text, err := encode(document, "")
	if err != nil {
		return err
	}
	text = append(text, '\n')
	if !l.some {
		_, err := w.Write(text)
		return err
	}
	// In a JSON text the quotes of a key stand nowhere inside a string.
	head, tail, found := bytes.Cut(text, []byte(`"`+l.key+`": []`))
	if !found {
		return fmt.Errorf("no empty list %q in the document", l.key)
	}
	if _, err := fmt.Fprintf(w, `%s"%s": [`, head, l.key); err != nil {
		return err
	}
	if _, err := io.Copy(w, items); err != nil {
		return err
	}
	_, err = fmt.Fprintf(w, "\n%s]%s", l.indent, tail)
	return err
}

// encode gives the JSON of a value, its lines after the first behind indent.
func encode(v any, indent string) ([]byte, error) {
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetIndent(indent, step)
	enc.SetEscapeHTML(false)
	err := enc.Encode(v)
	return bytes.TrimSuffix(out.Bytes(), []byte("\n")), err
}
