package batchwright.needs.projection;

import batchwright.needs.caution.Caution;
import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.Course;
import batchwright.needs.dynamics.StartingFat;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        return Course.of(body, BodyModel.of(body, fat, total, pal), intake, weeks);
    }

    public ProjectedWeek now() {
        return path.get(0);
    }

    public ProjectedWeek last() {
        return path.get(path.size() - 1);
    }

    /** Why and after which week it ends before the weeks asked for. */
    public Optional<Caution> stops() {
        return cautions.stream()
                .filter(caution -> caution.code().equals(ProjectionCautions.STOPS))
                .findFirst();
    }
}
