// Package policies holds the shipped pack: the judge, the verdict, rules,
// limits and regions.
package policies

import "embed"

// FS holds the shipped pack, rooted at its pack.yaml.
//
//go:embed pack.yaml catalogue.json lib verdict rules regions
var FS embed.FS
