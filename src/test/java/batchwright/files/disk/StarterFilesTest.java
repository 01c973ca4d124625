package batchwright.files.disk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.files.FoundIn;
import batchwright.files.KitchenReader;
import batchwright.files.profile.EaterReader;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import batchwright.text.NearestName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files that travel with the program are right, and are found wherever the program runs from. */
class StarterFilesTest {
    private static final StarterFiles STARTER = new StarterFiles();

    @Test
    void nothing_is_wrong_with_them() {
        assertThat(FilesInMemory.starter().problems()).isEmpty();
    }

    @Test
    void a_folder_and_the_jar_hold_the_same() {
        var folder = new FolderFiles(Path.of(""));
        assertThat(FoundIn.there(STARTER.list("foods/dishes")))
                .isEqualTo(FoundIn.there(folder.list("foods/dishes")))
                .hasSizeGreaterThan(5);
        assertThat(FoundIn.paths(STARTER.list("foods")))
                .contains("foods/catalogue.csv")
                .contains("foods/dishes");
        for (String path : STARTER.paths()) {
            assertThat(FoundIn.there(STARTER.read(path)).lines())
                    .as(path)
                    .isEqualTo(FoundIn.there(folder.read(path)).lines());
        }
    }

    @Test
    void they_are_found_inside_a_jar(@TempDir Path folder) throws Exception {
        Path jar = folder.resolve("a b.jar");
        try (var out = new JarOutputStream(Files.newOutputStream(jar))) {
            for (String name : List.of("batchwright/files/", "starter/")) {
                copy(Path.of("target/classes"), name, out);
            }
        }
        try (var loader = new java.net.URLClassLoader(
                new java.net.URL[] {jar.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            Class<?> type = loader.loadClass("batchwright.files.disk.StarterFiles");
            Object starter = type.getConstructor().newInstance();
            assertThat(type.getMethod("paths").invoke(starter)).isEqualTo(STARTER.paths());
        }
    }

    private static void copy(Path root, String prefix, JarOutputStream out) throws IOException {
        try (var files = Files.walk(root.resolve(prefix))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                out.putNextEntry(new ZipEntry(root.relativize(file).toString().replace('\\', '/')));
                out.write(Files.readAllBytes(file));
            }
        }
    }

    /** Values of USDA SR28 for NDB 20044 (white rice, raw); the published row is in the reference table of the tests. */
    @Test
    void a_food_is_what_its_row_says() {
        Food rice = food("white_rice");
        assertThat(rice.per100g().get(Nutrient.ENERGY)).isEqualByComparingTo("365");
        assertThat(rice.per100g().get(Nutrient.PROTEIN)).isEqualByComparingTo("7.13");
        assertThat(rice.per100g().get(Nutrient.FRUIT_VEG)).isEqualByComparingTo("0");
        assertThat(food("banana").per100g().get(Nutrient.FRUIT_VEG)).isEqualByComparingTo("100");
        assertThat(food("banana").refusePercent()).isEqualByComparingTo("36");
        assertThat(food("almonds").refusePercent()).as("sold shelled").isEqualByComparingTo("0");
        assertThat(food("quinoa").per100g().isComplete(Nutrient.SUGAR))
                .as("an empty cell")
                .isFalse();
        assertThat(food("quinoa").per100g().isComplete(Nutrient.FAT)).isTrue();
    }

    @Test
    void portions_are_multiples_of_their_step() {
        assertThat(kitchen().dishes().values())
                .flatExtracting(dish -> dish.parts())
                .allSatisfy(part -> {
                    assertThat(part.leastGrams() % part.stepGrams()).isZero();
                    assertThat(part.mostGrams() % part.stepGrams()).isZero();
                    assertThat(part.pieces() || part.stepGrams() == Part.SCALE_STEP_GRAMS)
                            .isTrue();
                });
    }

    @Test
    void the_three_eaters_are_as_their_files_say() {
        Eater lifter = eater("lifter-gaining");
        assertThat(lifter.goal()).isEqualTo(new Goal.PercentAWeek(0.25));
        assertThat(lifter.body().bodyFat()).isPresent();
        assertThat(lifter.wishes().containersADay()).isEqualTo(3);
        Eater desk = eater("desk-cutting");
        assertThat(desk.activity().pal()).isEqualTo(1.55);
        assertThat(desk.body().bodyFat()).isPresent();
        Eater parent = eater("parent-holding");
        assertThat(parent.goal()).isEqualTo(Goal.HOLD);
        assertThat(parent.body().bodyFat()).as("not measured").isEmpty();
        assertThat(parent.wishes().avoidAllergens()).hasSize(1);
        assertThat(parent.wishes().always()).hasSize(1);
        assertThat(List.of(lifter, desk, parent)).allSatisfy(eater -> {
            assertThat(HealthQuestion.all())
                    .filteredOn(question -> question.concerns(eater.body().sex()))
                    .allMatch(question -> eater.health().answer(question) == Answer.NO);
        });
    }

    /** Unless another food is as near: ground_beef_9 may be either of two. */
    @Test
    void a_slip_in_the_name_of_any_food_is_answered_with_that_name() {
        var names = kitchen().foods().keySet();
        var wrong = new ArrayList<String>();
        for (String name : names) {
            for (String typed : slips(name)) {
                Optional<String> answer = NearestName.of(typed, names);
                if (!names.contains(typed) && !answer.equals(Optional.of(name)) && !isOneSlip(typed, answer)) {
                    wrong.add(typed + " for " + name + ": " + answer);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static boolean isOneSlip(String typed, Optional<String> answer) {
        return answer.stream().flatMap(name -> slips(name).stream()).anyMatch(typed::equals);
    }

    /** A letter left out, doubled, swapped with the next, or mistaken for a letter that no name holds. */
    private static List<String> slips(String name) {
        var slips = new ArrayList<String>();
        for (int i = 0; i < name.length(); i++) {
            slips.add(name.substring(0, i) + name.substring(i + 1));
            slips.add(name.substring(0, i) + name.charAt(i) + name.substring(i));
            slips.add(name.substring(0, i) + '7' + name.substring(i + 1));
            if (i > 0) {
                slips.add(name.substring(0, i - 1) + name.charAt(i) + name.charAt(i - 1) + name.substring(i + 1));
            }
        }
        return slips;
    }

    private static Kitchen kitchen() {
        return KitchenReader.read(STARTER, FilesInMemory.DAY).value().orElseThrow();
    }

    private static Food food(String id) {
        return Optional.ofNullable(kitchen().foods().get(id)).orElseThrow();
    }

    private static Eater eater(String id) {
        return EaterReader.read(STARTER, "profiles/" + id + ".yaml", Optional.of(kitchen()))
                .value()
                .orElseThrow();
    }
}
