package cli

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
	"trialfit/internal/prebuy"
	"trialfit/internal/start"
)

// begin starts the manifest of a build in a folder from the combination
// chosen. Nothing that is there is overwritten.
func begin(cmd *cobra.Command, c *check.Checker, s *prebuy.Shortlist, dir, id string) error {
	chassis, donor, err := combination(s, id)
	if err != nil {
		return err
	}
	text, err := s.Begin(chassis, donor)
	if err != nil {
		return err
	}
	lacking, err := start.Lacking(c.Book.Form.Shape(), text)
	if err != nil {
		return err
	}
	text = append(text, lacking...)
	out := filepath.Join(dir, s.Base()+manifest.Suffix)
	if _, err := os.Lstat(out); err == nil {
		return fmt.Errorf("%s exists already: name another folder, nothing is overwritten", filepath.ToSlash(out))
	}
	from, papers, sums, err := s.Papers(chassis, donor)
	if err != nil {
		return err
	}
	digests := evidence.SumFile(out)
	if _, err := os.Lstat(digests); err == nil && len(sums) > 0 {
		return fmt.Errorf("%s exists already: name another folder, nothing is overwritten", filepath.ToSlash(digests))
	}
	if _, err := c.Loader.Read(bytes.NewReader(text), filepath.ToSlash(out), from); err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("making the folder: %w", err)
	}
	for _, paper := range papers {
		if err := bring(from, dir, paper); err != nil {
			return err
		}
	}
	if len(sums) > 0 {
		if err := evidence.WriteSums(digests, sums); err != nil {
			return err
		}
	}
	if err := save(out, func(w io.Writer) error { _, err := w.Write(text); return err }); err != nil {
		return err
	}
	return printQuestions(cmd, c, out, text)
}

// bring copies an evidence file along; one that is not there stays missing,
// and the check of the build says so.
func bring(from, to, paper string) error {
	clean, err := evidence.Clean(paper)
	if err != nil {
		return err
	}
	in, err := evidence.Open(from, clean)
	if err != nil {
		return nil // told by the check of the build, with its line
	}
	defer in.Close()
	target := filepath.Join(to, filepath.FromSlash(clean))
	if _, err := os.Lstat(target); err == nil || strings.HasPrefix(clean, "..") {
		return nil
	}
	if err := os.MkdirAll(filepath.Dir(target), 0o755); err != nil {
		return fmt.Errorf("copying evidence: %w", err)
	}
	return save(target, func(w io.Writer) error { _, err := io.Copy(w, in); return err })
}
