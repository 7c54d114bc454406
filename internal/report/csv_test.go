package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Cells that a spreadsheet would compute: OWASP, "CSV Injection",
// https://owasp.org/www-community/attacks/CSV_Injection.
func TestCSV(t *testing.T) {
	for in, want := range map[string]string{
		"=1+1":            "'=1+1",
		"+cmd|' /C calc'": "'+cmd|' /C calc'",
		"-2+3":            "'-2+3",
		"@SUM(A1)":        "'@SUM(A1)",
		"\t=1":            "' =1",
		"\r=1":            "'\uFFFD=1",
		"  =1":            "'  =1",
		"＝1":              "'＝1",
		"-12.5":           "-12.5",
		"+3":              "+3",
		"a=b":             "a=b",
		"":                "",
		"5/8 in":          "5/8 in",
	} {
		require.Equal(t, want, cell(in), "%q", in)
	}
	var out strings.Builder
	require.NoError(t, CSV(&out, [][]string{{"a", `b "c"`}, {"d,e", ""}}))
	require.Equal(t, "a,\"b \"\"c\"\"\"\r\n\"d,e\",\r\n", out.String())
}
