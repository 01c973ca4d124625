package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.Workspace;
import batchwright.app.book.FindAtHome;
import batchwright.food.Food;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is ticked in the shop is in the book, once; what was taken otherwise is written as it was. */
class ShopTest {
    private static final String PLAN = "2026-11-30-1";

    private OpenedPage page;
    /** Where couscous stands in the plan. */
    private String couscous = "";

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        page = KeptKitchen.open(folder);
        couscous = line("couscous");
    }

    @AfterEach
    void close() {
        assertThat(page.faults).isEmpty();
        page.close();
    }

    private String line(String food) {
        String shown = page.get("/shop").body();
        int name = shown.indexOf("data-name=\"" + food);
        assertThat(name).as(shown).isPositive();
        int row = shown.lastIndexOf("data-line=\"", name);
        return shown.substring(row + 11, shown.indexOf('"', row + 11));
    }

    private HttpResponse<String> tick(String on, String number) {
        return page.post("/shop/tick", "plan", PLAN, "line", couscous, "on", on, "number", number);
    }

    private List<String> book(String word) throws IOException {
        Path book = page.folder.resolve("profiles/book.txt");
        return Files.exists(book)
                ? Files.readAllLines(book).stream().filter(l -> l.contains(word)).toList()
                : List.of();
    }

    @Test
    void a_tick_is_a_line_of_the_book_and_taking_it_back_undoes_it() throws IOException {
        tick("yes", "1");

        assertThat(book("couscous")).hasSize(1).first().asString().startsWith("2026-11-30 bought ").contains(" g couscous for ");
        assertThat(page.get("/shop").body()).contains("aria-checked=\"true\"");

        tick("no", "2");
        assertThat(book("couscous")).hasSize(2).last().asString().startsWith("2026-11-30 undo ");
        assertThat(page.get("/shop").body()).doesNotContain("aria-checked=\"true\"");
    }

    @Test
    void the_same_tick_sent_again_counts_once_also_after_it_was_taken_back() throws IOException {
        tick("yes", "1");
        tick("yes", "1");
        assertThat(book(" bought ")).hasSize(1);

        tick("no", "2");
        tick("yes", "1");
        assertThat(page.get("/shop").body()).doesNotContain("aria-checked=\"true\"");
    }

    @Test
    void what_is_taken_is_at_home_for_the_command_line() throws IOException {
        tick("yes", "1");

        assertThat(page.get("/shop").body()).contains("id=\"basket\"");
        var workspace = Workspace.open(Optional.of(page.folder), page.folder, OpenedPage.DAY, note -> {});
        assertThat(FindAtHome.answer(workspace).foods().keySet().stream().map(Food::id))
                .contains("couscous");
    }

    @Test
    void another_pack_is_written_as_it_was_and_its_price_is_noted() throws IOException {
        page.post(
                "/shop/other", "plan", PLAN, "line", couscous, "packs", "2", "pack", "500 g", "price", "3.27", "remember", "yes");

        assertThat(book("couscous")).containsExactly("2026-11-30 bought 2 x 500 g couscous for 6.54");
        assertThat(page.file("foods/shop.csv")).containsPattern("couscous,corner market,pack,500 ?g?,3.27,");
        assertThat(page.get("/shop").body()).contains("Taken: 2 × 500 g, ", "than planned");
    }

    @Test
    void what_cannot_be_a_price_stays_in_its_field() throws IOException {
        HttpResponse<String> wrong =
                page.post("/shop/other", "plan", PLAN, "line", couscous, "packs", "2", "pack", "500 g", "price", "cheap");

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("<title>Error: ", "value=\"cheap\"", "href=\"#price-" + couscous + "\"");
        assertThat(book("couscous")).isEmpty();
    }

    @Test
    void without_what_is_not_there_another_plan_is_shown_and_kept() throws Exception {
        String peas = line("chickpeas");
        page.post("/shop/tick", "plan", PLAN, "line", peas, "on", "yes", "number", "1");
        int lastLine = Files.readAllLines(page.folder.resolve("profiles/book.txt")).size();
        page.post("/shop/missing", "plan", PLAN, "line", couscous);
        String shown = page.get("/shop/without").body();
        for (int i = 0; i < 300 && shown.contains("data-working=\"yes\""); i++) {
            Thread.sleep(200);
            shown = page.get("/shop/without").body();
        }
        assertThat(shown).contains("Still to pay: ", "with the plan so far", "Keep this plan");

        assertThat(page.post("/shop/keep").body()).contains("data-plan=\"2026-11-30-2\"").doesNotContain("data-name=\"couscous\"");
        assertThat(page.file("profiles/plans/2026-11-30-2.json")).contains("\"kept_after_book_line\" : " + lastLine + "\n");
    }
}
