package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.hazard.Hazard;
import batchwright.person.HealthGroup;
import batchwright.person.HealthQuestion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No caution is forgotten in docs/science.md, and no question of health in docs/adding-an-eater.md and the starter profiles. */
class CautionsInPagesTest {
    private static final Pattern CODE = Pattern.compile("Caution\\s*(?:\\.(?:stop|hide|warn))?\\(\\s*\"([a-z0-9_]+)");

    @Test
    void science_lists_every_code() throws IOException {
        Set<String> codes = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/batchwright"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                CODE.matcher(Files.readString(file)).results().forEach(match -> codes.add(match.group(1)));
            }
        }
        Files.readAllLines(Path.of("src/main/resources/batchwright/needs/safety/reasons.csv")).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .forEach(line -> codes.add(line.substring(0, line.indexOf(','))));
        Hazard.all().stream()
                .filter(hazard -> hazard.kind() != Hazard.Kind.BLOCK)
                .forEach(hazard -> codes.add(hazard.code()));
        String page = Files.readString(Path.of("docs/science.md"));

        assertThat(codes).hasSizeGreaterThan(30).contains("under_18", "low_energy_availability", "rice");
        assertThat(codes).filteredOn(code -> !page.contains("`" + code)).isEmpty();
    }

    @Test
    void every_question_is_in_the_page_and_every_group_in_the_starter_profiles() throws IOException {
        String page = Files.readString(Path.of("docs/adding-an-eater.md"));
        String profile = Files.readString(Path.of("profiles/desk-cutting.yaml"));
        assertThat(HealthQuestion.all())
                .filteredOn(question -> !page.contains("`" + question.key() + "`"))
                .isEmpty();
        assertThat(HealthGroup.all())
                .allMatch(group -> page.contains("`" + group.key() + "`"))
                .allMatch(group -> profile.contains("\n  " + group.key() + ": no"));
    }
}
