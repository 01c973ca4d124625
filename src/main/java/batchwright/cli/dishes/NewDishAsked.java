package batchwright.cli.dishes;

import batchwright.app.newdish.DishDialogue;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Asks for a dish of one's own at the keyboard, or of the lines of a file. */
public final class NewDishAsked {
    private final DishDialogue dialogue;
    private final Function<String, String> ask;
    private final Consumer<String> say;

    /** @param ask gives the answer to a question */
    public NewDishAsked(DishDialogue dialogue, Function<String, String> ask, Consumer<String> say) {
        this.dialogue = dialogue;
        this.ask = ask;
        this.say = say;
    }

    /** Until it is written; what {@code ask} throws goes through, and nothing is written. */
    public void run() {
        Optional<String> question = dialogue.question();
        while (question.isPresent()) {
            List<String> shown = dialogue.shown();
            if (!shown.isEmpty()) {
                say.accept("");
                shown.forEach(say);
            }
            dialogue.answer(ask.apply(question.get())).forEach(say);
            question = dialogue.question();
        }
    }
}
