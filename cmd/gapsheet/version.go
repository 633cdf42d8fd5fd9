package main

import (
	"runtime/debug"

	"github.com/spf13/cobra"

	"gapsheet/report"
)

// version is set when a release is built: -ldflags "-X main.version=1.2.0".
var version string

// programVersion is the version of this program: the one set at the build, else what Go
// wrote into the executable.
func programVersion() string {
	if version != "" {
		return version
	}
	info, ok := debug.ReadBuildInfo()
	if !ok {
		info = &debug.BuildInfo{}
	}
	return versionOf(info)
}

// versionOf is the version of the module, else the revision it was built from, with a plus
// sign where files were changed since. Go writes neither into what go run builds.
func versionOf(info *debug.BuildInfo) string {
	if v := info.Main.Version; v != "" && v != "(devel)" {
		return v
	}
	revision, changed := "", ""
	for _, setting := range info.Settings {
		switch {
		case setting.Key == "vcs.revision":
			revision = setting.Value
		case setting.Key == "vcs.modified" && setting.Value == "true":
			changed = "+"
		}
	}
	if revision == "" {
		return "built from source"
	}
	return "revision " + revision[:min(len(revision), 12)] + changed
}

func (a *app) versionCommand() *cobra.Command {
	return &cobra.Command{
		Use:     "version",
		Short:   "Print the version of this program",
		Example: "  gapsheet version",
		Args:    wantArguments(0, 0, "no arguments"),
		RunE: func(*cobra.Command, []string) error {
			return report.Sentence(a.screen(), "gapsheet "+programVersion())
		},
	}
}
