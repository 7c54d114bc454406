package evidence

import (
	"regexp"
	"strconv"
)

// pointerBytes is the size, in bytes, that a pointer file stays below. Source:
// the Git LFS specification and its client's cutoff, from memory.
const pointerBytes = 1024

// pointerForm is a pointer in its canonical form. Keys of extensions are left
// out on purpose: beside them, the oid is not the digest of the file a reader
// would see. Source: Git LFS specification, docs/spec.md, "The Pointer".
var pointerForm = regexp.MustCompile(`\Aversion https://git-lfs\.github\.com/spec/v1\noid sha256:([0-9a-f]{64})\nsize (0|[1-9][0-9]*)\n\z`)

// parsePointer reads a Git LFS pointer. What is not exactly one is an ordinary
// file.
func parsePointer(content []byte) (oid string, size int64, ok bool) {
	m := pointerForm.FindSubmatch(content)
	if m == nil {
		return "", 0, false
	}
	size, err := strconv.ParseInt(string(m[2]), 10, 64)
	if err != nil {
		return "", 0, false
	}
	return string(m[1]), size, true
}
