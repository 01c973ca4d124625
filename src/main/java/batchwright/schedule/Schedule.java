package batchwright.schedule;

import batchwright.food.Appliance;
import batchwright.food.Equipment;
import batchwright.food.Step;
import batchwright.plan.Batch;
import batchwright.schedule.search.Project;
import batchwright.schedule.search.ScheduleSearch;
import batchwright.schedule.search.Timetable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The order of work of one cooking session: the one source of every minute. Minutes count from its start; steps of the evening before are
 * not in it.
 *
 * @param minutes until the last step ends
 * @param lowerBoundMinutes no order of work ends sooner in which nothing stands too long
 * @param steps by start, then in the order of the dishes
 * @param settings when to turn the oven, by time
 * @param standing cooked food that stands too long, by dish and step
 */
public record Schedule(
        Equipment equipment,
        int minutes,
        int lowerBoundMinutes,
        List<PlacedStep> steps,
        List<OvenSetting> settings,
        List<StandsTooLong> standing) {
    /** When the search stops without a proof: some tenths of a second. */
    private static final int MOST_STEPS = 20_000;

    public Schedule {
        steps = List.copyOf(steps);
        settings = List.copyOf(settings);
        standing = List.copyOf(standing);
    }

    /** Of everything that is cooked together. The same batches give the same schedule. */
    public static Schedule of(List<Batch> batches, Equipment equipment) {
        List<Task> tasks = Tasks.of(batches, equipment);
        var project = new Project(
                Task.capacities(equipment),
                tasks.stream().map(Task::activity).toList(),
                equipment.oven().toleranceCelsius(),
                equipment.oven().heatingMinutes());
        Timetable timetable = ScheduleSearch.of(project, MOST_STEPS);
        List<PlacedStep> steps = placed(tasks, timetable, equipment);
        return new Schedule(
                equipment,
                timetable.minutes(),
                timetable.lowerBound(),
                steps,
                OvenSettings.of(steps, equipment.oven()),
                standing(tasks, timetable.starts()));
    }

    /** What a step takes by itself, even one of the evening before. */
    public static StepWork work(Batch batch, Step step, Equipment equipment) {
        return LawfulWork.of(batch, step, step.way(equipment).orElse(step.way()), equipment);
    }

    private static List<PlacedStep> placed(List<Task> tasks, Timetable timetable, Equipment equipment) {
        Map<Appliance, Places> places = new EnumMap<>(Appliance.class);
        for (Appliance appliance : Appliance.values()) {
            places.put(appliance, new Places(Math.max(1, equipment.places(appliance))));
        }
        List<PlacedStep> placed = new ArrayList<>();
        IntStream.range(0, tasks.size())
                .boxed()
                .sorted(Comparator.comparing(i -> timetable.starts().get(i)))
                .forEach(i -> {
                    Task task = tasks.get(i);
                    int start = timetable.starts().get(i);
                    List<Integer> taken = task.way()
                            .on()
                            .map(places::get)
                            .map(p -> p.take(
                                    task.work().places(),
                                    start,
                                    start + task.work().minutes()))
                            .orElse(List.of());
                    placed.add(new PlacedStep(task, start, taken));
                });
        return placed;
    }

    private static List<StandsTooLong> standing(List<Task> tasks, List<Integer> starts) {
        List<StandsTooLong> standing = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            Task task = tasks.get(i);
            for (Task.Wait wait : task.waits()) {
                Task before = tasks.get(wait.before());
                int until = starts.get(i) + (wait.untilEnd() ? task.work().minutes() : 0);
                int minutes = until - starts.get(wait.before()) - before.work().minutes();
                if (minutes > wait.most()) {
                    standing.add(new StandsTooLong(task.dish(), before.number().orElseThrow(), minutes, wait.most()));
                }
            }
        }
        return standing;
    }

    /** Whether no order of work ends sooner. */
    public boolean proven() {
        return minutes == lowerBoundMinutes;
    }

    /** Minutes that take the cooks' hands, all together. */
    public int handsOnMinutes() {
        return steps.stream().mapToInt(PlacedStep::handsOnMinutes).sum();
    }

    /** Minutes of all steps one after another. */
    public int minutesOneAfterAnother() {
        return steps.stream().mapToInt(PlacedStep::minutes).sum();
    }
}
