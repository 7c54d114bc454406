// Command generate writes the files that are made from others: the catalogue
// of the shipped rules, its readable form, and the schema of the input
// document. Run it at the root of the repository; a test says when its output
// is out of date.
package main

import (
	"fmt"
	"os"
)

func main() {
	files, err := Files(".")
	if err == nil {
		for name, data := range files {
			if err = os.WriteFile(name, data, 0o644); err != nil {
				break
			}
		}
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "generate:", err)
		os.Exit(1)
	}
}
