package batchwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What goes wrong in YAML, by accident or on purpose. */
final class PageDamage {
    private static final String[] VALUES = {
        "NO", "no", "off", "yes", "True", "~", "null", "012", "0o14", "1:30", "1e3", ".inf", "2026-10-15", "!!int 3",
                "!x y", "&a b",
        "*a", "<<", "[a, b", "{a: b", "[]", "{}", "|", ">-", "\"a", "'a", "\"\\u0000\"", "\"\\ud800\"", "- a", "? a",
                "@a", "%a",
        "a: b: c", "a #b", "1 000 g", "5 kg", "0 g", "-5 g", "99999999999999999999 g", "1e999 g", "3 pieces"
    };
    private static final String[] DIRECTIVES = {
        "%YAML 1.1", "%YAML 2.0", "%YAML x", "%TAG ! !", "%TAG !e! x\n%TAG !e! x", "%OWN 1"
    };
    private static final int LEVELS = 40_000;

    private PageDamage() {}

    static List<Damage> all() {
        return List.of(
                Damage.harmless(
                        "comments everywhere",
                        (t, r) -> "# a comment\n"
                                + t.replace("\n", "   # a comment\n").replace("#  ", "# ")),
                Damage.text("a value replaced", PageDamage::valueReplaced),
                Damage.text("a number like octal", (t, r) -> Damage.numberReplaced(t, "012", r)),
                Damage.text("a tab in front", (t, r) -> ofOneLine(t, r, line -> "\t" + line)),
                Damage.text("tabs for blanks", (t, r) -> t.replace("  ", "\t")),
                Damage.text("one blank more", (t, r) -> ofOneLine(t, r, line -> " " + line)),
                Damage.text("one blank less", (t, r) -> ofOneLine(t, r, line -> line.replaceFirst("^ ", ""))),
                Damage.text("a line twice", (t, r) -> ofOneLine(t, r, line -> line + "\n" + line)),
                Damage.text("a line taken out", (t, r) -> ofOneLine(t, r, line -> "")),
                Damage.text("an anchor and an alias", (t, r) -> "first: &a [x]\n" + t + "last: *a\n"),
                Damage.text("aliases of aliases", (t, r) -> laughs() + (r.nextBoolean() ? t : "")),
                Damage.text("deep lists", (t, r) -> t + "deep: " + "[".repeat(1 + r.nextInt(LEVELS))),
                Damage.text("deep lists that close", (t, r) -> deep(t, "[", "]", 1 + r.nextInt(LEVELS))),
                Damage.text("deep groups", (t, r) -> deep(t, "{a: ", "}", 1 + r.nextInt(LEVELS))),
                Damage.text("deep lines", (t, r) -> t + "deep:\n" + steps(1 + r.nextInt(300))),
                Damage.text("a second page", (t, r) -> t + "---\n" + t),
                Damage.text("a directive", (t, r) -> Damage.any(DIRECTIVES, r) + "\n---\n" + t),
                Damage.text("a directive that is none", (t, r) -> "%TAG ! tag:x,2000:\n" + t),
                Damage.text("an end in the middle", (t, r) -> ofOneLine(t, r, line -> "...\n" + line)),
                Damage.text("merged keys", (t, r) -> t + "<<: {a: b}\n"),
                Damage.text("a list for a page", (t, r) -> "- " + t.replace("\n", "\n  ")),
                Damage.text("a key of many letters", (t, r) -> t + "k".repeat(1 + r.nextInt(5000)) + ": v\n"),
                Damage.text("a key of lists", (t, r) -> t + "? [a, b]\n: c\n"),
                Damage.text("all colons lost", (t, r) -> t.replace(":", "")));
    }

    private static String valueReplaced(String text, RandomGenerator random) {
        return ofOneLine(text, random, line -> {
            int colon = line.indexOf(": ");
            String key = colon < 0 ? line : line.substring(0, colon);
            return key + ": " + Damage.any(VALUES, random);
        });
    }

    private static String ofOneLine(String text, RandomGenerator random, UnaryOperator<String> change) {
        var lines = new ArrayList<>(text.lines().toList());
        int at = random.nextInt(lines.size());
        lines.set(at, change.apply(lines.get(at)));
        return String.join("\n", lines);
    }

    private static String deep(String text, String open, String close, int levels) {
        return text + "deep: " + open.repeat(levels) + "x" + close.repeat(levels) + "\n";
    }

    private static String steps(int levels) {
        return IntStream.rangeClosed(1, levels)
                .mapToObj(level -> " ".repeat(level) + "a:\n")
                .collect(Collectors.joining());
    }

    /** Ten times ten times ten ...: a billion values if aliases were followed. */
    private static String laughs() {
        return "a0: &a0 [ha]\n"
                + IntStream.rangeClosed(1, 9)
                        .mapToObj(i -> "a%s: &a%s [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(10)))
                        .collect(Collectors.joining());
    }
}
