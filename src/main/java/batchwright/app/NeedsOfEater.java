package batchwright.app;

import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;

/** How much should this eater eat? */
public final class NeedsOfEater {
    private NeedsOfEater() {}

    /** @throws Refused when the answers do not make an eater */
    public static Needs answer(ProfileAnswers answers) {
        return NeedsCalculator.needsOf(answers.eater());
    }

    /** @throws Refused when there is no such eater, or a file has an error */
    public static Needs answer(Workspace workspace, String eater) {
        return NeedsCalculator.needsOf(new Eaters(workspace, workspace.kitchen()).one(eater));
    }
}
