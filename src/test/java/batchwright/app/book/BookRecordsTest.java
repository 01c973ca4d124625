package batchwright.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.needs.learning.TargetStep;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.DayMark;
import batchwright.needs.weighing.WeighedDay;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is learnt from goes through here: the book's words, as the figures of the filter. */
class BookRecordsTest {
    private static final String EATER = "lifter-gaining";
    private static final LocalDate DAY = LocalDate.of(2026, 11, 29);

    @TempDir
    Path here;

    private BookRecords records() {
        Workspace workspace = Workspace.open(Optional.of(here), here, DAY.plusDays(1), note -> {});
        return new BookRecords(workspace, workspace.kitchen());
    }

    @Test
    void days_as_the_book_has_them() throws IOException {
        new WriteStarterFiles().into(here);
        Files.writeString(
                here.resolve("profiles/book.txt"),
                """
                # batchwright book 1
                2026-11-29 weighed lifter-gaining 74.2 kg
                2026-11-29 ate lifter-gaining 2 lentil_ragu, 1280 kcal
                2026-11-29 ate lifter-gaining out 900 kcal
                2026-11-29 ate lifter-gaining nothing else
                2026-11-30 creatine lifter-gaining
                2026-12-24 weighed lifter-gaining 75 kg
                """);

        assertThat(records().days(EATER))
                .containsExactly(
                        new WeighedDay(DAY, OptionalDouble.of(74.2), new DayIntake(1280, 900, true), Set.of()),
                        new WeighedDay(
                                DAY.plusDays(1),
                                OptionalDouble.empty(),
                                new DayIntake(0, 0, false),
                                Set.of(DayMark.CREATINE_STARTED)));
    }

    @Test
    void what_is_adopted_is_one_line() throws IOException {
        new WriteStarterFiles().into(here);

        records().adopt(EATER, new TargetStep(DAY, 3149.6));

        assertThat(records().adopted(EATER)).containsExactly(new TargetStep(DAY, 3150));
        assertThat(Files.readString(here.resolve("profiles/book.txt"))).endsWith("2026-11-29 adopted lifter-gaining 3150 kcal\n");
    }
}
