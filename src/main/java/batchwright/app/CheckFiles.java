package batchwright.app;

import batchwright.files.KitchenReader;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.Read;
import batchwright.files.profile.EaterReader;
import batchwright.files.shop.PriceDates;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import java.util.ArrayList;
import java.util.List;

/** Are the files right? Reads every file of the workspace and names every problem. */
public final class CheckFiles {
    private CheckFiles() {}

    /** Errors and warnings, file by file; empty when all is right. */
    public static List<Problem> answer(Workspace workspace) {
        Read<Kitchen> kitchen = KitchenReader.read(workspace.files(), workspace.cookingDay());
        List<Problem> problems = new ArrayList<>(kitchen.problems());
        kitchen.value().map(k -> PriceDates.warnings(workspace.files(), k)).ifPresent(problems::addAll);
        for (DataFiles.Entry profile : profiles(workspace.files())) {
            if (profile.path().endsWith(".yaml")) {
                problems.addAll(EaterReader.read(workspace.files(), profile.path(), kitchen.value())
                        .problems());
            }
        }
        return problems;
    }

    /** That the folder cannot be read is among the problems of the kitchen. */
    private static List<DataFiles.Entry> profiles(DataFiles files) {
        return files.list("profiles").match(List::of, entries -> entries, problem -> List.of());
    }
}
