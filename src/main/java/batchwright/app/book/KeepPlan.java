package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Entry;
import batchwright.files.book.BookReader;
import batchwright.files.disk.FolderFiles;
import batchwright.report.plan.KeptPlanJson;
import batchwright.write.CannotWrite;
import batchwright.write.NewFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Keeps a plan beside the book, by its cooking day. A plan that is there stays; the one that is kept last holds. */
public final class KeepPlan {
    private static final int MOST = 999;

    private final FolderFiles folder;
    private final List<String> there;
    private final int bookLine;

    /** @throws Refused when there is no kitchen that may be written into */
    public KeepPlan(Workspace workspace) {
        this.folder = workspace.ownFolder("so no plan can be kept");
        this.there = workspace.value(workspace.source().keptPlans()).stream()
                .map(file -> file.path().substring(file.path().lastIndexOf('/') + 1))
                .toList();
        this.bookLine =
                workspace.on(LocalDate.MAX).book().last().map(Entry::line).orElse(0);
    }

    /**
     * Finds out before the search what would come to light only after it.
     *
     * @throws Refused when the plan could not be kept
     */
    public void tryOut(LocalDate cookingDay) {
        try {
            new NewFile(file(cookingDay)).tryOut();
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    /**
     * @param json the plan
     * @return where it is kept
     */
    public String keep(LocalDate cookingDay, String json) {
        try {
            new NewFile(file(cookingDay)).write(KeptPlanJson.withBookLine(json, bookLine));
            return folder.shown(path(cookingDay));
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private Path file(LocalDate cookingDay) {
        return folder.path(path(cookingDay));
    }

    private String path(LocalDate cookingDay) {
        for (int number = 1; number <= MOST; number++) {
            String name = cookingDay + (number == 1 ? "" : "-" + number) + ".json";
            if (!there.contains(name)) {
                return BookReader.PLANS + "/" + name;
            }
        }
        throw Refused.because(
                "more than " + MOST + " plans are kept for " + cookingDay, "Delete some in " + BookReader.PLANS + ".");
    }
}
