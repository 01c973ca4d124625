package batchwright.app.book;

import batchwright.app.LearnedTarget;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.Event;
import batchwright.book.LoggedDay;
import batchwright.needs.learning.TargetStep;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.DayMark;
import batchwright.needs.weighing.WeighedDay;
import java.util.List;
import java.util.stream.Collectors;

/** What the book says of an eater's weight and food, as far as it has happened; and the line that adopts a step. */
public final class WeighingsInBook implements LearnedTarget.Records {
    private final Workspace workspace;

    public WeighingsInBook(Workspace workspace) {
        this.workspace = workspace;
    }

    @Override
    public List<WeighedDay> days(String eater) {
        return LoggedDay.of(book(), eater).stream().map(WeighingsInBook::day).toList();
    }

    @Override
    public List<TargetStep> adopted(String eater) {
        return book().all(Event.Adopted.class)
                .filter(line -> line.event().eater().equals(eater))
                .map(line -> new TargetStep(line.day(), line.event().kcal().doubleValue()))
                .toList();
    }

    @Override
    public void adopt(String eater, TargetStep step) {
        new WriteInBook(workspace, workspace.kitchen(), false)
                .add("adopted " + eater + " " + Math.round(step.holdsKcal()) + " kcal", step.date());
    }

    private Book book() {
        return workspace.book().until(workspace.cookingDay());
    }

    private static WeighedDay day(LoggedDay logged) {
        return new WeighedDay(
                logged.day(),
                logged.kg(),
                new DayIntake(logged.plannedKcal(), logged.unplannedKcal(), logged.complete()),
                logged.marks().stream().map(WeighingsInBook::mark).collect(Collectors.toSet()));
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
}
