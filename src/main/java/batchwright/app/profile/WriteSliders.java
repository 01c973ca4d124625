package batchwright.app.profile;

import batchwright.app.Workspace;
import batchwright.app.desk.EaterSliders;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What was moved at a desk, as lines of the profile: from then on it holds for every plan. */
public final class WriteSliders {
    private final Workspace workspace;

    public WriteSliders(Workspace workspace) {
        this.workspace = workspace;
    }

    /** @throws batchwright.app.Refused when the profile would not be right with it, or cannot be written */
    public ChangePage.Went into(String eater, EaterSliders moved) {
        return new ChangePage(workspace).profile(eater, lines(moved));
    }

    /** None when nothing was moved. */
    public static List<KeyChange> lines(EaterSliders moved) {
        List<KeyChange> lines = new ArrayList<>();
        moved.goalKcal().ifPresent(kcal -> lines.add(KeyChange.text("goal", goal(kcal))));
        moved.energyBandPercent()
                .ifPresent(band -> lines.add(KeyChange.text("target.energy_band", plain(band) + " %")));
        moved.proteinGPerKg()
                .ifPresent(grams -> lines.add(KeyChange.text("target.protein", plain(grams) + " g per kg")));
        moved.containersADay()
                .ifPresent(boxes -> lines.add(KeyChange.text("containers_a_day", Integer.toString(boxes))));
        moved.snacks()
                .ifPresent(foods -> lines.add(
                        KeyChange.list("snacks.only", foods.stream().sorted().toList())));
        return lines;
    }

    private static String goal(int kcal) {
        return kcal == 0 ? "hold" : (kcal > 0 ? "gain " : "lose ") + Math.abs(kcal) + " kcal a day";
    }

    private static String plain(double figure) {
        return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
    }
}
