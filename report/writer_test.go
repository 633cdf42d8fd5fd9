package report

import "errors"

var errFull = errors.New("no room")

// fullWriter is a writer with no room, as a full disk is.
type fullWriter struct{}

func (fullWriter) Write([]byte) (int, error) { return 0, errFull }
