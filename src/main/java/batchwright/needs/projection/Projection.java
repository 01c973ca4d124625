package batchwright.needs.projection;

import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the body goes when an intake is eaten every day.
 *
 * @param weeksAsked for how many weeks it was asked; it may stop before
 * @param intake eaten every day
 * @param path week by week, the first being now
 */
public record Projection(
        int weeksAsked,
        Energy intake,
        TotalBand total,
        StartingFat fat,
        List<ProjectedWeek> path,
        List<Caution> cautions) {

    /**
     * @param pal total / resting energy
     * @param weeks at least 1
     */
    public static Projection of(Body body, TotalBand total, double pal, Energy intake, int weeks) {
        StartingFat fat = StartingFat.of(body);
        Course likely = course(body, fat, total.likely(), pal, intake, weeks);
        Course lightest = course(body, fat, total.most(), pal, intake, weeks);
        Course heaviest = course(body, fat, total.least(), pal, intake, weeks);
        List<ProjectedWeek> path = new ArrayList<>();
        for (int week = 0; week <= Math.min(likely.lastWeek(), heaviest.lastWeek()); week++) {
            path.add(new ProjectedWeek(
                    week,
                    likely.weeks().get(week),
                    lightest.after(week),
                    heaviest.weeks().get(week)));
        }
        return new Projection(
                weeks, intake, total, fat, List.copyOf(path), ProjectionCautions.of(body, fat, likely, lightest));
    }

    private static Course course(Body body, StartingFat fat, Energy total, double pal, Energy intake, int weeks) {
        Baseline baseline = Baseline.of(body.weight(), fat.of(body.weight()), total, pal);
        return Course.of(body, baseline, intake, weeks);
    }

    public ProjectedWeek now() {
        return path.get(0);
    }

    public ProjectedWeek last() {
        return path.get(path.size() - 1);
    }
}
