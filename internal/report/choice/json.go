package choice

import (
	"encoding/json"
	"io"

	"trialfit/internal/prebuy"
)

// JSON writes the answer for programs: every combination, the leading ones
// with all that is taken, reckoned and open.
func JSON(w io.Writer, r *prebuy.Result) error {
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", "  ")
	return enc.Encode(view(r))
}
