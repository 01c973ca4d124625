package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is entered before the cupboard stands in the files as the commands would write it, and nothing else changes. */
class CupboardTest {
    private static OpenedPage page;

    @BeforeAll
    static void open(@TempDir Path folder) throws IOException {
        page = OpenedPage.small(folder).enter();
    }

    @AfterAll
    static void close() {
        page.close();
    }

    @Test
    void what_was_counted_is_at_home() throws IOException {
        assertThat(page.post("/cupboard/counted", "food", "couscous", "grams", "350 g", "until", "2026-12-24")
                        .body())
                .contains("350 g, use by Thu 24 Dec");
        assertThat(page.file("profiles/book.txt")).contains("2026-11-30 counted 350 g couscous until 2026-12-24");
    }

    @Test
    void a_price_changes_one_line_and_no_other() throws IOException {
        List<String> before = page.file("foods/shop.csv").lines().toList();
        HttpResponse<String> answer =
                page.post("/cupboard/price", "food", "egg", "pack", "682 g", "price", "3.10", "shop", "corner market");

        assertThat(answer.body()).contains("of the table of prices is now: egg");
        List<String> after = page.file("foods/shop.csv").lines().toList();
        assertThat(after.stream().filter(line -> !before.contains(line)).toList())
                .singleElement()
                .asString()
                .startsWith("egg,");
        assertThat(before.stream().filter(line -> !after.contains(line)).count()).isLessThanOrEqualTo(1);
    }

    @Test
    void what_is_wrong_stays_typed_and_nothing_is_written() throws IOException {
        String before = page.file("foods/shop.csv");
        HttpResponse<String> answer =
                page.post("/cupboard/price", "food", "egg", "pack", "a dozen", "price", "3.10", "shop", "corner market");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("value=\"a dozen\"", "value=\"3.10\"", "There is a problem");
        assertThat(page.file("foods/shop.csv")).isEqualTo(before);
    }
}
