package batchwright.report.labels;

import batchwright.answer.PotLabels;
import batchwright.food.Dish;
import batchwright.plan.Session;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A label ready to be printed. */
public record SetLabel(LabelLook look, List<LabelLine> lines) {
    public SetLabel {
        lines = List.copyOf(lines);
    }

    private record Alike(Dish dish, int eater) {}

    /** A label for each container of a session; those of a dish and eater look alike. */
    public static List<SetLabel> of(Session session, LabelStyle style, Typeface face) {
        return of(ContainerLabel.of(session), session.cookingDay(), session.firstDay(), style, face);
    }

    /** The same of a session that was kept. */
    public static List<SetLabel> of(LabelledSession session, LabelStyle style, Typeface face) {
        return of(session.labels(), session.cookingDay(), session.firstDay(), style, face);
    }

    /** The same of a pot as it came out. */
    public static List<SetLabel> of(PotLabels pot, LabelStyle style, Typeface face) {
        return of(ContainerLabel.of(pot), pot.cookingDay(), pot.firstDay(), style, face);
    }

    private static List<SetLabel> of(
            List<ContainerLabel> all, LocalDate cooked, int firstDay, LabelStyle style, Typeface face) {
        Map<Alike, List<LabelWords>> boxes = new LinkedHashMap<>();
        all.forEach(
                label -> boxes.computeIfAbsent(new Alike(label.dish(), label.eaterNumber()), alike -> new ArrayList<>())
                        .add(new LabelWords(label, style.rounding().rules(), cooked, firstDay, face)));
        LabelFit fit = new LabelFit(style.sheet(), face);
        List<SetLabel> labels = new ArrayList<>();
        for (List<LabelWords> alike : boxes.values()) {
            LabelLook look = fit.look(alike);
            fit.lines(alike, look).forEach(lines -> labels.add(new SetLabel(look, lines)));
        }
        return labels;
    }
}
