package batchwright.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/**
 * A way in which a file is damaged by hands, editors, spreadsheets and disks.
 *
 * @param harmless the file still says the same
 */
record Damage(String name, boolean harmless, Change change) {
    /** From the bytes of a file to other bytes. */
    @FunctionalInterface
    interface Change {
        byte[] apply(byte[] bytes, RandomGenerator random);
    }

    /** From text to text, whatever the bytes mean: Latin-1 has a letter for each byte. */
    @FunctionalInterface
    interface TextChange {
        String apply(String text, RandomGenerator random);
    }

    private static final String[] MARKS = {
        "\"",
        "'",
        ",",
        ";",
        ":",
        "#",
        "-",
        "- ",
        "\t",
        "\r",
        "\n",
        "|",
        ">",
        "[",
        "]",
        "{",
        "}",
        "&x ",
        "*x ",
        "!",
        "!!",
        "%",
        "@",
        "`",
        "?",
        "---\n",
        "\0",
        "\u001b[2J",
        "\u007f",
        "\\",
        "\u00c2\u00a0",
        "\u00e2\u0080\u00ae",
        "\u00ef\u00bf\u00bf"
    };
    private static final String[] NUMBERS = {
        "1e999",
        "-1",
        "0",
        "-0",
        "0.0000000000001",
        "NaN",
        "Infinity",
        "012",
        "0x10",
        "1,5",
        "1.234,5",
        "1_000",
        ".5",
        "5.",
        "1/2",
        "9".repeat(40),
        "0." + "3".repeat(40),
        "2147483648",
        "99999999999999999999.9",
        "",
        " ",
        "one",
        "+3",
        "--3",
        "\u00ef\u00bc\u0095"
    };
    private static final int LONG = 300_000;

    static List<Damage> ofAnyFile() {
        return List.of(
                text("letters flipped", (t, r) -> flipped(t, 1, r)),
                text("many letters flipped", (t, r) -> flipped(t, 40, r)),
                text("a stretch taken out", Damage::without),
                text("a mark put in", (t, r) -> with(t, any(MARKS, r), r)),
                text(
                        "three marks put in",
                        (t, r) -> with(with(with(t, any(MARKS, r), r), any(MARKS, r), r), any(MARKS, r), r)),
                text("a number replaced", (t, r) -> numberReplaced(t, any(NUMBERS, r), r)),
                text("lines mixed up", Damage::linesMixedUp),
                text("cut short", (t, r) -> t.substring(0, r.nextInt(t.length()))),
                text("emptied", (t, r) -> ""),
                text("only blanks left", (t, r) -> " \n\t\n".repeat(1 + r.nextInt(50))),
                text("twice in a row", (t, r) -> t + t),
                text("a line very long", (t, r) -> with(t, "x".repeat(1 + r.nextInt(LONG)), r)),
                text("many lines", (t, r) -> t + "a\n".repeat(1 + r.nextInt(LONG / 10))),
                text("a letter in Latin-1", (t, r) -> with(t, "\u00e9", r)),
                new Damage("UTF-16", false, (b, r) -> utf16(b, r.nextBoolean())),
                new Damage("no text at all", false, (b, r) -> random(r)),
                harmless("byte order mark", (t, r) -> "\u00ef\u00bb\u00bf" + t),
                harmless("line ends of Windows", (t, r) -> t.replace("\n", "\r\n")),
                harmless("line ends of old Macs", (t, r) -> t.replace('\n', '\r')),
                harmless("no line end at the end", (t, r) -> t.stripTrailing()),
                harmless("blank lines at the end", (t, r) -> t + "\n \n\n"));
    }

    static Damage text(String name, TextChange change) {
        return of(name, false, change);
    }

    static Damage harmless(String name, TextChange change) {
        return of(name, true, change);
    }

    private static Damage of(String name, boolean harmless, TextChange change) {
        return new Damage(
                name,
                harmless,
                (bytes, random) ->
                        change.apply(new String(bytes, ISO_8859_1), random).getBytes(ISO_8859_1));
    }

    static String any(String[] of, RandomGenerator random) {
        return of[random.nextInt(of.length)];
    }

    static String with(String text, String inserted, RandomGenerator random) {
        int at = random.nextInt(text.length() + 1);
        return text.substring(0, at) + inserted + text.substring(at);
    }

    static String numberReplaced(String text, String other, RandomGenerator random) {
        var places = java.util.regex.Pattern.compile("\\d+(\\.\\d+)?")
                .matcher(text)
                .results()
                .toList();
        if (places.isEmpty()) {
            return text + other;
        }
        var place = places.get(random.nextInt(places.size()));
        return text.substring(0, place.start()) + other + text.substring(place.end());
    }

    private static String flipped(String text, int times, RandomGenerator random) {
        char[] letters = text.toCharArray();
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(letters.length);
            letters[at] = (char) (letters[at] ^ (1 << random.nextInt(8)));
        }
        return new String(letters);
    }

    private static String without(String text, RandomGenerator random) {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + 1 + random.nextInt(200));
        return text.substring(0, from) + text.substring(to);
    }

    private static String linesMixedUp(String text, RandomGenerator random) {
        var lines = new ArrayList<>(text.lines().toList());
        Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
        lines.remove(random.nextInt(lines.size()));
        return String.join("\n", lines);
    }

    private static byte[] utf16(byte[] bytes, boolean marked) {
        return ((marked ? "\ufeff" : "") + new String(bytes, UTF_8)).getBytes(UTF_16LE);
    }

    private static byte[] random(RandomGenerator random) {
        var bytes = new byte[random.nextInt(2000)];
        random.nextBytes(bytes);
        return bytes;
    }

    static List<Damage> of(String path) {
        List<Damage> own = path.endsWith(".csv") ? TableDamage.all() : PageDamage.all();
        return Stream.concat(ofAnyFile().stream(), own.stream()).toList();
    }
}
