package batchwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** At the stove: each step with its amounts, a pot shared out, and what was done in the book. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class StoveTest {
    private static OpenedPage page;

    @BeforeAll
    static void open(@TempDir Path folder) throws IOException {
        page = KeptKitchen.open(folder);
    }

    @AfterAll
    static void close() {
        assertThat(page.faults).isEmpty();
        page.close();
    }

    /** The plan's 630 g of couscous are those of its JSON; the step is the dish's own. */
    @Test
    @Order(1)
    void a_step_holds_what_it_takes_in_hand() throws IOException {
        String couscous = page.file("profiles/plans/2026-11-30.json").replaceAll("(?s).*\"food\" : \"couscous\",\\s*\"grams\" : ([0-9]+).*", "$1");

        assertThat(page.get("/stove").body())
                .contains("<strong>" + couscous + " g</strong> <bdi>couscous</bdi>", "Pour boiling water over the couscous");
    }

    /** 6 boxes that are alike: each a sixth of what is in the pot, 4800 - 2100 = 2700 g, to the 5 g of the scale. */
    @Test
    @Order(2)
    void a_pot_that_was_weighed_is_shared_out() {
        HttpResponse<String> shared = pot("/stove/pot", "4800", "2.1 kg");

        assertThat(shared.body()).contains("tagine: 2700 g in the pot", "<td class=\"n\">450</td>", "value=\"2.1 kg\"");
        assertThat(pot("/stove/pot/labels.pdf", "4800", "2.1 kg").body()).startsWith("%PDF-");
    }

    @Test
    @Order(3)
    void a_weight_that_cannot_be_stays_in_its_field() {
        HttpResponse<String> wrong = pot("/stove/pot", "48000", "2,1 kg");

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("There is a problem", "value=\"48000\"", "cannot be right");
        assertThat(pot("/stove/pot", "heavy", "").body()).contains("Enter a weight such as 5300 or 5.3 kg.");
        assertThat(pot("/stove/pot", "1000", "1000").body()).contains("weighs no more than the empty one");
    }

    private static HttpResponse<String> pot(String path, String full, String empty) {
        return page.post(path, "dish", KeptKitchen.DISH, "part", "tagine", "full", full, "empty", empty);
    }

    @Test
    @Order(4)
    void what_was_cooked_and_filled_is_in_the_book() throws IOException {
        assertThat(page.post("/stove/cooked", "dish", KeptKitchen.DISH).body())
                .as("nothing was bought")
                .contains("There is a problem", "more than there was", "It is right all the same");
        assertThat(page.post("/stove/cooked", "dish", KeptKitchen.DISH, "sure", "yes").body())
                .contains("Cooked: written down.");
        assertThat(pot("/stove/pot/filled", "4800", "2100").body()).contains("Filled: written down.");

        assertThat(Files.readAllLines(page.folder.resolve("profiles/book.txt")))
                .anyMatch(line -> line.startsWith("2026-11-30 cooked chickpea_tagine from "))
                .anyMatch(line -> line.startsWith("2026-11-30 filled 6 chickpea_tagine for parent-holding in fridge until 2026-12-03, "));
    }

    @Test
    void only_what_is_cooked_can_be_written() {
        assertThat(page.post("/stove/cooked", "dish", "turkey_chili").statusCode()).isEqualTo(422);
    }

    @Test
    void there_is_a_label_for_each_box() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(page.bytes("/stove/labels.pdf"))) {
            String text = new PDFTextStripper().getText(pdf);

            assertThat(text.split("Parent, holding", -1)).hasSize(6 + 1);
            assertThat(text).contains("Allergens: ");
        }
    }
}
