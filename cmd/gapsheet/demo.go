package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/examples"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

func (a *app) demoCommand() *cobra.Command {
	var out string
	command := &cobra.Command{
		Use:   "demo",
		Short: "Precheck an invented car against an invented rulebook",
		Long: `Prechecks the car and the rulebook that come with this program, on a fixed day, so
that it can be seen at work without a file of one's own. Car, club and rulebook are
invented. It ends with exit code 0, whatever it finds.`,
		Example: "  gapsheet demo\n  gapsheet demo --out tryout",
		Args:    wantArguments(0, 0, "no arguments"),
		RunE: func(*cobra.Command, []string) error {
			if out != "" {
				return a.unpackDemo(out)
			}
			return a.demo()
		},
	}
	command.Flags().StringVar(&out, "out", "", "`FOLDER` to write the files of the demo into, to play with; nothing is overwritten")
	return command
}

func (a *app) demo() error {
	run, err := a.demoRun()
	if err != nil {
		return err
	}
	screen := a.screen()
	if err := report.WriteTerminal(screen, run); err != nil {
		return err
	}
	return report.Say(screen, true,
		report.Saying{Text: "That was an invented car. The same on files of your own:", Command: a.called + " precheck SHEET --rulebook RULEBOOK"},
		report.Saying{Text: "To play with the files of the demo:", Command: a.called + " demo --out FOLDER"})
}

func (a *app) demoRun() (*report.Precheck, error) {
	files := examples.Files()
	shelf := shelf{opened: []*opened{{files: files, name: ".", shown: ".", base: "."}}}
	book, found := rules.Load(files, examples.Rulebook, examples.Rulebook, vehicle.BuiltIn())
	shelf.add(found)
	if err := shelf.faults(); err != nil {
		return nil, err
	}
	programs, err := shelf.compile([]*rules.Rulebook{book})
	if err != nil {
		return nil, err
	}
	sheet := shelf.loadSheet(&opened{files: files, name: examples.Sheet, shown: examples.Sheet}, book.Vocabulary, vehicle.Options{})
	if err := shelf.faults(); err != nil {
		return nil, err
	}
	if err := a.remarks(&shelf); err != nil {
		return nil, err
	}
	day, _, err := (&asked{day: examples.Day}).dayOf(a.now)
	if err != nil {
		return nil, err
	}
	program := programs[0]
	result := program.Check(program.Car(sheet), engine.Request{Day: day})
	return &report.Precheck{Version: programVersion(), Day: day, Results: []*engine.Result{result}}, nil
}

// unpackDemo writes the files of the demo into a folder, which is made if need be. It looks
// first and writes then, so that a file in the way leaves nothing half done.
func (a *app) unpackDemo(folder string) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return wrongTarget(folder, err)
	}
	root, err := os.OpenRoot(folder)
	if err != nil {
		return wrongTarget(folder, err)
	}
	defer root.Close()
	names, err := filesToUnpack()
	if err != nil {
		return err
	}
	for _, name := range names {
		if _, err := root.Lstat(name); err == nil {
			return wrong("%s is there already, and demo overwrites nothing. Name another folder.", shownIn(folder, name))
		}
	}
	for _, name := range names {
		if err := unpack(root, name); err != nil {
			return wrongTarget(shownIn(folder, name), err)
		}
	}
	return report.Say(a.screen(), false, report.Saying{
		Text: "The files of the demo were written. Check the car with:",
		Command: fmt.Sprintf("%s precheck %s --rulebook %s --on %s", a.called,
			argument(shownIn(folder, examples.Sheet)), argument(shownIn(folder, examples.Rulebook)), examples.Day),
	})
}

// filesToUnpack lists the embedded files that are data.
func filesToUnpack() ([]string, error) {
	var names []string
	err := fs.WalkDir(examples.Files(), ".", func(name string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() {
			names = append(names, name)
		}
		return err
	})
	return names, err
}

func unpack(root *os.Root, name string) error {
	data, err := fs.ReadFile(examples.Files(), name)
	if err != nil {
		return err
	}
	if err := root.MkdirAll(path.Dir(name), 0o777); err != nil {
		return err
	}
	file, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = file.Write(data)
	return errors.Join(err, file.Close())
}

func wrongTarget(named string, err error) error {
	var inPath *fs.PathError
	if errors.As(err, &inPath) {
		err = inPath.Err
	}
	return wrong("%q cannot be written: %v. Name a folder that can.", filepath.ToSlash(named), err)
}

// plainArgument is what a shell takes as it stands.
var plainArgument = regexp.MustCompile(`^[\w./~+-]+$`)

// argument writes a path so that a shell takes it as one argument.
func argument(path string) string {
	if plainArgument.MatchString(path) {
		return path
	}
	return "'" + strings.ReplaceAll(path, "'", `'\''`) + "'"
}

func shownIn(folder, name string) string {
	return path.Join(filepath.ToSlash(folder), name)
}
