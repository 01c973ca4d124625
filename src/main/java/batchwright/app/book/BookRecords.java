package batchwright.app.book;

import batchwright.app.LearnedTarget;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.Event;
import batchwright.book.LoggedDay;
import batchwright.food.Kitchen;
import batchwright.needs.learning.TargetStep;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.DayMark;
import batchwright.needs.weighing.WeighedDay;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** What the book says of an eater's weight and food, and where a target that is adopted is written. */
public final class BookRecords implements LearnedTarget.Records {
    private final Workspace workspace;
    private final Kitchen kitchen;
    private final Book book;

    /** @throws Refused when the book has an error */
    public BookRecords(Workspace workspace, Kitchen kitchen) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.book = workspace.book();
    }

    @Override
    public List<WeighedDay> days(String eater) {
        return LoggedDay.of(book, eater).stream()
                .map(day -> new WeighedDay(
                        day.day(),
                        day.kg(),
                        new DayIntake(day.plannedKcal(), day.unplannedKcal(), day.complete()),
                        day.marks().stream().map(BookRecords::mark).collect(Collectors.toSet())))
                .toList();
    }

    private static DayMark mark(Event.Mark mark) {
        return switch (mark) {
            case ILL -> DayMark.ILL;
            case TRAVEL -> DayMark.TRAVEL;
            case CREATINE -> DayMark.CREATINE_STARTED;
            case CREATINE_STOPPED -> DayMark.CREATINE_STOPPED;
            case CYCLE -> DayMark.PERIOD_STARTED;
        };
    }

    @Override
    public List<TargetStep> adopted(String eater) {
        return book.all(Event.Adopted.class)
                .filter(line -> line.event().eater().equals(eater))
                .map(line -> new TargetStep(line.day(), line.event().kcal().doubleValue()))
                .toList();
    }

    @Override
    public void adopt(String eater, TargetStep step) {
        BigDecimal kcal = BigDecimal.valueOf(step.holdsKcal()).setScale(0, RoundingMode.HALF_UP);
        new WriteInBook(workspace, kitchen, true).add("adopted %s %s kcal".formatted(eater, kcal), step.date());
    }
}
