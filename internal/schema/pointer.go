package schema

import (
	"strconv"
	"strings"
)

var (
	escaper   = strings.NewReplacer("~", "~0", "/", "~1")
	unescaper = strings.NewReplacer("~1", "/", "~0", "~")
)

// Pointer is the JSON pointer (RFC 6901) of what stands under a key of the
// object at parent.
func Pointer(parent, key string) string { return parent + "/" + escaper.Replace(key) }

// PointerAt is the JSON pointer of an item of the list at parent, from 0.
func PointerAt(parent string, i int) string { return parent + "/" + strconv.Itoa(i) }

// steps are the keys and indices of a pointer.
func steps(pointer string) []string {
	parts := strings.Split(pointer, "/")[1:]
	for i := range parts {
		parts[i] = unescaper.Replace(parts[i])
	}
	return parts
}
