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
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "unversioned"
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
