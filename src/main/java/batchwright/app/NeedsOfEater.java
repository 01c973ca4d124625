package batchwright.app;

import batchwright.app.book.WeighingsInBook;
import batchwright.book.Event;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetStep;
import batchwright.person.Eater;
import java.util.Optional;

/** How much should this eater eat? */
public final class NeedsOfEater {
    private NeedsOfEater() {}

    /** @throws Refused when the answers do not make an eater */
    public static Needs answer(ProfileAnswers answers) {
        return NeedsCalculator.needsOf(answers.eater());
    }

    /** What the eater's own weighings say; empty when nothing was weighed, or needs refuse a target. */
    public static Optional<Learned> learned(Workspace workspace, String eater) {
        return workspace.book().all(Event.Weighed.class).findAny().isEmpty()
                ? Optional.empty()
                : target(workspace).answer(written(workspace, eater));
    }

    /**
     * Takes the step that is offered and writes it down.
     *
     * @throws Refused when none is
     */
    public static TargetStep adopt(Workspace workspace, String eater) {
        return target(workspace).adopt(written(workspace, eater));
    }

    private static LearnedTarget target(Workspace workspace) {
        return new LearnedTarget(new WeighingsInBook(workspace), workspace.cookingDay());
    }

    private static Eater written(Workspace workspace, String eater) {
        return new Eaters(workspace, workspace.kitchen()).asWritten(eater);
    }

    /** @throws Refused when there is no such eater, or a file has an error */
    public static Needs answer(Workspace workspace, String eater) {
        return NeedsCalculator.needsOf(new Eaters(workspace, workspace.kitchen()).one(eater));
    }
}
