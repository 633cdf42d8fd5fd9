package main

import (
	"errors"
	"fmt"

	"github.com/hashicorp/hcl/v2"
	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"gapsheet/report"
	"gapsheet/vehicle"
)

// wrongInput is something wrong with the command line or with what it names, told in a
// sentence.
type wrongInput struct{ sentence string }

func (w *wrongInput) Error() string { return w.sentence }

func wrong(format string, arguments ...any) error {
	return &wrongInput{fmt.Sprintf(format, arguments...)}
}

// wrongFiles is faults in files, each with its place.
type wrongFiles struct {
	found hcl.Diagnostics
	file  func(name string) []byte
}

func (w *wrongFiles) Error() string { return w.found.Error() }

// tell writes an error to the screen for faults and returns the exit code that fits it.
func (a *app) tell(err error) int {
	var files *wrongFiles
	var input *wrongInput
	var own *panicked
	switch {
	case errors.As(err, &own):
		return a.ownFault(own)
	case errors.As(err, &files):
		if err := report.Diagnostics(a.faultScreen(), files.found, files.file); err != nil {
			return exitOwn
		}
		return exitInput
	case errors.As(err, &input):
		report.Sentence(a.faultScreen(), input.sentence)
		return exitInput
	}
	report.Sentence(a.faultScreen(), "The results could not be written: "+err.Error()+".")
	return exitOwn
}

// flagFault puts what the flag library says of a wrong flag into a sentence that names
// the nearest flag.
func flagFault(command *cobra.Command, err error) error {
	if errors.Is(err, pflag.ErrHelp) {
		return err
	}
	var unknown *pflag.NotExistError
	var needsValue *pflag.ValueRequiredError
	var badValue *pflag.InvalidValueError
	var badSyntax *pflag.InvalidSyntaxError
	help := fmt.Sprintf("%s --help lists the flags.", command.CommandPath())
	switch {
	case errors.As(err, &unknown) && unknown.GetSpecifiedShortnames() != "":
		return wrong("There is no flag -%s. Flags are written in full, with two dashes. %s", unknown.GetSpecifiedName(), help)
	case errors.As(err, &unknown):
		return wrong("There is no flag --%s.%s %s", unknown.GetSpecifiedName(),
			didYouMean(unknown.GetSpecifiedName(), flagNames(command), "--"), help)
	case errors.As(err, &needsValue):
		return wrong("The flag --%s wants a value: --%s %s.", needsValue.GetSpecifiedName(),
			needsValue.GetSpecifiedName(), valueName(needsValue.GetFlag()))
	case errors.As(err, &badValue):
		return wrong("The flag --%s cannot be %q: %v.", badValue.GetFlag().Name, badValue.GetValue(), badValue.Unwrap())
	case errors.As(err, &badSyntax):
		return wrong("Found %q where a flag is wanted. %s", badSyntax.GetSpecifiedFlag(), help)
	}
	return wrong("The flags cannot be read: %v. %s", err, help)
}

func flagNames(command *cobra.Command) []string {
	var names []string
	command.Flags().VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	return names
}

func valueName(f *pflag.Flag) string {
	name, _ := pflag.UnquoteUsage(f)
	return name
}

// didYouMean is a sentence that names the nearest of the known words, "" when none is near.
func didYouMean(word string, known []string, prefix string) string {
	near := vehicle.Nearest(word, known)
	if near == "" {
		return ""
	}
	return fmt.Sprintf(" Did you mean %s%s?", prefix, near)
}

// wantArguments checks how many arguments a command was given. what names them, as in the
// command's usage.
func wantArguments(least, most int, what string) cobra.PositionalArgs {
	return func(command *cobra.Command, arguments []string) error {
		switch {
		case len(arguments) < least:
			return wrong("%s wants %s. %s --help shows an example.", command.CommandPath(), what, command.CommandPath())
		case most >= 0 && len(arguments) > most:
			return wrong("%s wants %s; found %q as well. Flags begin with two dashes, and a value with blanks in it stands in quotes.",
				command.CommandPath(), what, arguments[most])
		}
		return nil
	}
}
