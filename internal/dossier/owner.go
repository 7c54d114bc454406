package dossier

import (
	"trialfit/internal/report"
	"trialfit/internal/rulebook"
)

// Owner writes the hand-over book of a judged build.
func Owner(b report.Build, book *rulebook.Book) (*Document, error) {
	a := newAuthor(b, book)
	d, err := a.document(ownerTitle)
	return d, err
}
