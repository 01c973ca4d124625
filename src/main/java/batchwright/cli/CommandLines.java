package batchwright.cli;

import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Sets up the commands: the same help layout and strictness for each. */
final class CommandLines {
    private static final int WIDTH = 80;
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
        layOut(line.getCommandSpec());
        line.getSubcommands().values().forEach(command -> layOut(command.getCommandSpec()));
        return line;
    }

    private static void layOut(CommandSpec command) {
        UsageMessageSpec help = command.usageMessage();
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
