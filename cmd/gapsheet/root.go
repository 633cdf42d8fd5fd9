package main

import (
	"strings"

	"github.com/spf13/cobra"

	"gapsheet/report"
)

const rootLong = `gapsheet holds a rally car's build sheet against a club's rulebook and says, clause
by clause, where the car falls short and by how much, what has not been written
down, and what only a person can judge. It has not seen the car. The official
technical inspection decides.

Exit codes: 0 no gap and nothing open; 1 a gap; 2 no gap, but something marginal
or not recorded; 3 what was given is wrong; 4 a fault of gapsheet itself.

To try the examples: gapsheet demo --out tryout, then go to tryout/saltmarsh.`

// rootCommand puts the commands together.
func (a *app) rootCommand() *cobra.Command {
	root := &cobra.Command{
		Use:           "gapsheet",
		Short:         "Hold a rally car's build sheet against a club's rulebook",
		Long:          rootLong,
		Example:       "  gapsheet demo\n  gapsheet precheck tessel16 --rulebook rulebook",
		SilenceErrors: true,
		SilenceUsage:  true,
		Args:          cobra.ArbitraryArgs,
		RunE: func(command *cobra.Command, arguments []string) error {
			if len(arguments) == 0 {
				return command.Help()
			}
			return noCommand(command, arguments[0])
		},
		PersistentPreRunE: func(*cobra.Command, []string) error {
			if _, err := report.ParseColorChoice(a.color); err != nil {
				return wrong("%v.", err)
			}
			return nil
		},
	}
	root.SetFlagErrorFunc(flagFault)
	root.PersistentFlags().StringVar(&a.color, "color", string(report.ColorAuto),
		"colour on the screen: `WHEN` is auto, always or never")
	completeWords(root, "color", colorWords)
	root.SetHelpCommand(helpCommand())
	root.AddCommand(a.precheckCommand(), a.workingCommand(), a.tryCommand(), a.tubeCommand(), a.cageCommand(), a.seasonCommand(), a.demoCommand(), a.versionCommand())
	root.InitDefaultCompletionCmd()
	for _, command := range root.Commands() {
		if command.Name() == "completion" {
			command.Short = "Write the script by which a shell completes what is typed"
			command.Long = "Writes the script by which a shell completes commands, flags and clause numbers.\nThe help of each shell's command says how to load it."
		}
	}
	return root
}

// helpCommand explains a command, or names the nearest to one that is not there.
func helpCommand() *cobra.Command {
	return &cobra.Command{
		Use:     "help [COMMAND]",
		Short:   "Explain a command",
		Example: "  gapsheet help precheck",
		ValidArgsFunction: func(command *cobra.Command, given []string, begun string) ([]string, cobra.ShellCompDirective) {
			var fitting []string
			for _, name := range commandNames(command.Root()) {
				if len(given) == 0 && strings.HasPrefix(name, begun) {
					fitting = append(fitting, name)
				}
			}
			return fitting, cobra.ShellCompDirectiveNoFileComp
		},
		RunE: func(command *cobra.Command, arguments []string) error {
			root := command.Root()
			found, rest, err := root.Find(arguments)
			switch {
			case err != nil || found == root && len(rest) > 0:
				return noCommand(root, arguments[0])
			case len(rest) > 0:
				return wrong("%s has no command %q. %s --help explains it.", found.CommandPath(), rest[0], found.CommandPath())
			}
			found.InitDefaultHelpFlag()
			return found.Help()
		},
	}
}

func noCommand(root *cobra.Command, name string) error {
	return wrong("gapsheet has no command %q.%s gapsheet --help lists the commands.",
		name, didYouMean(name, commandNames(root), "gapsheet "))
}

func commandNames(root *cobra.Command) []string {
	var names []string
	for _, command := range root.Commands() {
		names = append(names, command.Name())
	}
	return names
}

func colorWords() []string {
	var words []string
	for _, choice := range report.ColorChoices() {
		words = append(words, string(choice))
	}
	return words
}

// completeWords lets the shell complete a flag's value from a list, which is made only when
// the shell asks.
func completeWords(command *cobra.Command, flag string, words func() []string) {
	err := command.RegisterFlagCompletionFunc(flag, func(_ *cobra.Command, _ []string, begun string) ([]string, cobra.ShellCompDirective) {
		var fitting []string
		for _, word := range words() {
			if strings.HasPrefix(word, begun) {
				fitting = append(fitting, word)
			}
		}
		return fitting, cobra.ShellCompDirectiveNoFileComp
	})
	if err != nil {
		panic(err) // the flag has not been declared: a mistake in this program
	}
}
