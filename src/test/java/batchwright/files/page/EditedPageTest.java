package batchwright.files.page;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A key is changed, added or taken out and nothing else: what the page says is loaded by the YAML library itself (an outside reader of
 * whole documents, which the program does not use), lines are compared by their text.
 */
class EditedPageTest {
    private static final List<String> VALUES = List.of(
            "hold", "163 lb", "lose 0.5 % a week", "a: b # c", "it's", "\"so\"", "", "back\\slash", "Zoë", "- x");

    static Stream<Path> pages() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String folder : List.of("profiles", "foods", "foods/dishes")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(all::add);
            }
        }
        return all.stream();
    }

    /** Every top-level key of each page of the starter files, with every line end that systems have. */
    @ParameterizedTest
    @MethodSource("pages")
    void every_key_of_every_starter_page(Path file) throws IOException {
        String read = Files.readString(file);
        int wanted = 0;
        int done = 0;
        for (String text : List.of(read, read.replace("\n", "\r\n"), read.stripTrailing())) {
            for (String key : new TreeMap<>(loaded(text)).keySet()) {
                var random = new Random(key.hashCode());
                String value = VALUES.get(random.nextInt(VALUES.size()));
                wanted++;
                Optional<String> edited = new EditedPage(text).with(key, value);
                edited.ifPresent(after -> isOnly(text, after, key, Optional.of(value)));
                done += edited.isPresent() ? 1 : 0;
                new EditedPage(text).without(key).ifPresent(after -> isOnly(text, after, key, Optional.empty()));
            }
            String added = new EditedPage(text).with("a_new_key", "x y").orElseThrow();
            isOnly(text, added, "a_new_key", Optional.of("x y"));
            assertThat(added).contains(text.stripTrailing());
        }
        assertThat(done).as("left alone: values of several lines with comments").isGreaterThan(wanted / 2);
    }

    private static void isOnly(String before, String after, String key, Optional<String> value) {
        Map<String, Object> expected = new TreeMap<>(loaded(before));
        value.ifPresentOrElse(v -> expected.put(key, v), () -> expected.remove(key));
        assertThat(new TreeMap<>(loaded(after))).isEqualTo(expected);
        List<String> kept = new ArrayList<>(after.lines().toList());
        kept.removeIf(line -> line.startsWith(key + ":"));
        List<String> old = before.lines().toList();
        assertThat(old).containsSubsequence(kept);
        assertThat(old.stream().filter(line -> line.startsWith("#")).toList())
                .isEqualTo(after.lines().filter(line -> line.startsWith("#")).toList());
    }

    /** Every scalar as text, as the program reads pages. */
    @SuppressWarnings("unchecked")
    private static Map<String, Object> loaded(String text) {
        var settings = LoadSettings.builder()
                .setSchema(new org.snakeyaml.engine.v2.schema.FailsafeSchema())
                .build();
        Object page = new Load(settings).loadFromString(text);
        return page == null ? Map.of() : (Map<String, Object>) page;
    }

    @Test
    void a_comment_behind_the_value_stays_where_it_is() {
        assertThat(new EditedPage("weight: 74 kg              # or in pounds\nage: 27\n").with("weight", "163.5 lb"))
                .contains("weight: 163.5 lb           # or in pounds\nage: 27\n");
        assertThat(new EditedPage("avoid: [\"a # b\", egg] # mine\n").with("avoid", List.of("peanut", "no pork")))
                .contains("avoid: [peanut, no pork] # mine\n");
        assertThat(new EditedPage("goal:   # later\n").with("goal", "hold")).contains("goal: hold # later\n");
    }

    @Test
    void a_key_of_a_group() {
        String page = "a: 1\nsnacks:\n  only: [x]   # why\n  kinds_a_day: 3\n\n# end\nb: 2\n";
        assertThat(new EditedPage(page).with("snacks.only", List.of("y", "z")))
                .contains(page.replace("[x]   #", "[y, z] #"));
        assertThat(new EditedPage(page).with("snacks.any_together", "yes"))
                .contains(page.replace("kinds_a_day: 3\n", "kinds_a_day: 3\n  any_together: yes\n"));
        assertThat(new EditedPage(page).without("snacks.only")).contains(page.replace("  only: [x]   # why\n", ""));
        assertThat(new EditedPage("a: 1\ng:\n  k: 2\nb: 3\n").without("g.k")).contains("a: 1\nb: 3\n");
        assertThat(new EditedPage("a: 1").with("g.k", "2")).contains("a: 1\ng:\n  k: 2");
    }

    @Test
    void values_of_several_lines() {
        assertThat(new EditedPage("avoid:\n- egg\n- milk\ngoal: hold\n").with("avoid", List.of("soy")))
                .contains("avoid: [soy]\ngoal: hold\n");
        assertThat(new EditedPage("name: \"a\n  b\"\ngoal: hold\n").with("name", "c"))
                .contains("name: c\ngoal: hold\n");
        assertThat(new EditedPage("avoid:\n  - egg # allergic\ngoal: hold\n").with("avoid", List.of("soy")))
                .as("the comment would be lost")
                .isEmpty();
    }

    @Test
    void a_page_of_comments_takes_lines() {
        assertThat(new EditedPage("# burners: 4\n").with("burners", "2")).contains("# burners: 4\nburners: 2\n");
        assertThat(new EditedPage("").with("burners", "2")).contains("burners: 2\n");
        assertThat(new EditedPage("# one\nburners: 2\n").without("burners")).contains("# one\n");
        assertThat(new EditedPage("# one\n").without("burners")).contains("# one\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{goal: hold, age: 3}\n",
                "goal: &a hold\nage: *a\n",
                "- goal\n",
                "goal: \"open\n",
                "goal: hold\n---\nage: 3\n",
                "goal: hold\n...\n",
                "? goal\n: hold\n"
            })
    void what_cannot_surely_be_done_is_not(String page) {
        new EditedPage(page).with("goal", "lose 1 kg").ifPresent(after -> isOnlyValue(page, after));
        new EditedPage(page).with("new", "1").ifPresent(after -> isOnlyValue(page, after));
    }

    /** Where it is done after all, it is right. */
    private static void isOnlyValue(String before, String after) {
        var problems = new Problems();
        assertThat(YamlPage.read(SourceFile.of("page", after), problems)).isPresent();
        assertThat(problems.errors()).isZero();
        assertThat(loaded(after).keySet()).containsAll(loaded(before).keySet());
    }

    @Test
    void a_value_of_two_lines_and_a_key_that_is_there_twice_are_refused() {
        assertThat(new EditedPage("goal: hold\n").with("goal", "a\nb: c")).isEmpty();
        assertThat(new EditedPage("goal: hold\ngoal: gain\n").with("goal", "x")).isEmpty();
    }
}
