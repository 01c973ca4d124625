package batchwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A page of commands with their answers, as they are typed one after another in a folder. */
final class StoryPage {
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final int MOST_LINES = 40;

    private final Path here;
    private final StringBuilder page;

    StoryPage(Path here, String title) {
        this.here = here;
        this.page = new StringBuilder("# " + title + "\n");
    }

    void says(String text) {
        page.append('\n').append(text).append('\n');
    }

    /** Runs a command on a day and puts it on the page, with the first lines of its answer. */
    Cli.Result run(String day, String command, int lines) {
        return run(day, command, "", lines);
    }

    Cli.Result run(String day, String command) {
        return run(day, command, MOST_LINES);
    }

    /** Shows so many lines from the first one on that has these words. */
    Cli.Result run(String day, String command, String words, int lines) {
        Cli.Result result = quietly(day, command);
        List<String> all =
                (result.out() + result.err()).replace(here + "/", "").lines().toList();
        int from = (int) all.stream().takeWhile(line -> !line.contains(words)).count();
        List<String> shown = all.subList(from, all.size());
        page.append("\n```\n$ ").append(command).append(" --date ").append(day).append('\n');
        page.append(from > 0 ? "...\n" : "");
        page.append(shown.stream().limit(lines).map(l -> l + "\n").collect(Collectors.joining()));
        page.append(shown.size() > lines ? "...\n" : "").append("```\n");
        return result;
    }

    /** Without putting it on the page. */
    Cli.Result quietly(String day, String command) {
        List<String> args = QUOTED.matcher(command + " --date " + day)
                .results()
                .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                .toList();
        return Cli.in(here).run(args.toArray(new String[0]));
    }

    String text() {
        return page.toString();
    }
}
