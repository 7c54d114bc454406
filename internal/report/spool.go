package report

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"os"
)

// Spool keeps what is written to it until it is read: a little in memory, more
// in a temporary file. Reading begins when all is written.
type Spool struct {
	memory bytes.Buffer
	file   *os.File
	ahead  *bufio.Writer // to file, nil once reading has begun
	named  bool          // the file still has a name, to be removed
}

// inMemory is the number of bytes for which no file is made.
const inMemory = 1 << 20

func (s *Spool) Write(p []byte) (int, error) {
	if s.file == nil && s.memory.Len()+len(p) > inMemory {
		s.spill()
	}
	if s.file == nil {
		return s.memory.Write(p)
	}
	n, err := s.ahead.Write(p)
	if err != nil {
		err = fmt.Errorf("keeping a report until it is whole: %w", err)
	}
	return n, err
}

// spill goes on in a file. Where none can be made, memory has to do. The file's
// name is taken away at once where the system allows that, so that a run that is
// broken off leaves nothing behind.
func (s *Spool) spill() {
	file, err := os.CreateTemp("", "trialfit-*")
	if err != nil {
		return
	}
	s.file, s.named = file, os.Remove(file.Name()) != nil
	s.ahead = bufio.NewWriterSize(file, 1<<16)
	s.memory.WriteTo(s.ahead) // an error stays in ahead and is told by the next write
	s.memory = bytes.Buffer{}
}

func (s *Spool) Read(p []byte) (int, error) {
	if s.file == nil {
		return s.memory.Read(p)
	}
	if s.ahead != nil {
		if err := s.ahead.Flush(); err != nil {
			return 0, fmt.Errorf("keeping a report until it is whole: %w", err)
		}
		if _, err := s.file.Seek(0, io.SeekStart); err != nil {
			return 0, fmt.Errorf("reading back a report: %w", err)
		}
		s.ahead = nil
	}
	return s.file.Read(p)
}

// Close gives up what is kept.
func (s *Spool) Close() {
	if s.file == nil {
		return
	}
	s.file.Close()
	if s.named {
		os.Remove(s.file.Name())
	}
}
