package batchwright.files.book;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.EventWords;
import batchwright.files.value.Problems;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a line of the book may say, and what is said of one that says something else. */
class BookReaderTest {
    private final Problems problems = new Problems();

    private Book read(String text) {
        return BookReader.read(Optional.of(SourceFile.of("book.txt", text)), problems);
    }

    private Book lines(String... lines) {
        return read(String.join("\n", lines) + "\n");
    }

    private String told() {
        return problems.list().stream().map(Problem::render).collect(Collectors.joining());
    }

    /** Each is the form in which the program itself writes it, so that reading what was written gives the same again. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "weighed anna-b 74.2 kg",
                "bought 4 x 283 g couscous for 7.96",
                "bought 500 g chicken until 2026-12-02",
                "bought 1290 g oil",
                "cooked ragu",
                "cooked ragu from 300 g lentils, 24.9 g oil",
                "filled 6 ragu for anna-b in fridge until 2026-12-01",
                "filled 1 ragu for anna-b in freezer until 2027-01-28, 982 kcal",
                "filled 1 ragu for anna-b in freezer until 2027-01-28, 982 kcal, 44 g protein",
                "ate anna-b 2 ragu",
                "ate anna-b 2 ragu, 1964 kcal",
                "ate anna-b 1 ragu of ben, 982 kcal",
                "ate anna-b 56 g peanuts, 329 kcal",
                "ate anna-b out 900 kcal",
                "ate anna-b nothing else",
                "ate anna-b not logged",
                "gave away 1 ragu of anna-b",
                "threw away 200 g kale",
                "counted 0 g rice",
                "counted 350 g kale until 2026-12-02",
                "ill anna-b",
                "travel anna-b",
                "creatine anna-b",
                "creatine anna-b stopped",
                "cycle anna-b",
                "adopted anna-b 3150 kcal"
            })
    void a_line_says_the_same_when_it_is_written_again(String words) {
        Book book = lines("2026-11-29 " + words);

        assertThat(told()).isEmpty();
        assertThat(book.entries()).hasSize(1);
        assertThat(EventWords.of(book.entries().get(0).event())).isEqualTo(words);
    }

    /** Pound and ounce of the international agreement of 1959: 0.45359237 kg, and a sixteenth of it. */
    @ParameterizedTest
    @CsvSource({
        "weighed anna 163.5lb, weighed anna 74.1624 kg",
        "weighed anna 74.20 kg, weighed anna 74.2 kg",
        "bought 1.5kg rice, bought 1500 g rice",
        "bought 2 x 16 oz rice, bought 2 x 453.59 g rice",
        "ate anna ragu, ate anna 1 ragu",
        "threw away ragu of anna, threw away 1 ragu of anna",
        "weighed anna 74 kg  # after breakfast, weighed anna 74 kg"
    })
    void other_ways_to_say_it(String typed, String written) {
        assertThat(EventWords.of(lines("2026-11-29 " + typed).entries().get(0).event()))
                .isEqualTo(written);
        assertThat(told()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "weihged anna 74 kg | \"weihged\" is nothing that the book knows | 12 | nearest: \"weighed\"",
                "weighed anna 7.42 kg | weight 7.42 kg is less than 25 kg | 25 | expected 25 to 300 kg",
                "weighed anna 74 | is no body weight | 25 | 74.2 kg or 163.5 lb",
                "weighed anna 74,2 kg | has a decimal comma | 25 | 74.2",
                "weighed anna | the line ends too early | 24 | such as 74.2 kg",
                "weighed Anna 74 kg | cannot be a short name | 20 | lower case",
                "ate anna out 900 | the line ends too early | 28 | kcal",
                "ate anna 2 ragu and more | \"and\" is not understood here | 28 | a note behind a #",
                "filled 2 ragu for anna in box until 2026-12-01 | no place for containers | 38 | fridge or freezer",
                "bought 4 x 283 ml rice | the unit \"ml\" does not fit | 27 | g, kg, oz or lb",
                "threw 200 g kale | \"200\" is not understood here | 18 | away",
            })
    void a_wrong_line_is_shown_with_what_was_expected(String words, String wrong, int column, String expected) {
        lines("# batchwright book 1", "2026-11-29 " + words);

        assertThat(told())
                .contains("book.txt:2:" + column + ": error: ")
                .contains(wrong)
                .contains(expected);
    }

