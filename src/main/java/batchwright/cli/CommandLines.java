package batchwright.cli;

import batchwright.app.MakePlan;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Sets up the commands: the same help layout and strictness for each. */
public final class CommandLines {
    private static final int WIDTH = 80;
    /** What examples begin with, and how to say that the program has another name. */
    private static final String FROM_JAR = "java -jar target/batchwright.jar";

    private static final String CALLED = "batchwright.called";
    /** Examples first: they answer most questions. */
    private static final List<String> SECTIONS = List.of(
            UsageMessageSpec.SECTION_KEY_HEADER,
            UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
            UsageMessageSpec.SECTION_KEY_SYNOPSIS,
            UsageMessageSpec.SECTION_KEY_FOOTER_HEADING,
            UsageMessageSpec.SECTION_KEY_FOOTER,
            UsageMessageSpec.SECTION_KEY_DESCRIPTION_HEADING,
            UsageMessageSpec.SECTION_KEY_DESCRIPTION,
            UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING,
            UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
            UsageMessageSpec.SECTION_KEY_PARAMETER_LIST_HEADING,
            UsageMessageSpec.SECTION_KEY_PARAMETER_LIST,
            UsageMessageSpec.SECTION_KEY_OPTION_LIST_HEADING,
            UsageMessageSpec.SECTION_KEY_OPTION_LIST,
            UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST_HEADING,
            UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST);

    private CommandLines() {}

    static CommandLine of(Batchwright root) {
        var line = new CommandLine(root)
                .setExpandAtFiles(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.getCommandSpec().version("batchwright " + version());
        layOut(line.getCommandSpec());
        line.getSubcommands().values().forEach(command -> layOut(command.getCommandSpec()));
        return line;
    }

    /** Packed, a jar knows its version. */
    private static String version() {
        return Objects.requireNonNullElse(CommandLines.class.getPackage().getImplementationVersion(), "(not packed)");
    }

    /** The commands without anybody who types: for manual pages and completion. */
    public static CommandLine described() {
        var nobody = new Terminal(
                new AnswerStream(OutputStream.nullOutputStream(), () -> false),
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
                Optional.empty(),
                () -> false,
                OptionalInt::empty,
                true);
        return of(new Batchwright(nobody, new MakePlan(), Path.of(""), Clock.systemUTC()));
    }

    private static void layOut(CommandSpec command) {
        UsageMessageSpec help = command.usageMessage();
        help.customSynopsis(called(help.customSynopsis()));
        help.footer(called(help.footer()));
        help.width(WIDTH);
        help.sectionKeys(SECTIONS);
        help.synopsisHeading("%n");
        help.footerHeading("%nExamples:%n");
        help.descriptionHeading(help.description().length > 0 ? "%n" : "");
        help.commandListHeading("%nCommands:%n");
        help.parameterListHeading("%nWhat to name:%n");
        help.optionListHeading("%nOptions:%n");
        help.exitCodeListHeading("%nExit codes:%n");
        help.exitCodeList(ExitCode.meanings());
        help.sortOptions(false);
    }

    private static String[] called(String[] lines) {
        String name = System.getProperty(CALLED, FROM_JAR);
        return Arrays.stream(lines).map(line -> line.replace(FROM_JAR, name)).toArray(String[]::new);
    }

    /** What a lone program name prints. */
    static String shortHelp(CommandLine line) {
        var help = new StringBuilder();
        UsageMessageSpec root = line.getCommandSpec().usageMessage();
        help.append(String.join("\n", root.header())).append("\n\n");
        for (Map.Entry<String, CommandLine> command : line.getSubcommands().entrySet()) {
            String header = command.getValue().getCommandSpec().usageMessage().header()[0];
            help.append("  %-8s %s%n".formatted(command.getKey(), header).replace(System.lineSeparator(), "\n"));
        }
        help.append("\nExamples:\n").append(String.join("\n", root.footer())).append('\n');
        return help.append("\nCOMMAND --help tells more.\n").toString();
    }
}
