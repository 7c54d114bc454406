package schema

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
)

// object is a JSON object that remembers the order of its keys: a schema is
// read from top to bottom, and so are the manifests written from it.
type object struct {
	keys   []string
	values map[string]any
}

func (o *object) get(key string) any { return o.values[key] }

func (o *object) str(key string) string {
	s, _ := o.values[key].(string)
	return s
}

func (o *object) flag(key string) bool {
	b, _ := o.values[key].(bool)
	return b
}

func (o *object) strings(key string) []string {
	list, _ := o.values[key].([]any)
	out := make([]string, 0, len(list))
	for _, v := range list {
		if s, ok := v.(string); ok {
			out = append(out, s)
		}
	}
	return out
}

// decodeOrdered reads one JSON document, objects as *object.
func decodeOrdered(data []byte) (any, error) {
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.UseNumber()
	v, err := decodeValue(dec)
	if err != nil {
		return nil, err
	}
	if _, err := dec.Token(); err != io.EOF {
		return nil, fmt.Errorf("more than one JSON document")
	}
	return v, nil
}

func decodeValue(dec *json.Decoder) (any, error) {
	token, err := dec.Token()
	if err != nil {
		return nil, err
	}
	delim, ok := token.(json.Delim)
	if !ok {
		return token, nil
	}
	if delim == '[' {
		list := []any{}
		for dec.More() {
			v, err := decodeValue(dec)
			if err != nil {
				return nil, err
			}
			list = append(list, v)
		}
		_, err := dec.Token()
		return list, err
	}
	o := &object{values: map[string]any{}}
	for dec.More() {
		key, err := dec.Token()
		if err != nil {
			return nil, err
		}
		v, err := decodeValue(dec)
		if err != nil {
			return nil, err
		}
		name := key.(string)
		if _, seen := o.values[name]; seen {
			return nil, fmt.Errorf("key %q stands twice", name)
		}
		o.keys = append(o.keys, name)
		o.values[name] = v
	}
	_, err = dec.Token()
	return o, err
}

// plain turns objects into maps, without order.
func plain(v any) any {
	switch v := v.(type) {
	case *object:
		out := make(map[string]any, len(v.keys))
		for key, value := range v.values {
			out[key] = plain(value)
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, value := range v {
			out[i] = plain(value)
		}
		return out
	default:
		return v
	}
}
