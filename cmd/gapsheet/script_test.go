package main

import (
	"flag"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "rewrite the expected outputs in the scripts")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"gapsheet": main})
}

// TestScripts runs every script of testdata/script, one behaviour each. Each starts in a
// folder of its own with the files of testdata/small in it. -update rewrites what the
// scripts expect of outputs.
func TestScripts(t *testing.T) {
	small, err := os.ReadDir("testdata/small")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			for _, entry := range small {
				data, err := os.ReadFile(filepath.Join("testdata/small", entry.Name()))
				if err != nil {
					return err
				}
				if err := os.WriteFile(filepath.Join(env.WorkDir, entry.Name()), data, 0o666); err != nil {
					return err
				}
			}
			return nil
		},
		Condition: func(condition string) (bool, error) {
			if condition == "superuser" {
				return os.Getuid() == 0, nil
			}
			return false, os.ErrInvalid
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits": exits,
			"fill":  fill,
			"safe":  safe,
		},
	})
}

// exits runs a program and wants one exit code: exits 3 gapsheet precheck …
func exits(ts *testscript.TestScript, negated bool, arguments []string) {
	if negated || len(arguments) < 2 {
		ts.Fatalf("usage: exits CODE PROGRAM ARGUMENT...")
	}
	err := ts.Exec(arguments[1], arguments[2:]...)
	code := "0"
	if err != nil {
		code = strings.TrimPrefix(err.Error(), "exit status ")
	}
	if code != arguments[0] {
		ts.Fatalf("exit code is %s, not %s", code, arguments[0])
	}
}

// fill writes a text many times over into a file: fill FILE COUNT TEXT. The text may hold
// escapes of Go.
func fill(ts *testscript.TestScript, negated bool, arguments []string) {
	if negated || len(arguments) != 3 {
		ts.Fatalf("usage: fill FILE COUNT TEXT")
	}
	count, err := strconv.Atoi(arguments[1])
	ts.Check(err)
	text, err := strconv.Unquote(`"` + arguments[2] + `"`)
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(arguments[0]), []byte(strings.Repeat(text, count)), 0o666))
}

// safe wants a file, "stdout" or "stderr", to hold nothing that could steer a terminal.
func safe(ts *testscript.TestScript, negated bool, arguments []string) {
	if negated || len(arguments) != 1 {
		ts.Fatalf("usage: safe FILE")
	}
	if found := firstSteering(ts.ReadFile(arguments[0])); found != "" {
		ts.Fatalf("%s holds %s", arguments[0], found)
	}
}
