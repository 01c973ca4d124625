package batchwright.app;

import batchwright.text.Problem;
import java.util.List;

/** Checks the files: reads every file of the workspace and names every problem. */
public final class CheckFiles {
    private CheckFiles() {}

    /** Errors and warnings, file by file; empty when all is right. */
    public static List<Problem> answer(Workspace workspace) {
        return workspace.source().check(workspace.cookingDay());
    }
}
