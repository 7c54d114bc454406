package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"regexp"
	"strings"
)

// CSV writes rows as a table: UTF-8 without a mark in front, cells and line
// ends (CRLF) by RFC 4180. Cells that a spreadsheet would take for a formula
// begin with an apostrophe.
func CSV(w io.Writer, rows [][]string) error {
	table := csv.NewWriter(w)
	table.UseCRLF = true
	for _, row := range rows {
		safe := make([]string, len(row))
		for i := range row {
			safe[i] = cell(row[i])
		}
		if err := table.Write(safe); err != nil {
			return fmt.Errorf("writing the table: %w", err)
		}
	}
	table.Flush()
	if err := table.Error(); err != nil {
		return fmt.Errorf("writing the table: %w", err)
	}
	return nil
}

var plainNumber = regexp.MustCompile(`^[-+]?[0-9]+(\.[0-9]+)?$`)

// cell makes text safe to open in a spreadsheet.
func cell(s string) string {
	// Tab and carriage return start a formula too, before they become visible.
	begins := strings.TrimLeft(s, " \n")
	safe := Plain(s)
	if begins != "" && strings.ContainsRune("=+-@\t\r＝＋－＠", []rune(begins)[0]) && !plainNumber.MatchString(s) {
		return "'" + safe
	}
	return safe
}
