package evidence

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// Open opens the evidence file at path, as written, below the folder dir, for
// reading. The error is a *PathError: what Inspect refuses is refused here too,
// and so is a file that isn't there.
func Open(dir, path string) (io.ReadCloser, error) {
	clean, err := Clean(path)
	if err != nil {
		return nil, err
	}
	root, err := openRoot(dir)
	if err != nil {
		return nil, err
	}
	defer root.Close()
	f, err := open(root, path, clean)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, &PathError{Path: path, Found: "is not there", Do: "add the file or take it out of the manifest"}
	}
	if err != nil {
		return nil, err
	}
	return f, nil
}

// open opens an ordinary file reached without a link. The error is
// fs.ErrNotExist or a *PathError.
func open(root *os.Root, written, clean string) (*os.File, error) {
	refuse := func(found, do string) (*os.File, error) {
		return nil, &PathError{Path: written, Found: found, Do: do}
	}
	name, err := filepath.Localize(clean)
	if err != nil {
		return refuse("can't be a file name on this system", "rename the file")
	}
	info, err := walk(root, written, clean)
	switch {
	case err != nil:
		return nil, err
	case info.IsDir():
		return refuse("names a folder", "name a file in it")
	case !info.Mode().IsRegular():
		// Opening a pipe would wait for a writer.
		return refuse("names a device, pipe or socket", "name an ordinary file")
	}
	f, err := root.Open(name)
	if err != nil {
		return nil, unreadable(written, err)
	}
	// Between the walk and here someone may have put a link in its place.
	opened, err := f.Stat()
	switch {
	case err != nil:
		err = unreadable(written, err)
	case !os.SameFile(info, opened):
		_, err = refuse("was replaced while it was examined", "run again when nothing writes there")
	}
	if err != nil {
		f.Close()
		return nil, err
	}
	return f, nil
}
