package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.Golden;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dish written in grams and measures is shown in both. */
class MeasuresShownTest {
    private static final Path WORKSPACE = Path.of("src/test/resources/errors/_base");
    private static final Path APPROVED = Path.of("src/test/resources/golden/dish-in-measures.txt");
    private static final String DISH = """
            dish: peanut_pasta
            name: Peanut pasta
            kind: main
            fridge_days: 3
            freezes: no
            reheat: "Until steaming, 74 C (165 F) inside."
            parts:
              - part: pasta
                least: 150 g
                most: 350 g
                mix:
                  pasta: 0.25 kg, boiled
                  whole_milk: 1 1/2 cups
                  peanut_butter: 2 tbsp
                  banana: 240 g
                  rolled_oats: 70 g
              - part: eggs
                optional: yes
                piece: 1 large
                least: 1 piece
                most: 3 pieces
                mix:
                  egg: 3 large, boiled
            steps:
              - do: "Boil."
                minutes: 10
                hands_on: no
                uses: burner
            """;

    @TempDir
    Path here;

    @BeforeEach
    void workspace() throws IOException {
        try (Stream<Path> files = Files.walk(WORKSPACE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = here.resolve(WORKSPACE.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Files.writeString(here.resolve("foods/dishes/peanut_pasta.yaml"), DISH);
    }

    @Test
    void dishes_shows_grams_and_the_measure() {
        Cli.Result result = Cli.in(here).run("dishes", "peanut_pasta");

        assertThat(result.code()).as(result.both()).isZero();
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
        Golden.check(APPROVED, result.out().substring(0, result.out().indexOf("One container")));
    }

    /** SR28 in the workspace: a cup of milk 244 g, a tbsp of peanut butter 16 g, a medium banana 118 g, a large egg 50 g. */
    @Test
    void json_has_grams_and_the_measure() {
        JsonNode parts = Shape.parse(
                        Cli.in(here).run("dishes", "peanut_pasta", "--json").out())
                .at("/dishes/0/parts");

        assertThat(parts.at("/1/step_g").intValue()).isEqualTo(50);
        assertThat(parts.at("/1/mix/0/grams").intValue()).isEqualTo(150);
        assertThat(parts.at("/1/mix/0/measure").textValue()).isEqualTo("3 large");
        JsonNode mix = parts.at("/0/mix");
        assertThat(mix.at("/0/grams").intValue()).isEqualTo(250);
        assertThat(mix.at("/0/measure").isNull()).isTrue();
        assertThat(mix.at("/1/grams").intValue()).isEqualTo(366);
        assertThat(mix.at("/1/measure").textValue()).isEqualTo("1 1/2 cups");
        assertThat(mix.at("/2/grams").intValue()).isEqualTo(32);
        assertThat(mix.at("/2/measure").textValue()).isEqualTo("2 tbsp");
        assertThat(mix.at("/3/measure").textValue()).isEqualTo("2 medium");
        assertThat(mix.at("/4/measure").isNull()).isTrue();
    }
}
