// Package schemas holds the JSON Schemas that describe what trialfit reads and writes.
package schemas

import "embed"

// FS holds every schema file, by name.
//
//go:embed *.json
var FS embed.FS
