package schema

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"time"

	"trialfit/internal/quantity"
)

// expects says in words what a leaf takes.
func (s *Shape) expects() string {
	switch s.Leaf {
	case LeafQuantity:
		switch {
		case s.QuantityOf != "":
			return "a value with a unit"
		case s.Quantity == quantity.Ratio:
			return "a ratio such as 4.10 or 62 %"
		}
		return fmt.Sprintf("a %s with a unit (%s)", s.Quantity, few(quantity.Symbols(s.Quantity)))
	case LeafWord:
		return "one of " + strings.Join(s.Words, ", ")
	case LeafInteger:
		return "a whole number"
	case LeafBoolean:
		return "true or false"
	case LeafDate:
		return "a date such as 2026-05-14"
	case LeafThread:
		return `a thread such as "1/2 NPT internal"`
	case LeafTyre:
		return `a tyre size such as "265/75R16"`
	case LeafVIN:
		return "a vehicle identification number"
	case LeafID:
		return "an id: letters a to z, digits and hyphens"
	case LeafVersion:
		return "1, the version of this form"
	case LeafRefs:
		return "a list of ids under " + s.Ref
	case LeafShown:
		return "the value that the paper shows"
	case LeafMoney:
		return `an amount with its currency such as "4200..4800 USD"`
	}
	if s.Ref != "" {
		return "the id of an item under " + s.Ref
	}
	return "text"
}

// Refusal says on one line why v has not the form of the leaf, "" if it has.
// Whether a quantity or a thread can be read is another question. kind is that
// of a quantity.
func (s *Shape) Refusal(v any, kind quantity.Kind) string {
	text, isText := v.(string)
	number, isNumber := v.(json.Number)
	switch s.Leaf {
	case LeafQuantity:
		if isNumber && quantity.Known(kind) {
			if _, err := quantity.Parse(number.String(), kind); err != nil {
				return err.Error()
			}
			return ""
		}
	case LeafWord:
		return s.wordRefusal(v)
	case LeafInteger:
		return integerRefusal(v)
	case LeafBoolean:
		return booleanRefusal(v)
	case LeafDate:
		return dateRefusal(v)
	case LeafID:
		return idRefusal(v)
	case LeafRefs:
		return fmt.Sprintf("found %s, needed %s: write [%s]", show(v), s.expects(), Clip(text))
	case LeafShown:
		_, isFlag := v.(bool)
		isText = isText || isNumber || isFlag
	case LeafText, LeafTyre, LeafVIN:
		if s.Ref != "" {
			return idRefusal(v)
		}
		if !isText && v != nil {
			return fmt.Sprintf("found %s, needed %s: write it in quotes, %q", show(v), s.expects(), show(v))
		}
	}
	if isText {
		return ""
	}
	return fmt.Sprintf("found %s, needed %s", show(v), s.expects())
}

func (s *Shape) wordRefusal(v any) string {
	text, isText := v.(string)
	words := s.Words
	if s.None {
		words = append(slices.Clip(words), "none")
	}
	if isText && slices.Contains(words, text) {
		return ""
	}
	return fmt.Sprintf("found %s, needed %s%s", show(v), s.expects(), s.orNone()) + suggest(text, words)
}

func (s *Shape) orNone() string {
	if s.None {
		return ", or none"
	}
	return ""
}

func integerRefusal(v any) string {
	switch v := v.(type) {
	case json.Number:
		_, fraction, _ := strings.Cut(v.String(), ".")
		if strings.Trim(fraction, "0") == "" {
			return ""
		}
	case string:
		var n json.Number
		if json.Unmarshal([]byte(v), &n) == nil && integerRefusal(n) == "" {
			return fmt.Sprintf("found text %s, needed a whole number: write %s without quotes", Quote(v), Clip(v))
		}
	}
	return fmt.Sprintf("found %s, needed a whole number", show(v))
}

var yes = []string{"yes", "y", "on", "true", "1"}
var no = []string{"no", "n", "off", "false", "0"}

func booleanRefusal(v any) string {
	if _, ok := v.(bool); ok {
		return ""
	}
	said := strings.ToLower(strings.Trim(show(v), `"`))
	switch {
	case slices.Contains(yes, said):
		return fmt.Sprintf("found %s, needed true or false: write true", show(v))
	case slices.Contains(no, said):
		return fmt.Sprintf("found %s, needed true or false: write false", show(v))
	}
	return fmt.Sprintf("found %s, needed true or false", show(v))
}

func dateRefusal(v any) string {
	text, ok := v.(string)
	if !ok {
		return fmt.Sprintf("found %s, needed a date such as 2026-05-14", show(v))
	}
	_, err := time.Parse(time.DateOnly, text)
	if err == nil {
		return ""
	}
	var year, month, day int
	if n, _ := fmt.Sscanf(text, "%d-%d-%d", &year, &month, &day); n == 3 && month >= 1 && month <= 12 && day >= 1 {
		first := time.Date(year, time.Month(month), 1, 0, 0, 0, 0, time.UTC)
		last := first.AddDate(0, 1, -1).Day()
		if year >= 1000 && year <= 9999 && day > last {
			return fmt.Sprintf("%s is not in the calendar: %s %d has %d days", Quote(text), first.Month(), year, last)
		}
		if year >= 1000 && year <= 9999 {
			return fmt.Sprintf("found %s, needed a date such as 2026-05-14, did you mean %q?", Quote(text), first.AddDate(0, 0, day-1).Format(time.DateOnly))
		}
	}
	return fmt.Sprintf("found %s, needed a date such as 2026-05-14: year, month, day", Quote(text))
}

func idRefusal(v any) string {
	text, ok := v.(string)
	switch {
	case !ok && v != nil:
		return fmt.Sprintf("found %s, needed an id: letters a to z, digits and hyphens; write it in quotes, %q", show(v), slug(show(v)))
	case isID(text):
		return ""
	}
	offer := ""
	if s := slug(text); s != "" {
		offer = fmt.Sprintf(", such as %q", s)
	}
	return fmt.Sprintf("found %s, needed an id: letters a to z, digits and hyphens%s", show(v), offer)
}

func isID(s string) bool { return s != "" && s == rawSlug(s) }

// slug is the id nearest to a text, "" if it has no letter or digit.
func slug(text string) string { return rawSlug(Clip(text)) }

func rawSlug(text string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(text) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9', r == '-' && b.Len() > 0:
			b.WriteRune(r)
		case (r == ' ' || r == '_' || r == '.') && b.Len() > 0:
			b.WriteByte('-')
		}
	}
	return b.String()
}

// show is a value as a message quotes it.
func show(v any) string {
	switch v := v.(type) {
	case nil:
		return "nothing"
	case string:
		return Quote(v)
	case json.Number:
		return Clip(v.String())
	case map[string]any:
		return "a section"
	case []any:
		return "a list"
	default:
		return fmt.Sprint(v)
	}
}
