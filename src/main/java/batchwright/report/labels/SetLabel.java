package batchwright.report.labels;

import batchwright.food.Dish;
import batchwright.plan.Session;
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
        return of(LabelledSession.of("", session), style, face);
    }

    public static List<SetLabel> of(LabelledSession session, LabelStyle style, Typeface face) {
        Map<Alike, List<LabelWords>> boxes = new LinkedHashMap<>();
        session.labels()
                .forEach(label -> boxes.computeIfAbsent(
                                new Alike(label.dish(), label.eaterNumber()), alike -> new ArrayList<>())
                        .add(new LabelWords(
                                label, style.rounding().rules(), session.cookingDay(), session.firstDay(), face)));
        LabelFit fit = new LabelFit(style.sheet(), face);
        List<SetLabel> labels = new ArrayList<>();
        for (List<LabelWords> alike : boxes.values()) {
            LabelLook look = fit.look(alike);
            alike.forEach(words -> labels.add(new SetLabel(look, fit.lines(words, look))));
        }
        return labels;
    }
}
