// Command trialfit judges whether an engine swap may pass its next hold point.
package main

import (
	"os"

	"trialfit/internal/cli"
)

func main() { os.Exit(cli.Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
