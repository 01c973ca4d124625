package batchwright.page.desk;

import batchwright.app.Workspace;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.page.KnownEaters;
import batchwright.person.Eater;
import batchwright.report.html.web.DeskEater;
import batchwright.report.print.Show;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An eater at the desk before anything is moved.
 *
 * @param eater as the profile says; empty when it cannot be read
 */
record WrittenEater(String id, Optional<Eater> eater, Kitchen kitchen) {
    static List<WrittenEater> all(Workspace workspace, Kitchen kitchen) {
        var known = new KnownEaters(workspace);
        return known.ids().stream()
                .map(id -> new WrittenEater(id, known.eater(id, kitchen), kitchen))
                .toList();
    }

    String name() {
        return eater.map(Eater::name).orElse(id);
    }

    /** Foods that may be offered as snacks. */
    List<Food> snacks() {
        return kitchen.snackMeasures().stream()
                .map(Measure::food)
                .distinct()
                .filter(food -> eater.filter(mine -> mine.wishes().allows(food)).isPresent())
                .sorted(Comparator.comparing(Food::name))
                .toList();
    }

    /** Those that are offered when nothing is moved, by short name. */
    Set<String> likes() {
        return kitchen.snackMeasures().stream()
                .filter(measure -> eater.filter(mine -> mine.wishes().offersInPlans(measure))
                        .isPresent())
                .map(measure -> measure.food().id())
                .collect(Collectors.toSet());
    }

    /** Its controls as they stand in a wish; empty when the profile cannot be read. */
    Optional<DeskEater> controls(EaterWish wish, boolean eats) {
        return eater.map(mine -> {
            Needs needs = NeedsCalculator.needsOf(mine);
            Set<String> liked = wish.snacks().orElseGet(this::likes);
            return new DeskEater(
                    id,
                    mine.name(),
                    eats,
                    new DeskEater.Figure(wish.goalKcal(), needs.target().isEmpty() ? "" : Show.whole(needs.goalKcal())),
                    new DeskEater.Figure(wish.protein(), protein(mine, needs)),
                    new DeskEater.Figure(
                            wish.boxes(), Integer.toString(mine.wishes().containersADay())),
                    snacks().stream()
                            .map(food -> new DeskEater.Snack(food.id(), food.name(), liked.contains(food.id())))
                            .toList());
        });
    }

    private static String protein(Eater mine, Needs needs) {
        double floor = needs.target()
                .map(target -> target.day(Nutrient.PROTEIN).least()
                        / mine.body().weight().kg())
                .orElse(0.0);
        return floor > 0 ? Show.oneDecimal(floor) : "";
    }
}
