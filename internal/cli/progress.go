package cli

import (
	"fmt"
	"io"
	"os"

	"golang.org/x/term"
)

// progress tells a person at a terminal how far a long run is, on one line
// that is gone at its end.
type progress struct {
	w     io.Writer // nil where nobody watches
	total int
}

// long is the number of manifests from which a run is long.
const long = 5

// newProgress is silent unless w is a terminal and the run is long.
func newProgress(w io.Writer, total int) progress {
	f, ok := w.(*os.File)
	if total < long || !ok || !term.IsTerminal(int(f.Fd())) {
		return progress{}
	}
	return progress{w, total}
}

// at says that one more manifest, the nth from 1, is being judged.
func (p progress) at(n int, name string) {
	if p.w != nil {
		fmt.Fprintf(p.w, "\r\x1b[Kchecking %d of %d: %s", n, p.total, name)
	}
}

func (p progress) end() {
	if p.w != nil {
		fmt.Fprint(p.w, "\r\x1b[K")
	}
}
