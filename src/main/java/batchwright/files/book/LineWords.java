package batchwright.files.book;

import batchwright.files.value.DateGrammar;
import batchwright.files.value.Ids;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.Weights;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of a line, read one after another. A comma is a word; what stands behind a # is a note, and no word. */
final class LineWords {
    /** A number that has its unit close behind. */
    private static final Pattern CLOSE = Pattern.compile("([0-9.,]*[0-9])([a-zA-Z]+)");

    private static final NumberRange GRAMS = NumberRange.of("weight", "0", "100000", "g", "");

    private final Span whole;
    private final List<Written> words = new ArrayList<>();
    private final Set<String> names;
    private final Problems problems;
    private int next;

    /** @param names short names that were found to be right; more are added */
    LineWords(SourceFile file, int number, Set<String> names, Problems problems) {
        this.names = names;
        this.problems = problems;
        String line = file.line(number);
        this.whole = new Span(file, number, 1, Math.max(1, line.length()));
        int end = noteIn(line);
        int at = 0;
        while (at < end) {
            int wordEnd = endOfWord(line, at, end);
            if (wordEnd > at) {
                split(line.substring(at, wordEnd), file, number, at + 1);
            }
            at = Math.max(wordEnd, at + 1);
        }
    }

    /** Where the word ends that begins here; here when there is a blank. A comma inside a word, such as 1,5, belongs to it. */
    private static int endOfWord(String line, int from, int end) {
        if (line.charAt(from) == ',') {
            return from + 1;
        }
        int at = from;
        while (at < end && !Character.isWhitespace(line.charAt(at)) && !isLastComma(line, at, end)) {
            at++;
        }
        return at;
    }

    private static boolean isLastComma(String line, int at, int end) {
        return line.charAt(at) == ','
                && (at + 1 == end || line.charAt(at + 1) == ',' || Character.isWhitespace(line.charAt(at + 1)));
    }

    /** Where the note begins, or the end of the line. */
    static int noteIn(String line) {
        int at = line.indexOf('#');
        while (at > 0 && !Character.isWhitespace(line.charAt(at - 1))) {
            at = line.indexOf('#', at + 1);
        }
        return at < 0 ? line.length() : at;
    }

    private void split(String text, SourceFile file, int number, int column) {
        Matcher close = CLOSE.matcher(text);
        if (Character.isLetter(text.charAt(text.length() - 1)) && close.matches()) {
            words.add(new Written(
                    close.group(1),
                    new Span(file, number, column, close.group(1).length())));
            words.add(new Written(
                    close.group(2),
                    new Span(
                            file,
                            number,
                            column + close.start(2),
                            close.group(2).length())));
        } else {
            words.add(new Written(text, new Span(file, number, column, text.length())));
        }
    }

    Span whole() {
        return whole;
    }

    /** The rest of the line, from a word on, as a place. */
    Span from(Written word) {
        return new Span(
                whole.file(),
                whole.line(),
                word.at().column(),
                Math.max(1, whole.length() + 1 - word.at().column()));
    }

    private Optional<Written> peek() {
        return next < words.size() ? Optional.of(words.get(next)) : Optional.empty();
    }

    Written word(String expected) throws WrongLine {
        Optional<Written> word = peek();
        if (word.isEmpty()) {
            int end = words.isEmpty() ? 1 : after(words.get(words.size() - 1));
            problems.error(whole.file().span(whole.line(), end, 1), "the line ends too early", "expected " + expected);
            throw new WrongLine();
        }
        next++;
        return word.get();
    }

    private static int after(Written word) {
        return word.at().column() + word.at().length();
    }

    /** Whether the next word is this one, which is then read. */
    boolean has(String word) {
        boolean here = peek().filter(w -> w.text().equals(word)).isPresent();
        next += here ? 1 : 0;
        return here;
    }

    /** Whether the words ahead are a number and a unit of weight. */
    boolean isWeightAhead() {
        return next + 1 < words.size() && Weights.isUnit(words.get(next + 1).text());
    }

    /** Whether the word after the next is this unit. */
    boolean isUnitAhead(String unit) {
        return next + 1 < words.size() && words.get(next + 1).text().equals(unit);
    }

    boolean isNumberAhead() {
        return peek().filter(w -> Character.isDigit(w.text().charAt(0))).isPresent();
    }

    void need(String word, String expected) throws WrongLine {
        Written found = word(expected);
        if (!found.text().equals(word)) {
            throw wrong(found, found.quoted() + " is not understood here", expected);
        }
    }

    /** @throws WrongLine always unless all was read */
    void end() throws WrongLine {
        if (next < words.size()) {
            Written more = words.get(next);
            throw wrong(more, more.quoted() + " is not understood here", "the end of the line, or a note behind a #");
        }
    }

    WrongLine wrong(Written word, String wrong, String expected) {
        problems.error(word, wrong, expected.isEmpty() ? "" : "expected " + expected);
        return new WrongLine();
    }

    String food() throws WrongLine {
        return name(word("the short name of a food"));
    }

    String dish() throws WrongLine {
        return name(word("the short name of a dish"));
    }

    String eater() throws WrongLine {
        return known(Ids.eater(word("the short name of an eater"), problems));
    }

    private String name(Written word) throws WrongLine {
        if (!names.contains(word.text())) {
            names.add(known(Ids.id(word, problems)));
        }
        return word.text();
    }

    LocalDate date() throws WrongLine {
        return known(new DateGrammar(problems).read(word("a day such as 2026-11-29")));
    }

    int count(NumberRange range) throws WrongLine {
        return known(new Numbers(problems).whole(word(range.what()), range));
    }

    BigDecimal decimal(NumberRange range) throws WrongLine {
        return plain(known(new Numbers(problems).decimal(word(range.what() + range.inUnit()), range)));
    }

    BigDecimal grams() throws WrongLine {
        Written number = word("a weight such as 500 g");
        Written unit = word("g, kg, oz or lb");
        if (!Weights.isUnit(unit.text())) {
            throw wrong(unit, "the unit " + unit.quoted() + " does not fit here", "g, kg, oz or lb");
        }
        return plain(known(new Weights(problems).grams(number, unit.text(), GRAMS)));
    }

    /** One form for each number, so that two lines that say the same are the same. */
    static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static <T> T known(Optional<T> value) throws WrongLine {
        return value.orElseThrow(WrongLine::new);
    }
}
