package evidence

import "errors"

// Record computes the digests of the given paths, as written, below the folder
// dir. A missing file is an error here: nothing can be recorded of it. All
// errors are joined, one line each, and then there are no sums. It writes
// nothing.
func Record(dir string, paths []string) (Sums, error) {
	root, err := openRoot(dir)
	if err != nil {
		return nil, err
	}
	defer root.Close()
	sums := Sums{}
	seen := map[string]bool{}
	var errs []error
	for _, written := range paths {
		clean, err := Clean(written)
		key := clean
		if err != nil {
			key = written
		}
		if seen[key] {
			continue
		}
		seen[key] = true
		if err != nil {
			errs = append(errs, err)
			continue
		}
		file, err := examine(root, written, clean)
		switch {
		case err != nil:
			errs = append(errs, err)
		case file.State == Missing:
			errs = append(errs, &PathError{Path: written, Found: "is not there", Do: "add the file or take it out of the manifest"})
		default:
			sums[clean] = file.Digest
		}
	}
	if len(errs) > 0 {
		return nil, errors.Join(errs...)
	}
	return sums, nil
}
