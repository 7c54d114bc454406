package rulebook

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
)

// isoCodes is where Debian's package iso-codes puts ISO 3166-1 and 3166-2.
const isoCodes = "/usr/share/iso-codes/json"

// TestRegionCodes holds the codes and names of the regions against the tables
// of ISO 3166, https://packages.debian.org/iso-codes.
func TestRegionCodes(t *testing.T) {
	if _, err := os.Stat(isoCodes); err != nil {
		require.Empty(t, os.Getenv("CI"), "ISO 3166 is not installed (Debian package iso-codes)")
		t.Skip("ISO 3166 is not installed (Debian package iso-codes)")
	}
	names := map[string]string{}
	for _, part := range []string{"3166-1", "3166-2"} {
		text, err := os.ReadFile(filepath.Join(isoCodes, "iso_"+part+".json"))
		require.NoError(t, err)
		var doc map[string][]struct {
			Alpha2 string `json:"alpha_2"`
			Code   string `json:"code"`
			Name   string `json:"name"`
		}
		require.NoError(t, json.Unmarshal(text, &doc))
		for _, e := range doc[part] {
			names[e.Alpha2+e.Code] = e.Name
		}
	}
	b, err := Open(sheet.All())
	require.NoError(t, err)
	codes := b.Regions()
	require.Contains(t, codes, "US-CA")
	for _, code := range codes {
		chain, err := b.Chain(code)
		require.NoError(t, err)
		r := chain[len(chain)-1]
		require.Contains(t, names, code)
		// The standard calls a country by its official name, and gives it in the
		// country's language: one word in common will do.
		require.True(t, common(r.Name, names[code]), "%s is %s here and %s in ISO 3166", code, r.Name, names[code])
		if country, _, sub := strings.Cut(code, "-"); sub {
			require.Equal(t, country, r.Inherits, code)
		}
	}
}

func common(a, b string) bool {
	for _, word := range strings.FieldsFunc(strings.ToLower(a), func(r rune) bool { return r == ' ' || r == ',' || r == '(' }) {
		if len(word) > 3 && strings.Contains(strings.ToLower(b), word) {
			return true
		}
	}
	return false
}
