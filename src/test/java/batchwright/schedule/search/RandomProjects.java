package batchwright.schedule.search;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/** Small kitchens made by a seed: one cook, two burners, an oven of two shelves that is set to one of three temperatures. */
final class RandomProjects {
    private static final int COOK = 0;
    private static final int BURNER = 1;
    private static final int SHELF = 2;

    private RandomProjects() {}

    /** Some of what is done must not stand longer than some minutes, until an activity that follows it has ended. */
    static Project withWaits(long seed, int activities, int mostMinutes) {
        Project project = of(seed, activities, mostMinutes);
        var random = new Random(-seed - 1);
        List<Activity> made = new ArrayList<>();
        for (Activity activity : project.activities()) {
            List<Wait> waits = new ArrayList<>();
            for (int before : activity.after()) {
                if (random.nextBoolean()) {
                    waits.add(new Wait(before, activity.minutes() + random.nextInt(3)));
                }
            }
            made.add(new Activity(activity.minutes(), activity.needs(), activity.setting(), activity.after(), waits));
        }
        return new Project(project.capacities(), made, project.tolerance(), project.changeover());
    }

    static Project of(long seed, int activities, int mostMinutes) {
        var random = new Random(seed);
        List<Activity> made = new ArrayList<>();
        for (int i = 0; i < activities; i++) {
            int minutes = 1 + random.nextInt(mostMinutes);
            List<Need> needs = new ArrayList<>();
            OptionalInt setting = OptionalInt.empty();
            int hands = random.nextInt(3) == 0 ? minutes : random.nextInt(minutes + 1);
            if (hands > 0) {
                needs.add(new Need(COOK, 1, hands));
            }
            int device = random.nextInt(4);
            if (device == BURNER) {
                needs.add(new Need(BURNER, 1, minutes));
            } else if (device >= SHELF) {
                needs.add(new Need(SHELF, 1 + random.nextInt(2), minutes));
                setting = OptionalInt.of(180 + 10 * random.nextInt(3));
            }
            List<Integer> after = new ArrayList<>();
            for (int before = 0; before < i; before++) {
                if (random.nextInt(4) == 0) {
                    after.add(before);
                }
            }
            made.add(new Activity(minutes, needs, setting, after));
        }
        return new Project(List.of(1, 2, 2), made, 10, random.nextInt(3));
    }
}
