package prebuy

import (
	"errors"
	"path/filepath"
	"slices"

	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
)

// evidence lists the papers of the intent and of the candidates.
func (s *Shortlist) evidence() []*manifest.Node {
	papers := slices.Clone(s.wanted.Field("evidence").Items)
	for _, c := range slices.Concat(s.Chassis, s.Donors) {
		papers = append(papers, c.evidence()...)
	}
	return papers
}

func (c *Candidate) evidence() []*manifest.Node {
	if n := c.node.Find("known.evidence"); n != nil {
		return n.Items
	}
	return nil
}

// files are the files of papers as they are written, each once.
func files(papers []*manifest.Node) []string {
	var out []string
	for _, paper := range papers {
		if f := paper.Field("file"); f.Value != nil && !slices.Contains(out, f.Value.Text) {
			out = append(out, f.Value.Text)
		}
	}
	return out
}

// sumFile is the side file with the digests of a shortlist's papers.
func (s *Shortlist) sumFile() string {
	return evidence.SumFile(filepath.Join(s.dir, filepath.Base(s.File)))
}

// Record writes the digests of the papers into the side file of the shortlist
// and returns its name, "" where no paper has a file. Nothing is written when a
// file is missing.
func (s *Shortlist) Record() (string, error) {
	paths := files(s.evidence())
	if len(paths) == 0 {
		return "", nil
	}
	sums, err := evidence.Record(s.dir, paths)
	if err != nil {
		return "", err
	}
	return s.sumFile(), evidence.WriteSums(s.sumFile(), sums)
}

// inspect looks at each file once, by what is written: combinations share them.
func (s *Shortlist) inspect() (map[string]evidence.State, error) {
	papers := s.evidence()
	if len(papers) == 0 {
		return nil, nil
	}
	sums, err := evidence.ReadSums(s.sumFile())
	if err != nil {
		return nil, err
	}
	states := map[string]evidence.State{}
	var problems manifest.Problems
	for _, paper := range papers {
		path := paper.Field("file")
		if path.Value == nil {
			continue
		}
		if _, seen := states[path.Value.Text]; seen {
			continue
		}
		f, err := evidence.Inspect(s.dir, path.Value.Text, sums)
		if err != nil {
			problems = append(problems, manifest.Problem{File: s.File, Position: path.At, Message: err.Error()})
		}
		states[path.Value.Text] = f.State
	}
	if len(problems) > 0 {
		return nil, problems.Sorted()
	}
	return states, nil
}

// Papers are the evidence files of a combination as they are written, relative
// to dir, with the digests that were recorded of them.
func (s *Shortlist) Papers(c, d *Candidate) (dir string, paths []string, recorded evidence.Sums, err error) {
	paths = files(slices.Concat(s.wanted.Field("evidence").Items, c.evidence(), d.evidence()))
	all, err := evidence.ReadSums(s.sumFile())
	if err != nil {
		return "", nil, nil, err
	}
	recorded = evidence.Sums{}
	var faults []error
	for _, path := range paths {
		clean, err := evidence.Clean(path)
		if err != nil {
			faults = append(faults, err)
		} else if sum, known := all[clean]; known {
			recorded[clean] = sum
		}
	}
	return s.dir, paths, recorded, errors.Join(faults...)
}
