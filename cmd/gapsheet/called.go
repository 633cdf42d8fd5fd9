package main

import (
	"path"
	"path/filepath"
	"regexp"
	"strings"
)

// cachedRun is the folder in Go's build cache in which go run keeps an executable.
var cachedRun = regexp.MustCompile(`^[0-9a-f]{64}-d$`)

// calledAs is how a user starts this program again: by its name, or with go run where the
// executable lies in a folder that go run made for it, either in the temporary folder
// (go-build123/b001/exe) or in Go's build cache.
func calledAs(executable string) string {
	folder := path.Dir(filepath.ToSlash(executable))
	if strings.Contains(folder, "/go-build") && path.Base(folder) == "exe" || cachedRun.MatchString(path.Base(folder)) {
		return "go run ./cmd/gapsheet"
	}
	return "gapsheet"
}
