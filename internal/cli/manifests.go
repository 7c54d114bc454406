package cli

import (
	"errors"
	"fmt"
	"slices"
	"sync"

	"github.com/spf13/cobra"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
)

// source loads one manifest, anew each time.
type source func() (*manifest.Manifest, error)

// find lists the manifests that are named, without loading them.
func find(cmd *cobra.Command, c *check.Checker, args []string, root string) ([]source, error) {
	if slices.Contains(args, manifest.Stdin) {
		if len(args) > 1 {
			return nil, errors.New(`"-" stands alone: one manifest is read from standard input`)
		}
		return []source{sync.OnceValues(func() (*manifest.Manifest, error) {
			return c.Loader.Read(cmd.InOrStdin(), manifest.Stdin, root)
		})}, nil
	}
	paths, err := check.Find(args)
	if err != nil {
		return nil, err
	}
	sources := make([]source, len(paths))
	for i, path := range paths {
		sources[i] = func() (*manifest.Manifest, error) { return c.Loader.File(path) }
	}
	return sources, nil
}

// load reads every manifest; those that can't be read are told together, and
// do not keep the others from being judged.
func load(cmd *cobra.Command, c *check.Checker, args []string, root string) ([]*manifest.Manifest, []error, error) {
	sources, err := find(cmd, c, args, root)
	if err != nil {
		return nil, nil, err
	}
	var manifests []*manifest.Manifest
	var problems []error
	for _, s := range sources {
		if m, err := s(); err != nil {
			problems = append(problems, err)
		} else {
			manifests = append(manifests, m)
		}
	}
	return manifests, problems, nil
}

// each loads one manifest after the other and hands it on, holding none. It
// returns the problems of those that could not be read, then of those that do
// found fault with; an error of another kind ends the run.
func each(cmd *cobra.Command, sources []source, do func(*manifest.Manifest) error) ([]error, error) {
	var unread, refused []error
	shown := newProgress(cmd.ErrOrStderr(), len(sources))
	defer shown.end()
	for n, s := range sources {
		m, err := s()
		if err != nil {
			unread = append(unread, err)
			continue
		}
		shown.at(n+1, report.Plain(m.Name()))
		err = do(m)
		var faults manifest.Problems
		switch {
		case errors.As(err, &faults):
			refused = append(refused, err)
		case err != nil:
			return nil, err
		}
	}
	return append(unread, refused...), nil
}

// record writes the digests of the evidence of every manifest, unless one of
// them can't be read.
func record(cmd *cobra.Command, sources []source) error {
	for _, s := range sources {
		if _, err := s(); err != nil {
			return nil // told when they are judged
		}
	}
	for _, s := range sources {
		m, err := s()
		if err != nil {
			return err
		}
		name, err := check.Record(m)
		if err != nil {
			return err
		}
		said := "recorded " + name
		if name == "" {
			said = m.File + ": no evidence file to record"
		}
		fmt.Fprintln(cmd.ErrOrStderr(), said)
	}
	return nil
}
