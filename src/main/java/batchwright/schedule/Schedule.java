package batchwright.schedule;

import batchwright.food.Step.Appliance;
import batchwright.plan.Batch;
import batchwright.schedule.search.Project;
import batchwright.schedule.search.ScheduleSearch;
import batchwright.schedule.search.Timetable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order of work of one cooking session. Minutes count from its start; steps of the evening before are not in it.
 *
 * @param minutes until the last step ends
 * @param lowerBoundMinutes no order of work ends sooner
 * @param steps by start, then in the order of the dishes
 * @param settings when to turn the oven, by time
 */
public record Schedule(
        Equipment equipment, int minutes, int lowerBoundMinutes, List<PlacedStep> steps, List<OvenSetting> settings) {
    /** When the search stops without a proof: some tenths of a second. */
    private static final int MOST_STEPS = 20_000;

    public Schedule {
        steps = List.copyOf(steps);
        settings = List.copyOf(settings);
    }

    /** Of everything that is cooked together, in a usual kitchen. The same batches give the same schedule. */
    public static Schedule of(List<Batch> batches) {
        return of(batches, Equipment.USUAL);
    }

    public static Schedule of(List<Batch> batches, Equipment equipment) {
        List<Task> tasks = Tasks.of(batches, equipment);
        var project = new Project(
                Task.capacities(equipment),
                tasks.stream().map(Task::activity).toList(),
                equipment.toleranceCelsius(),
                equipment.heatingMinutes());
        Timetable timetable = ScheduleSearch.of(project, MOST_STEPS);
        List<PlacedStep> steps = placed(tasks, timetable, equipment);
        return new Schedule(
                equipment, timetable.minutes(), timetable.lowerBound(), steps, OvenSettings.of(steps, equipment));
    }

    private static List<PlacedStep> placed(List<Task> tasks, Timetable timetable, Equipment equipment) {
        var burners = new Places(equipment.burners());
        var shelves = new Places(equipment.shelves());
        List<PlacedStep> placed = new ArrayList<>();
        IntStream.range(0, tasks.size())
                .boxed()
                .sorted(Comparator.comparing(i -> timetable.starts().get(i)))
                .forEach(i -> {
                    Task task = tasks.get(i);
                    int start = timetable.starts().get(i);
                    int end = start + task.minutes();
                    List<Integer> places = task.uses(Appliance.BURNER)
                            ? burners.take(1, start, end)
                            : shelves.take(task.shelves(), start, end);
                    placed.add(task.at(start, places));
                });
        return placed;
    }

    /** Whether no order of work ends sooner. */
    public boolean proven() {
        return minutes == lowerBoundMinutes;
    }

    /** Minutes that take the cook's hands. */
    public int handsOnMinutes() {
        return steps.stream().mapToInt(PlacedStep::handsOnMinutes).sum();
    }
}