    @Test
    void a_day_must_be_one_of_the_calendar() {
        lines("2026-02-30 ill anna", "29.11.2026 ill anna");

        assertThat(told()).contains("book.txt:1:1: error: ", "book.txt:2:1: error: ", "2026-11-29");
    }

    @Test
    void one_wrong_line_leaves_the_others_as_they_are() {
        Book book = lines("2026-11-28 ill anna", "2026-11-29 il anna", "", "# a note", "2026-11-30 ill anna");

        assertThat(book.entries()).extracting(Entry::line).containsExactly(1, 5);
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void a_book_by_a_newer_program_is_not_guessed_at() {
        Book book = lines("# batchwright book 2", "2026-11-29 ill anna");

        assertThat(book.entries()).isEmpty();
        assertThat(told()).contains("book.txt:1:20: error: the book is written by a newer version");
    }

    @Test
    void a_last_line_without_an_end_is_noticed_and_not_read() {
        Book book = read("2026-11-29 ate anna out 900 kcal\n2026-11-29 bought 283 g rice for 7");

        assertThat(book.entries()).extracting(Entry::line).containsExactly(1);
        assertThat(problems.errors()).isZero();
        assertThat(told()).contains("book.txt:2:1: warning: the last line has no end");
    }

    @Test
    void a_line_marked_as_cut_off_is_not_read() {
        Book book = lines("2026-11-29 bought 283 g rice for 7 # torn", "2026-11-29 ill anna");

        assertThat(book.entries()).extracting(Entry::line).containsExactly(2);
        assertThat(told()).contains("book.txt:1:1: warning: this line was cut off");
    }

    @Test
    void undo_takes_back_the_last_line_that_says_the_same() {
        Book book = lines(
                "2026-11-29 ate anna 1 ragu",
                "2026-11-29 ate anna 1 ragu",
                "2026-11-30 undo 2026-11-29 ate anna 1 ragu",
                "2026-11-30 ill anna");

        assertThat(book.entries()).extracting(Entry::line).containsExactly(1, 4);
        assertThat(told()).isEmpty();
    }

    @Test
    void undo_of_what_is_not_there_is_told() {
        lines("2026-11-29 ate anna 1 ragu", "2026-11-30 undo 2026-11-29 ate anna 2 ragu");

        assertThat(told()).contains("book.txt:2:1: warning: there is no such line above");
    }

    @Test
    void days_are_in_order_whatever_the_order_of_the_lines() {
        Book book = lines("2026-11-30 ill anna", "2026-11-29 ill anna", "2026-11-30 travel anna");

        assertThat(book.entries()).extracting(Entry::line).containsExactly(2, 1, 3);
        assertThat(book.until(LocalDate.of(2026, 11, 29)).entries()).hasSize(1);
        assertThat(book.last().map(Entry::line)).contains(3);
    }

    private static String longBook(int lines) {
        LocalDate first = LocalDate.of(2000, 1, 1);
        List<String> kinds = List.of(
                "weighed anna 74.2 kg",
                "ate anna 2 chickpea_tagine, 1964 kcal",
                "bought 4 x 283 g couscous for 7.96",
                "filled 6 lentil_ragu for anna in fridge until 2026-12-01, 982 kcal, 44 g protein",
                "cooked lentil_ragu from 300 g lentils, 24.9 g oil, 10 g salt");
        return IntStream.range(0, lines)
                .mapToObj(i -> first.plusDays(i / 20) + " " + kinds.get(i % kinds.size()) + "\n")
                .collect(Collectors.joining());
    }

    @Test
    void a_long_life_fits_into_a_book() {
        assertThat(read(longBook(100_000)).all(Event.Weighed.class)).hasSize(20_000);
        assertThat(told()).isEmpty();
    }

    /** On request: the figure in docs/book.md. */
    @Test
    @EnabledIfSystemProperty(named = "batchwright.book.speed", matches = ".+")
    void a_hundred_thousand_lines_take_less_than_a_second() {
        String text = longBook(100_000);
        var threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        read(text);
        Duration took = Duration.ofNanos(threads.getCurrentThreadCpuTime() - start);
        System.out.println("100,000 lines: " + took.toMillis() + " ms of processor time");

        assertThat(took).isLessThan(Duration.ofSeconds(1));
    }
}
