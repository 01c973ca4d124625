package batchwright.food.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.CsvRows;
import batchwright.food.Food;
import batchwright.food.Nutrients;
import batchwright.food.hazard.FishMercury.Advised;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The tables beside figures typed apart from the reference, each with its source there; figures from memory are no oracle. */
class HazardsPublishedTest {
    private static final Map<String, String> CODES = Map.of(
            "methylmercury tolerable", "fish_mercury",
            "fish serving", "fish_servings",
            "beans boiled", "raw_beans",
            "frozen berries boiled", "frozen_berries",
            "rice chilled within", "rice",
            "listeria foods heated", "listeria_foods",
            "egg", "soft_eggs",
            "salt", "salt");
    private static final Map<String, Advised> CLASSES = Map.of(
            "fish best choices", Advised.BEST,
            "fish good choices", Advised.GOOD,
            "fish choices to avoid", Advised.AVOID);

    private static List<CSVRecord> published(String name) {
        return CsvRows.published(name).stream()
                .filter(row -> !row.get("mark").equals("memory"))
                .toList();
    }

    private static Food fish(String description) {
        return new Food(
                "f", "f", "fish", Optional.empty(), description, Nutrients.NONE, BigDecimal.ZERO, Set.of(), true);
    }

    @Test
    void figures_and_people_are_those_published() {
        List<CSVRecord> rows = published("food_hazards.csv");
        assertThat(rows).hasSize(CODES.size() + CLASSES.size());
        for (CSVRecord row : rows) {
            String topic = row.get("topic");
            BigDecimal figure = new BigDecimal(row.get("figure"));
            if (CLASSES.containsKey(topic)) {
                assertThat(CLASSES.getOrDefault(topic, Advised.AVOID).servings())
                        .as(topic)
                        .isEqualTo(figure.intValueExact());
            } else {
                Hazard hazard = Hazard.of(CODES.getOrDefault(topic, topic));
                assertThat(hazard.amount()).as(topic).isEqualByComparingTo(figure);
                assertThat(hazard.who())
                        .as(topic)
                        .isEqualTo(Hazard.Who.valueOf(row.get("who").toUpperCase(Locale.ROOT)));
            }
        }
    }

    @Test
    void each_fish_is_in_its_class_with_its_mercury() {
        for (CSVRecord row : published("fish_mercury.csv")) {
            Optional<FishMercury> found = FishMercury.of(fish(row.get("description")));
            String advised = row.get("class");
            assertThat(found.map(FishMercury::advised))
                    .as(row.get("description"))
                    .isEqualTo(
                            advised.isEmpty()
                                    ? Optional.empty()
                                    : Optional.of(Advised.valueOf(advised.toUpperCase(Locale.ROOT))));
            if (!row.get("ppm").isEmpty()) {
                assertThat(found.flatMap(FishMercury::ugPerG))
                        .as(row.get("description"))
                        .hasValueSatisfying(ppm -> assertThat(ppm).isEqualByComparingTo(row.get("ppm")));
            }
        }
    }

    @Test
    void every_rule_has_a_source_and_a_mark() {
        assertThat(Hazard.all())
                .extracting(Hazard::code)
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(9);
        assertThat(Hazard.all()).allSatisfy(hazard -> {
            assertThat(hazard.advice().source()).hasSizeGreaterThan(5);
            assertThat(hazard.advice().mark()).isIn("seen", "memory", "common practice", "arith", "choice");
        });
    }
}
