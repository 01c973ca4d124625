package batchwright.page.desk;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.profile.ChangePage;
import batchwright.app.profile.WriteSliders;
import batchwright.page.Visit;
import java.util.ArrayList;
import java.util.List;

/** What was moved of the eaters at the desk goes into their profiles, when that is asked for. */
final class MovesWritten {
    private MovesWritten() {}

    /** @param back the page that says what was written */
    static void write(Visit visit, DeskWish wish, String back) {
        if (!wish.troubles().isEmpty()) {
            throw Refused.because("something that was moved is no figure of a profile", "Go back and change it first.");
        }
        Workspace workspace = visit.workspace();
        List<String> said = new ArrayList<>();
        for (String eater : wish.eaters()) {
            var moved = wish.changedOf(eater).sliders();
            if (!WriteSliders.lines(moved).isEmpty()) {
                said.add(says(new WriteSliders(workspace).into(eater, moved)));
            }
        }
        visit.go(back, said.isEmpty() ? "Nothing of an eater was moved." : String.join(" ", said));
    }

    private static String says(ChangePage.Went went) {
        return went.inPlace()
                ? "Written into " + went.path() + "."
                : "The profile has a form that cannot surely be changed: the lines to put in are in " + went.path()
                        + ".";
    }
}
