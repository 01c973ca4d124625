package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * What is taken off every food of the starter catalogue, against the source's own description of its refuse: USDA SR28 (2015),
 * field Ref_desc of FOOD_DES.
 */
class RefusePublishedTest {
    private static final List<CSVRecord> CATALOGUE = CsvRows.read(Path.of("foods/catalogue.csv"));
    private static final Map<String, CSVRecord> SR28 = CsvRows.published("sr28_refuse.csv").stream()
            .collect(Collectors.toMap(row -> row.get("id"), Function.identity()));

    /** Beginnings of the source's words, and the part they tell of. Meat has skin, fruit and vegetables peel. */
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("bone", "bone"),
            Map.entry("shell", "shell"),
            Map.entry("hull", "shell"),
            Map.entry("paring", "peel"),
            Map.entry("peel", "peel"),
            Map.entry("rind", "peel"),
            Map.entry("scraping", "peel"),
            Map.entry("pit", "stone"),
            Map.entry("core", "core"));

    /** A mango and an avocado have one large seed, which a cook calls a stone. */
    private static final Set<String> SEED_IS_STONE = Set.of("mango", "avocado");

    /** Whose figure is not the source's, and why stands in the catalogue. */
    private static final Set<String> OWN_FIGURE = Set.of("chicken_thigh", "potato", "sweet_potato", "eggplant");

    private static String effective(CSVRecord food) {
        return food.get("refuse_as_sold").isEmpty() ? food.get("REFUSE") : food.get("refuse_as_sold");
    }

    private static Set<String> told(CSVRecord food, String description) {
        var told = new TreeSet<String>();
        boolean animal = Set.of("meat", "fish").contains(food.get("group"));
        for (String word : description.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)) {
            WORDS.forEach((start, part) -> {
                if (word.startsWith(start)) {
                    told.add(part);
                }
            });
            if (word.startsWith("skin")) {
                told.add(animal ? "skin" : "peel");
            }
            if (word.startsWith("seed")) {
                told.add(SEED_IS_STONE.contains(food.get("food")) ? "stone" : "seeds");
            }
        }
        return told;
    }

    @Test
    void what_is_taken_off_is_what_the_source_describes() {
        Map<String, String> differences = new TreeMap<>();
        int compared = 0;
        for (CSVRecord food : CATALOGUE) {
            CSVRecord source = SR28.get(food.get("usda_ndb"));
            boolean thrown = new BigDecimal("0" + effective(food)).signum() > 0;
            if (source == null || !thrown || OWN_FIGURE.contains(food.get("food"))) {
                continue;
            }
            compared++;
            var mine = new TreeSet<>(List.of(food.get("taken_off").split(" ", -1)));
            mine.retainAll(Set.of("bone", "skin", "shell", "peel", "stone", "core", "seeds"));
            Set<String> theirs = told(food, source.get("REFUSE_DESC").replace("Bone, 0%", ""));
            if (food.get("food").equals("onion") || food.get("food").equals("garlic")) {
                theirs.add("peel"); // "Stem ends, sprouts and defects", "Knob and skin": nobody eats the dry skin of
                // either
            }
            if (!mine.equals(theirs)) {
                differences.put(food.get("food"), mine + " but the source says " + source.get("REFUSE_DESC"));
            }
        }
        assertThat(differences).isEmpty();
        assertThat(compared).isGreaterThan(70);
    }

    @Test
    void every_refuse_is_the_source_s_or_said_to_be_another() {
        List<String> differences = new ArrayList<>();
        for (CSVRecord food : CATALOGUE) {
            CSVRecord source = SR28.get(food.get("usda_ndb"));
            if (source != null && !source.get("REFUSE").equals(food.get("REFUSE"))) {
                differences.add(food.get("food"));
            }
            boolean named = !food.get("taken_off").isEmpty();
            if (named != (new BigDecimal("0" + effective(food)).signum() > 0)) {
                differences.add(food.get("food") + " throws away what it does not name");
            }
        }
        assertThat(differences).isEmpty();
    }

    /**
     * SR28 05096, raw thigh, meat only: "Skin and separable fat 25%", with no bone, of a thigh that has none. 05691, raw thigh, meat
     * and skin: "Bone and cartilage 15%". So of a thigh with both (1 - 0.15) x (1 - 0.25) = 64 % is meat. A second way, from SR28
     * WEIGHT: a thigh of 193 g with skin and without bone is one of 149 g without skin, so 0.85 x 149 / 193 = 66 %.
     */
    @Test
    void a_thigh_is_counted_without_bone_and_skin() {
        assertThat(described("05096")).contains("Skin and separable fat 25%").doesNotContain("Bone");
        assertThat(described("05691")).contains("Bone and cartilage 15%");
        double meat = 100 - Double.parseDouble(effective(food("chicken_thigh")));

        assertThat(meat).isCloseTo(100 * 0.85 * 0.75, org.assertj.core.data.Offset.offset(0.5));
        assertThat(meat).isCloseTo(100 * 0.85 * 149 / 193, org.assertj.core.data.Offset.offset(2.0));
        assertThat(food("chicken_thigh").get("taken_off")).isEqualTo("bone skin");
    }

    /** SR28 11352 is "flesh and skin", and its 25 % "Parings and trimmings": who eats the skin throws none of it away. */
    @Test
    void potatoes_are_eaten_with_their_skin() {
        assertThat(described("11352")).isEqualTo("Parings and trimmings");
        assertThat(food("potato").get("usda_description")).contains("flesh and skin");
        assertThat(List.of("potato", "sweet_potato"))
                .allMatch(id -> effective(food(id)).equals("0"));
    }

    private static String described(String ndb) {
        return Optional.ofNullable(SR28.get(ndb)).orElseThrow().get("REFUSE_DESC");
    }

    private static CSVRecord food(String id) {
        return CATALOGUE.stream()
                .filter(food -> food.get("food").equals(id))
                .findFirst()
                .orElseThrow();
    }
}
