package batchwright.cli;

import batchwright.answer.Fault;
import batchwright.report.print.Page;
import batchwright.report.print.Wrapped;
import batchwright.text.Problem;
import java.util.List;
import java.util.function.Consumer;

/** Asks somebody at the keyboard, line by line. */
final class Asking {
    private final Input input;
    private final Consumer<String> say;

    /** The user wants no more. */
    static final class Quit extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    Asking(Input input, Consumer<String> say) {
        this.input = input;
        this.say = say;
    }

    /**
     * The answer without surrounding blanks; empty when only Enter was pressed.
     *
     * @throws Quit when the user types quit, or no more is typed
     */
    String ask(String question) {
        say.accept("\n" + Wrapped.lines(question) + "> ");
        String answer = input.line().orElseThrow(Quit::new).strip();
        if (answer.equals("quit")) {
            throw new Quit();
        }
        return answer;
    }

    void say(String text) {
        say.accept(Wrapped.lines(text));
    }

    void gap() {
        say.accept("\n");
    }

    /** A line of a list, with its number. */
    void item(int number, String text) {
        say.accept(new Page(Page.WIDTH)
                .paragraph("  %2s  ".formatted(number), "      ", text)
                .toString());
    }

    /** The first problem, in the words used for a mistake in a profile. */
    void explain(List<Problem> wrong) {
        wrong.stream().limit(1).map(Fault::of).forEach(this::explain);
    }

    void explain(Fault fault) {
        say(fault.wrong());
        say(fault.cure());
    }
}
