package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Requests without a plan, most of them for two causes at once: whatever is printed after "Try:" is followed, each piece of advice by
 * itself, and has to lead to a plan. A kitchen of a few starter dishes; what is asked for is made up.
 */
class CuresWalkTest {
    /** -Dbatchwright.cures=12 asks all of them. */
    private static final int REQUESTS = Integer.getInteger("batchwright.cures", 6);

    private static final int COLUMNS = 80;
    private static final String LIFTER = "profiles/lifter-gaining.yaml";
    private static final String PARENT = "profiles/parent-holding.yaml";

    @TempDir
    Path temp;

    private int folders;

    /** One change of a file. */
    private record Edit(String file, String old, String other) {}

    /**
     * A request without a plan.
     *
     * @param command what follows the program's name
     * @param says what the text has to say besides
     * @param least so many ways out, at least
     */
    private record Asked(String name, String command, List<Edit> edits, List<String> says, int least) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Edit target(String file, String lines) {
        return new Edit(
                file, "\ncontainers_a_day", "\ntarget:\n  " + lines.replace("; ", "\n  ") + "\n\ncontainers_a_day");
    }

    private static Edit lifter(String old, String other) {
        return new Edit(LIFTER, old, other);
    }

    static Stream<Asked> asked() {
        String alone = "plan lifter-gaining --days 3";
        String both = "plan lifter-gaining parent-holding --days 3";
        return Stream.of(
                        new Asked(
                                "what is always eaten is not sold",
                                "plan parent-holding --days 3",
                                List.of(new Edit(
                                        PARENT, "1 cup low_fat_milk", "1 cup low_fat_milk\n  - 1 cup orange_juice")),
                                List.of("neither at home nor sold"),
                                0),
                        new Asked(
                                "a part that holds what is avoided",
                                alone,
                                List.of(lifter("avoid: []", "avoid: [wheat, oats]")),
                                List.of("without its flatbread"),
                                1),
                        new Asked(
                                "minutes and dishes",
                                alone + " --dishes 1 --most-minutes 30",
                                List.of(),
                                List.of("Dish count: at most 1 dish", "Hands-on minutes"),
                                1),
                        new Asked(
                                "one day and a floor",
                                "plan lifter-gaining --days 1",
                                List.of(target(LIFTER, "protein: 3.5 g per kg; fruit_and_vegetables: 1500 g")),
                                List.of("a batch fills at least 2"),
                                1),
                        new Asked(
                                "protein and few containers",
                                alone,
                                List.of(
                                        target(LIFTER, "protein: 3.5 g per kg"),
                                        lifter("containers_a_day: 3 ", "containers_a_day: 1 ")),
                                List.of("Containers a day"),
                                1),
                        new Asked(
                                "avoided food and budget",
                                alone + " --budget 9",
                                List.of(lifter("avoid: []", "avoid: [onion]")),
                                List.of("Avoid: onion never reaches"),
                                1),
                        new Asked(
                                "avoided dishes and a floor",
                                alone,
                                List.of(
                                        lifter("avoid: []", "avoid: [split_pea_dal, peanut_stew]"),
                                        target(LIFTER, "fruit_and_vegetables: 1500 g")),
                                List.of("Fruit and vegetables: each day"),
                                1),
                        new Asked(
                                "no snacks and a narrow band",
                                alone,
                                List.of(
                                        lifter("measures_a_day: 3", "measures_a_day: 0"),
                                        target(LIFTER, "container_weight: 400 g; container_volume: 400 ml")),
                                List.of("Container weight"),
                                1),
                        new Asked(
                                "budget and minutes",
                                alone + " --budget 9 --most-minutes 20",
                                List.of(),
                                List.of("Hands-on minutes"),
                                1),
                        new Asked(
                                "two floors out of reach",
                                alone,
                                List.of(target(LIFTER, "protein: 3.5 g per kg; fruit_and_vegetables: 1500 g")),
                                List.of("Protein floor: each day", "makes a plan possible: -", "; and "),
                                1),
                        new Asked(
                                "one of two eaters",
                                both,
                                List.of(target(PARENT, "fruit_and_vegetables: 1500 g")),
                                List.of("for Parent, holding"),
                                1),
                        new Asked(
                                "each of two eaters",
                                both,
                                List.of(
                                        target(PARENT, "fruit_and_vegetables: 1500 g"),
                                        target(LIFTER, "fruit_and_vegetables: 1500 g")),
                                List.of("for Parent, holding:", "for Lifter, gaining:", "makes a plan possible: -"),
                                1))
                .limit(REQUESTS);
    }

    @ParameterizedTest
    @MethodSource("asked")
    void what_is_advised_leads_to_a_plan(Asked asked) throws IOException {
        Path here = folder(asked);

        Cli.Result text = run(here, asked, List.of());
        JsonNode json = Shape.parse(run(here, asked, List.of("--json")).out());
        List<String> tries = tries(json);

        assertThat(text.code()).isEqualTo(3);
        assertThat(text.out().lines()).allMatch(line -> line.length() <= COLUMNS);
        assertThat(text.flat()).contains(asked.says());
        assertThat(json.get("clashes"))
                .allSatisfy(clash -> assertThat(text.flat())
                        .contains(
                                clash.get("says").textValue(), clash.get("cure").textValue()));
        assertThat(tries).hasSizeGreaterThanOrEqualTo(asked.least());
        assertThat(text.out().split("Try: ", -1)).hasSize(tries.size() + 1);
        for (String tried : tries) {
            Path changed = folder(asked);
            List<String> options = new Advice(changed).follow(tried);
            assertThat(run(changed, asked, options).code()).as(tried).isZero();
        }
    }

    /** Of each rule by itself, and of several together. */
    private static List<String> tries(JsonNode json) {
        List<String> tries = new ArrayList<>();
        json.get("clashes").forEach(clash -> tries.add(clash.get("try").textValue()));
        for (JsonNode together : json.get("cures_together")) {
            List<String> each = new ArrayList<>();
            together.forEach(change -> each.add(change.get("try").textValue()));
            tries.add(String.join("; and ", each));
        }
        tries.removeIf(String::isEmpty);
        return tries;
    }

    /** An option that is given anew replaces the one before it. */
    private static Cli.Result run(Path here, Asked asked, List<String> options) {
        List<String> args = new ArrayList<>(List.of(asked.command().split(" ")));
        for (int i = 0; i < options.size(); i++) {
            int before = args.indexOf(options.get(i));
            if (before > 0) {
                args.remove(before);
                args.remove(before);
            }
        }
        args.addAll(options);
        args.addAll(List.of("--seconds", "300"));
        return Cli.in(here).run(args.toArray(String[]::new));
    }

    private Path folder(Asked asked) throws IOException {
        Path here = Folders.starter(temp.resolve("kitchen" + folders++));
        Folders.keepDishes(here, "beef_goulash", "peanut_stew", "split_pea_dal", "baked_oats");
        for (Edit edit : asked.edits()) {
            Folders.replace(here.resolve(edit.file()), edit.old(), edit.other());
        }
        return here;
    }
}
