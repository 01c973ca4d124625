package batchwright.cli;

import batchwright.answer.Fault;
import batchwright.text.NearestName;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** What is wrong with a command line, in our own words. */
final class BadCommandLine {
    private final CommandSpec command;

    private BadCommandLine(CommandSpec command) {
        this.command = command;
    }

    static Fault fault(ParameterException wrong) {
        var bad = new BadCommandLine(wrong.getCommandLine().getCommandSpec());
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            return bad.unmatched(unmatched.getUnmatched());
        }
        if (wrong instanceof CommandLine.OverwrittenOptionException twice) {
            return Fault.of(name(twice.getOverwritten()) + " is given twice", "Give it once.");
        }
        if (wrong instanceof CommandLine.MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            ArgSpec option = missing.getMissing().get(0);
            return Fault.of(name(option) + " has no value", "Write one after it: " + use(option) + ".");
        }
        ArgSpec argument = wrong.getArgSpec();
        return argument == null
                ? Fault.of("this command line cannot be read", bad.seeHelp())
                : Fault.of(name(argument) + " cannot have this value", "Write it as " + use(argument) + ".");
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String use(ArgSpec argument) {
        return argument.arity().max() == 0 ? name(argument) : name(argument) + " " + argument.paramLabel();
    }

    private String seeHelp() {
        return isProgram()
                ? "\"--help\" shows the commands."
                : "\"" + command.name() + " --help\" shows how to use it.";
    }

    private boolean isProgram() {
        return command.parent() == null;
    }

    /** Only the first unknown option: what follows it may be its value. */
    private Fault unmatched(List<String> arguments) {
        String first = arguments.stream()
                .filter(a -> a.startsWith("-") && !isProgram())
                .findFirst()
                .orElse(arguments.get(0));
        if (first.matches("-\\d.*")) {
            return Fault.of("\"" + first + "\" is below 0", "Enter a number from 0 on.");
        }
        if (first.startsWith("-")) {
            return unknownOption(first.split("=", 2)[0]);
        }
        return isProgram()
                ? unknownCommand(first)
                : Fault.of("\"" + first + "\" is more than " + command.name() + " can use", seeHelp());
    }

    private Fault unknownCommand(String typed) {
        String cure = NearestName.of(typed, command.subcommands().keySet())
                .map(name -> "Nearest: " + name + ".")
                .orElse("Commands: " + String.join(", ", command.subcommands().keySet()) + ".");
        return Fault.of("there is no command \"" + typed + "\"", cure);
    }

    private Fault unknownOption(String typed) {
        if (isProgram()) {
            Optional<String> owner = below().filter(c -> c.optionsMap().containsKey(typed))
                    .map(CommandSpec::name)
                    .findFirst();
            if (owner.isPresent()) {
                return Fault.of(
                        typed + " stands before the command",
                        "Write it behind the command: " + owner.get() + " ... " + typed + ".");
            }
        }
        List<String> known = Stream.concat(Stream.of(command), below())
                .flatMap(c -> c.optionsMap().keySet().stream())
                .filter(name -> name.startsWith("--"))
                .distinct()
                .toList();
        String cure = NearestName.of(typed.replaceFirst("^-+", ""), bare(known).toList())
                .map(name -> "Nearest: --" + name + ".")
                .orElse(isProgram() ? seeHelp() : "Options: " + String.join(", ", known) + ".");
        return Fault.of("there is no option \"" + typed + "\"", cure);
    }

    private Stream<CommandSpec> below() {
        return command.subcommands().values().stream().map(CommandLine::getCommandSpec);
    }

    private static Stream<String> bare(List<String> names) {
        return names.stream().map(name -> name.substring(2));
    }
}
