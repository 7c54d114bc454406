package markdown

import (
	"regexp"
	"strings"

	"trialfit/internal/report"
)

// joiner is U+2060, of no width. Put inside a name or an address it keeps a
// site from making a mention or a link of it, which no backslash does: sites
// look for those in the finished text.
const joiner = "\u2060"

var (
	reach = strings.NewReplacer("://", joiner+"://", "www.", "www"+joiner+".", "WWW.", "WWW"+joiner+".", "@", "@"+joiner)
	issue = regexp.MustCompile(`#(\d)`)
	marks = strings.NewReplacer(
		"&", "&amp;", "<", "&lt;", ">", "&gt;",
		`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "~", `\~`, "|", `\|`,
		"[", `\[`, "]", `\]`, "#", `\#`, "$", "<span>$</span>",
	)
)

// Escape makes text safe inside GitHub-flavoured Markdown: it shows as it was
// written, on one line, and makes no markup, table cell, mention or link.
func Escape(s string) string {
	return marks.Replace(issue.ReplaceAllString(reach.Replace(report.Plain(s)), "#"+joiner+"$1"))
}
