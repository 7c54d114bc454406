// Package meta holds the tests of the repository as a whole: its layout, the
// direction of its imports, and what its documents promise.
package meta
