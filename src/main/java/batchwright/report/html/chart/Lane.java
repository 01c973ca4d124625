package batchwright.report.html.chart;

import batchwright.food.Appliance;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A place of the kitchen, and what is on it from start to end. At no time is it more than one step.
 *
 * @param name of its kind: burner
 * @param number among those of its kind, from 1
 */
record Lane(String name, int number, List<PlacedStep> steps) {
    static final String ASIDE = "aside";
    static final String SHELF = "shelf";

    Lane {
        steps = List.copyOf(steps);
    }

    /** First the place of what goes on by itself, then the burners and shelves that are used. */
    static List<Lane> of(Schedule schedule) {
        List<Lane> lanes = new ArrayList<>(aside(schedule));
        lanes.addAll(of("burner", on(schedule, Appliance.BURNER)));
        lanes.addAll(of(SHELF, on(schedule, Appliance.OVEN)));
        schedule.equipment().others().keySet().forEach(a -> lanes.addAll(of(a.label(), on(schedule, a))));
        return lanes;
    }

    private static List<PlacedStep> on(Schedule schedule, Appliance appliance) {
        return schedule.steps().stream()
                .filter(step -> step.on().filter(a -> a == appliance).isPresent())
                .toList();
    }

    private static List<Lane> of(String name, List<PlacedStep> steps) {
        int most = steps.stream()
                .flatMap(step -> step.places().stream())
                .mapToInt(Integer::intValue)
                .max()
                .orElse(0);
        return IntStream.rangeClosed(1, most)
                .mapToObj(number -> new Lane(
                        name,
                        number,
                        steps.stream().filter(s -> s.places().contains(number)).toList()))
                .toList();
    }

    /** Each step in the first lane that is free when it starts; the steps come by their starts. */
    private static List<Lane> aside(Schedule schedule) {
        List<List<PlacedStep>> lanes = new ArrayList<>();
        schedule.steps().stream()
                .filter(step -> step.on().isEmpty() && step.end() > step.handsOnUntil())
                .forEach(step -> lanes.stream()
                        .filter(lane -> lane.get(lane.size() - 1).end() <= step.start())
                        .findFirst()
                        .ifPresentOrElse(lane -> lane.add(step), () -> lanes.add(new ArrayList<>(List.of(step)))));
        return IntStream.range(0, lanes.size())
                .mapToObj(i -> new Lane(ASIDE, i + 1, lanes.get(i)))
                .toList();
    }
}
