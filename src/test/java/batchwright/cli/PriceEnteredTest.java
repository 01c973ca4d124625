package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices entered by command: one line of foods/shop.csv changes, or is added, and nothing else. */
class PriceEnteredTest {
    @TempDir
    Path here;

    private Path shop;
    private String before;

    @BeforeEach
    void init() throws IOException {
        Folders.starter(here);
        shop = here.resolve("foods/shop.csv");
        before = Files.readString(shop);
    }

    private Cli.Result price(String... args) {
        List<String> all = new ArrayList<>(List.of("foods"));
        all.addAll(List.of(args));
        return Cli.in(here).run(all.toArray(new String[0]));
    }

    @Test
    void three_prices() throws IOException {
        assertThat(price("white_rice", "--price", "2.49", "--pack", "907g", "--shop", "Corner Market")
                        .out())
                .contains("changed", "white_rice,corner market,bag,907,2.49,USD,2026-11-25,own price")
                .contains("The price before: 2.19.");
        assertThat(price("quinoa", "--price", "4.10", "--pack", "500 g", "--shop", "Hilltop", "--label", "bag, fair")
                        .out())
                .contains("added", "quinoa,Hilltop,\"bag, fair\",500 g,4.10,USD,2026-11-25,own price");
        assertThat(price("rye_bread", "--price", "3", "--pack", "1 kg", "--shop", "Hilltop", "--json")
                        .out())
                .contains("\"price_before\" : null", "batchwright.price/1");

        List<String> old = before.lines().toList();
        List<String> now = Files.readString(shop).lines().toList();
        List<String> gone = new ArrayList<>(old);
        gone.removeAll(now);
        List<String> come = new ArrayList<>(now);
        come.removeAll(old);
        assertThat(gone).hasSize(1).allMatch(line -> line.startsWith("white_rice,corner market,bag,907,2.19"));
        assertThat(come).hasSize(3);
        List<String> kept = new ArrayList<>(now);
        kept.removeAll(come);
        old = new ArrayList<>(old);
        old.removeAll(gone);
        assertThat(kept).isEqualTo(old);
        assertThat(Cli.in(here).run("check").code()).isZero();
        assertThat(price("quinoa").out()).contains("4.10");
    }

    /** Line ends of another system, a comment at the end, no line end behind the last line: all stay. */
    @Test
    void every_other_byte_stays() throws IOException {
        String odd = before.replace("\n", "\r\n").stripTrailing() + "\r\n#  my note, kept  ";
        Files.write(shop, odd.getBytes(StandardCharsets.UTF_8));
        String line = "\r\nquinoa,corner market,bag,454,3.99,";
        assertThat(odd).contains(line);

        assertThat(price("quinoa", "--price", "4.05", "--pack", "454", "--shop", "corner market")
                        .code())
                .isZero();

        String now = Files.readString(shop);
        assertThat(now.replaceFirst("quinoa,corner market,bag,454,[^\r]*", "X"))
                .isEqualTo(odd.replaceFirst("quinoa,corner market,bag,454,[^\r]*", "X"));
        assertThat(now).contains("\r\nquinoa,corner market,bag,454,4.05,USD,2026-11-25,own price\r\n");
    }

    @Test
    void with_a_mistake_nothing_is_written() throws IOException {
        assertThat(price("quinoa", "--price", "4,10", "--pack", "500g", "--shop", "x")
                        .both())
                .contains("has a decimal comma", "^^^^");
        assertThat(price("quinoa", "--price", "4.10", "--pack", "a bag", "--shop", "x")
                        .both())
                .contains("is not a weight in g");
        assertThat(price("quinoa", "--price", "4.10", "--pack", "500g").both()).contains("without --shop");
        assertThat(price("quinua", "--price", "4.10", "--pack", "500g", "--shop", "x")
                        .both())
                .contains("there is no food called");
        assertThat(price("chicken_breast", "--price", "7", "--pack", "1kg", "--shop", "x", "--label", "tray, bone in")
                        .both())
                .contains("the bone is still on this pack");

        assertThat(Files.readString(shop)).isEqualTo(before);
        try (var files = Files.list(here.resolve("foods"))) {
            assertThat(files.filter(file -> file.getFileName().toString().startsWith(".")))
                    .isEmpty();
        }
    }

    /** The starter files inside the program are nobody's kitchen. */
    @Test
    void without_a_kitchen_of_one_s_own_nothing_is_written(@TempDir Path empty) {
        assertThat(Cli.in(empty)
                        .run("foods", "egg", "--price", "3", "--pack", "682g", "--shop", "x")
                        .both())
                .contains("there is no kitchen of your own here", "init DIR");
    }
}
