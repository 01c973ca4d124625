package batchwright.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.report.html.Reports;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Commands;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The first 25 lines, the height of a small terminal, say how much, what to cook, what it costs and what to do next. */
class FirstScreenTest {
    private static final int SCREEN = 25;
    private static final List<String> ORDER = List.of("EAT ", "COOK ", "PAY ", "NEXT ", "BELOW ");

    @TempDir
    Path folder;

    private static List<String> lines(PlanAnswer answer, int width) {
        return PlanText.of(answer, new Commands(""), false, width)
                .lines()
                .limit(SCREEN)
                .toList();
    }

    private static void answersAllFour(List<String> screen) {
        List<String> words = screen.stream()
                .flatMap(line -> ORDER.stream().filter(line::startsWith))
                .toList();
        assertThat(words).as(String.join("\n", screen)).isEqualTo(ORDER);
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 140})
    void two_eaters_two_dishes(int width) {
        List<String> screen = lines(Reports.twoEaters(folder), width);

        answersAllFour(screen);
        assertThat(screen).allMatch(line -> line.length() <= width);
        assertThat(String.join(" ", screen)).contains(" kcal on an average day", "USD", "1. Look at what is at home");
    }

    /** With names of 200 letters what follows them is still seen. */
    @Test
    void however_long_the_names() throws IOException {
        new WriteStarterFiles().into(folder);
        for (String eater : List.of("desk-cutting", "parent-holding")) {
            String name = "name: "
                    + ("Somebody called " + eater + " and so on ").repeat(5).strip();
            Reports.replace(folder.resolve("profiles/" + eater + ".yaml"), "(?m)^name: .*$", name);
        }
        Reports.replace(
                folder.resolve("foods/dishes/lentil_ragu.yaml"), "(?m)^name: .*$", "name: " + "ragu ".repeat(40));
        List<String> screen = lines(
                Reports.plan(
                        folder, List.of("desk-cutting", "parent-holding"), List.of("lentil_ragu", "pepper_eggs"), 1),
                80);

        answersAllFour(screen);
        assertThat(screen.get(0)).startsWith("1 day for 2 eaters: ");
        assertThat(String.join(" ", screen)).contains("kcal on an average", "1. Look at what is at home");
    }
}
