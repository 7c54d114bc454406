package json

import (
	"bytes"
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/report"
	"trialfit/internal/report/reporttest"
)

// TestOneDocument: builds written one by one make the bytes that encoding/json
// makes of the whole document.
func TestOneDocument(t *testing.T) {
	sample := reporttest.Sample(t)
	for name, r := range map[string]reporttest.Run{
		"example": reporttest.Example(t), "sample": sample, "nothing": {},
		"unread": {Unread: sample.Unread}, "judged": {Builds: sample.Builds},
	} {
		got := r.Write(t, New(&report.Spool{}, nil))
		var doc document
		require.NoError(t, json.Unmarshal(got, &doc))
		require.Len(t, doc.Builds, len(r.Builds), name)
		var whole bytes.Buffer
		enc := json.NewEncoder(&whole)
		enc.SetIndent("", "  ")
		enc.SetEscapeHTML(false)
		require.NoError(t, enc.Encode(doc))
		require.Equal(t, whole.String(), string(got), name)
	}
}

func TestHoldsNone(t *testing.T) { reporttest.HoldsNone(t, New(&report.Spool{}, nil)) }
