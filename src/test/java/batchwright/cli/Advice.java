package batchwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Follows what stands after "Try:", as a reader would: options are added to the command line, lines of files are edited. */
final class Advice {
    private static final Pattern OPTION = Pattern.compile("(--[a-z-]+) (\\S+)");
    private static final Pattern SECTION = Pattern.compile("(.+) under (target|snacks), in (\\S+)");
    private static final Pattern LEAVE = Pattern.compile("leave out only under snacks, in (\\S+)");
    private static final Pattern AVOID = Pattern.compile("avoid without (\\S+), in (\\S+)");
    private static final Pattern PART = Pattern.compile("take the part (.+) and its steps out of (\\S+)");
    private static final Pattern LINE = Pattern.compile("([a-z_]+): (.+?),? in (\\S+)");

    private final Path folder;
    private final List<String> options = new ArrayList<>();

    Advice(Path folder) {
        this.folder = folder;
    }

    /** @return options to add */
    List<String> follow(String tried) throws IOException {
        for (String one : tried.split("; (besides|and) ", -1)) {
            followOne(one);
        }
        return options;
    }

    private void followOne(String one) throws IOException {
        Matcher option = OPTION.matcher(one);
        Matcher section = SECTION.matcher(one);
        Matcher avoid = AVOID.matcher(one);
        Matcher part = PART.matcher(one);
        Matcher line = LINE.matcher(one);
        Matcher leave = LEAVE.matcher(one);
        if (leave.matches()) {
            edit(folder.resolve(leave.group(1)), "(?m)^  only:.*$", "");
        } else if (option.matches()) {
            options.addAll(List.of(option.group(1), option.group(2)));
        } else if (section.matches()) {
            for (String entry : section.group(1).split(" and ", -1)) {
                set(folder.resolve(section.group(3)), section.group(2), entry);
            }
        } else if (avoid.matches()) {
            edit(folder.resolve(avoid.group(2)), "([\\[ ])" + avoid.group(1) + "(, )?", "$1");
        } else if (part.matches()) {
            takeOut(folder.resolve(part.group(2)), part.group(1));
        } else if (line.matches()) {
            edit(folder.resolve(line.group(3)), "(?m)^" + line.group(1) + ":.*$", line.group(1) + ": " + line.group(2));
        } else {
            throw new IllegalArgumentException("nobody knows how to follow: " + one);
        }
    }

    /** The key in its section gets the value; both are written if they are not there. */
    private static void set(Path file, String section, String entry) throws IOException {
        String content = Files.readString(file);
        String key = entry.substring(0, entry.indexOf(':'));
        if (content.contains("\n  " + key + ":")) {
            edit(file, "(?m)^  " + key + ":.*$", "  " + entry);
        } else if (content.contains("\n" + section + ":")) {
            edit(file, "(?m)^" + section + ":.*$", "$0\n  " + entry);
        } else {
            Files.writeString(file, content + "\n" + section + ":\n  " + entry + "\n");
        }
    }

    /** Entries of lists that begin with "- part: NAME", and those that end with "part: NAME". */
    private static void takeOut(Path file, String part) throws IOException {
        StringBuilder kept = new StringBuilder();
        for (String entry : Files.readString(file).split("(?m)(?=^  - |^[a-z])", -1)) {
            boolean own = entry.startsWith("  - part: " + part + "\n")
                    || (entry.startsWith("  - do:") && entry.contains("\n    part: " + part + "\n"));
            kept.append(own ? "" : entry);
        }
        Files.writeString(file, kept.toString());
    }

    private static void edit(Path file, String old, String other) throws IOException {
        String content = Files.readString(file);
        Matcher matcher = Pattern.compile(old).matcher(content);
        if (!matcher.find()) {
            throw new IllegalArgumentException("old (" + old + ") is not in " + file + ".");
        }
        Files.writeString(file, matcher.replaceFirst(other));
    }
}
