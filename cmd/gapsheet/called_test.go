package main

import (
	"runtime/debug"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestCalledAs(t *testing.T) {
	for executable, want := range map[string]string{
		"":                        "gapsheet",
		"/usr/local/bin/gapsheet": "gapsheet",
		"/home/a/go/bin/gapsheet": "gapsheet",
		"/home/a/exe/gapsheet":    "gapsheet",
		"/var/tmp/go-build2335158941/b001/exe/gapsheet":                             "go run ./cmd/gapsheet",
		"/var/tmp/go-build2335158941/b001/gapsheet.test":                            "gapsheet",
		"/home/a/.cache/go-build/89/" + strings.Repeat("89c4", 16) + "-d/gapsheet":  "go run ./cmd/gapsheet",
		"/home/a/elsewhere/89/" + strings.Repeat("89c4", 16) + "-d/gapsheet":        "go run ./cmd/gapsheet",
		"/home/a/.cache/go-build/89/" + strings.Repeat("89c4", 16) + "-dx/gapsheet": "gapsheet",
	} {
		require.Equal(t, want, calledAs(executable), executable)
	}
}

// The demo names commands that can be given as they stand.
func TestDemoNamesTheCommandThatStartedIt(t *testing.T) {
	for _, arguments := range [][]string{{"demo"}, {"demo", "--out", t.TempDir()}} {
		a, stdout, _ := appOf("")
		a.called = "go run ./cmd/gapsheet"
		require.Equal(t, exitMeets, a.run(arguments))
		require.Contains(t, stdout.String(), "go run ./cmd/gapsheet precheck")
		require.NotContains(t, stdout.String(), "  gapsheet precheck")
	}
}

func TestVersionOf(t *testing.T) {
	settings := func(revision, modified string) []debug.BuildSetting {
		return []debug.BuildSetting{{Key: "vcs.revision", Value: revision}, {Key: "vcs.modified", Value: modified}}
	}
	hash := strings.Repeat("0123456789", 4)
	for _, c := range []struct {
		info debug.BuildInfo
		want string
	}{
		{debug.BuildInfo{}, "built from source"},
		{debug.BuildInfo{Main: debug.Module{Version: "(devel)"}}, "built from source"},
		{debug.BuildInfo{Main: debug.Module{Version: "v1.2.0"}, Settings: settings(hash, "true")}, "v1.2.0"},
		{debug.BuildInfo{Main: debug.Module{Version: "(devel)"}, Settings: settings(hash, "false")}, "revision 012345678901"},
		{debug.BuildInfo{Settings: settings(hash, "true")}, "revision 012345678901+"},
		{debug.BuildInfo{Settings: settings("01", "")}, "revision 01"},
	} {
		require.Equal(t, c.want, versionOf(&c.info))
	}
}
