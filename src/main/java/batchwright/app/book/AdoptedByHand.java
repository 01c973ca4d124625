package batchwright.app.book;

import batchwright.app.NeedsOfEater;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Event;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import java.util.Optional;

/** A step that is typed is held to the limits of one that is offered. */
final class AdoptedByHand {
    private AdoptedByHand() {}

    /** @throws Refused when no step is offered, or another one */
    static void check(Workspace workspace, Event.Adopted typed) {
        Optional<TargetAdvice> advice =
                NeedsOfEater.learned(workspace, typed.eater()).map(Learned::advice);
        if (advice.isEmpty()) {
            throw unsure("nothing in the book says that %s needs another target".formatted(typed.eater()), "");
        }
        if (advice.get() instanceof TargetAdvice.Offer offer) {
            long offered = Math.round(offer.holdsKcal());
            if (Math.round(typed.kcal().doubleValue()) != offered) {
                throw unsure(
                        "the step that is offered to %s is to %s kcal".formatted(typed.eater(), offered),
                        "A step is small, so that weight can answer it before the next one. ");
            }
        } else {
            String why = advice.get() instanceof TargetAdvice.Wait wait ? wait.says() + " " : "";
            throw unsure("no step is offered to %s now".formatted(typed.eater()), why);
        }
    }

    private static Refused unsure(String wrong, String why) {
        return Refused.because(wrong, why + "Nothing was written. If it is right, say that you are sure.");
    }
}
