package batchwright.cli.book;

import batchwright.answer.Today;
import batchwright.app.book.TodayInKitchen;
import batchwright.cli.Batchwright;
import batchwright.report.book.TodayJson;
import batchwright.report.book.TodayText;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** today */
@Command(
        name = "today",
        header = "What to eat, thaw, use up, freeze and cook today.",
        customSynopsis = "today [--date DATE] [OPTIONS]",
        description = "By the plan that was kept (plan --keep) and by the book.",
        footer = {"  java -jar target/batchwright.jar today", "  java -jar target/batchwright.jar today --json"})
public final class TodayCommand implements Callable<Integer> {
    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Override
    public Integer call() {
        Today today = TodayInKitchen.answer(program.workspace());
        return program.answer(program.isJson() ? TodayJson.of(today) : TodayText.of(today, program.commands()));
    }
}
