package batchwright.app.memory;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.food.Kitchen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nothing is read twice while nothing changes, and everything anew when anything does. */
class RememberedKitchenTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

    @TempDir
    Path folder;

    private RememberedKitchen kitchen;

    @BeforeEach
    void open() {
        new WriteStarterFiles().into(folder);
        kitchen = new RememberedKitchen(
                Workspace.open(Optional.of(folder), folder, DAY, note -> {}).source(), new RememberedKitchen.Memory());
    }

    private Kitchen read() {
        return kitchen.kitchen(DAY).value().orElseThrow();
    }

    @Test
    void what_did_not_change_is_the_same() {
        assertThat(read()).isSameAs(read());
        assertThat(kitchen.kitchen(DAY.plusDays(1)).value().orElseThrow()).isNotSameAs(read());
    }

    @Test
    void a_line_of_the_book_counts_at_once() throws IOException {
        Kitchen before = read();
        Files.writeString(
                folder.resolve("profiles/book.txt"),
                "2026-11-30 counted 350 g couscous\n",
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);

        assertThat(before.pantryGrams(before.foods().get("couscous"))).isEqualByComparingTo("0");
        assertThat(read().pantryGrams(read().foods().get("couscous"))).isEqualByComparingTo("350");
        assertThat(kitchen.book().value().orElseThrow().entries()).hasSize(1);
    }

    @Test
    void a_dish_that_is_gone_is_gone() throws IOException {
        assertThat(read().dishes()).containsKey("lentil_ragu");
        Files.delete(folder.resolve("foods/dishes/lentil_ragu.yaml"));

        assertThat(read().dishes()).doesNotContainKey("lentil_ragu");
    }

    @Test
    void an_error_is_told_until_it_is_mended() throws IOException {
        Path shop = folder.resolve("foods/shop.csv");
        String right = Files.readString(shop);
        Files.writeString(shop, right + "nonsense\n");
        assertThat(kitchen.kitchen(DAY).value()).isEmpty();
        Files.writeString(shop, right);

        assertThat(kitchen.kitchen(DAY).value()).isPresent();
    }
}
