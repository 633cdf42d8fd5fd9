// Command gapsheet holds a rally car's build sheet against a club's rulebook and says,
// clause by clause, where the car falls short, what has not been written down and what
// only a person can judge.
package main

import (
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strconv"
	"time"

	"golang.org/x/term"

	"gapsheet/report"
)

// The exit codes.
const (
	exitMeets = 0 // no gap and nothing open
	exitGap   = 1 // a gap
	exitOpen  = 2 // no gap, but something marginal or not recorded
	exitInput = 3 // what was given is wrong
	exitOwn   = 4 // a fault of this program's own
)

// traceVariable names the environment variable that asks for the Go stack of a fault of
// our own.
const traceVariable = "GAPSHEET_TRACE"

func main() {
	a := &app{
		stdin: os.Stdin, stdout: os.Stdout, stderr: os.Stderr,
		environment: os.Getenv, now: time.Now,
	}
	executable, _ := os.Executable() // where it cannot be told, the name of the program will do
	a.called = calledAs(executable)
	os.Exit(a.run(os.Args[1:]))
}

// app is one run of the program. Streams, environment and clock are handed in.
type app struct {
	stdin          io.Reader
	stdout, stderr io.Writer
	environment    func(string) string
	now            func() time.Time
	called         string // how the user starts this program

	color string // as given to --color
	code  int    // the exit code of a run without faults
}

// run carries out one command line and returns the exit code. Nothing escapes it.
func (a *app) run(arguments []string) (code int) {
	defer func() {
		if cause := recover(); cause != nil {
			code = a.ownFault(&panicked{cause, debug.Stack()})
		}
	}()
	root := a.rootCommand()
	root.SetArgs(arguments)
	root.SetIn(a.stdin)
	root.SetOut(a.stdout)
	root.SetErr(a.stderr)
	if err := root.Execute(); err != nil {
		return a.tell(err)
	}
	return a.code
}

// screen is where results go.
func (a *app) screen() *report.Screen { return a.screenOf(a.stdout) }

// faultScreen is where faults go.
func (a *app) faultScreen() *report.Screen { return a.screenOf(a.stderr) }

func (a *app) screenOf(w io.Writer) *report.Screen {
	choice, err := report.ParseColorChoice(a.color)
	if err != nil {
		choice = report.ColorAuto // a wrong --color is itself reported on a screen
	}
	screen := report.NewScreen(w, choice, a.environment)
	if width, ok := columnsOf(a.environment("COLUMNS")); ok && !isTerminal(w) {
		screen.Width = width
	}
	return screen
}

// columnsOf reads the width asked for by COLUMNS, in cells. What is no whole number from 40
// to 110, the widths that a page holds, is no wish.
func columnsOf(text string) (width int, ok bool) {
	width, err := strconv.Atoi(text)
	return width, err == nil && width >= 40 && width <= 110
}

// isTerminal reports whether a writer is a terminal, which has a width of its own.
func isTerminal(w io.Writer) bool {
	file, ok := w.(*os.File)
	return ok && term.IsTerminal(int(file.Fd()))
}

// panicked is a fault of our own, caught where it happened.
type panicked struct {
	cause any
	stack []byte
}

func (p *panicked) Error() string { return fmt.Sprint(p.cause) }

// ownFault tells of a fault of our own in a sentence; the stack only when it is asked for.
func (a *app) ownFault(p *panicked) int {
	screen := a.faultScreen()
	report.Sentence(screen, fmt.Sprintf(
		"This is a fault of gapsheet itself, not of your files: %v. Nothing above is to be relied on. Please report it with the files that bring it about.", p.cause))
	if a.environment(traceVariable) != "" {
		a.stderr.Write(p.stack)
		return exitOwn
	}
	report.Sentence(screen, fmt.Sprintf("Set %s=1 to have the details that a report of it needs.", traceVariable))
	return exitOwn
}
