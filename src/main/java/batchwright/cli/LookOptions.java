package batchwright.cli;

import batchwright.report.print.Page;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How wide the text of an answer is. */
final class LookOptions {
    private static final int LEAST = 60;
    private static final int MOST = 200;
    /** The most used of a wider terminal, unless more is asked for. */
    private static final int MOST_UNASKED = 140;

    @Option(
            names = "--width",
            paramLabel = "N",
            description = "Columns of the text, 60 to 200; default those of the terminal from 80 to 140, otherwise 80.")
    private @Nullable String width;

    /** @throws batchwright.app.Refused when it is no such number */
    int width(Batchwright program) {
        return width == null
                ? ofTerminal(program.columns())
                : new Given("--width", width).whole(LEAST, MOST, "columns");
    }

    static int ofTerminal(OptionalInt columns) {
        return Math.max(Page.WIDTH, Math.min(MOST_UNASKED, columns.orElse(Page.WIDTH)));
    }
}
