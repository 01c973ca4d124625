package batchwright.report.cooking;

import batchwright.food.Appliance;
import batchwright.food.Equipment;
import batchwright.report.print.Show;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import batchwright.schedule.StandsTooLong;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The order of work in words, the same on a terminal and in the report. */
public final class ScheduleWords {
    private static final int HOUR = 60;
    /** Longer than a working day with its breaks: common sense, nothing published. */
    private static final int LONG_DAY = 9 * HOUR;

    private ScheduleWords() {}

    /** About 1 h 25 min, 52 min of it hands on; no order takes less */
    public static String says(Schedule schedule) {
        String bound = schedule.proven()
                ? "no order takes less"
                : "at least " + duration(schedule.lowerBoundMinutes()) + " in any order";
        return "about " + duration(schedule.minutes()) + ", " + duration(schedule.handsOnMinutes())
                + (schedule.equipment().cooks() == 1 ? " of it hands on; " : " hands on, all cooks together; ") + bound;
    }

    /** What is taken for granted. */
    public static String note(Schedule schedule) {
        return Show.capital(kitchen(schedule.equipment()))
                + ". Hands: until when a step needs the cook. Stirring, draining and taking out go on beside other work"
                + " and are not counted. Minutes are those of a home cook, give or take 40 %: measure yours once."
                + (schedule.minutes() > LONG_DAY
                        ? " This is a very long day of cooking: fewer days, or several sessions (--cooks), make it shorter."
                        : "");
    }

    /** One cook, 4 burners, 2 oven shelves, rice cooker. */
    private static String kitchen(Equipment equipment) {
        List<String> has = new ArrayList<>();
        has.add(equipment.cooks() == 1 ? "one cook" : equipment.cooks() + " cooks");
        has.add(
                equipment.has(Appliance.BURNER)
                        ? Show.count(equipment.hob().burners(), "burner", "burners")
                        : "no burner");
        has.add(
                equipment.has(Appliance.OVEN)
                        ? "oven with " + Show.count(equipment.oven().shelves(), "shelf", "shelves")
                        : "no oven");
        equipment.others().keySet().forEach(a -> has.add(a.label()));
        return String.join(", ", has);
    }

    /** What stands too long, and what to do about it: a sentence or two for each dish. */
    public static List<String> standing(Schedule schedule) {
        return schedule.standing().stream()
                .collect(Collectors.toMap(StandsTooLong::dish, s -> s, ScheduleWords::worse, LinkedHashMap::new))
                .values()
                .stream()
                .map(ScheduleWords::says)
                .toList();
    }

    private static StandsTooLong worse(StandsTooLong one, StandsTooLong other) {
        return one.minutes() - one.most() >= other.minutes() - other.most() ? one : other;
    }

    private static String says(StandsTooLong stands) {
        return "Stands too long: what step " + stands.step() + " of "
                + stands.dish().id() + " cooks is in its containers "
                + duration(stands.minutes()) + " later, and " + duration(stands.most())
                + " should be the most. Fill in two goes: cook half, fill and chill it, then the rest. Or keep it above"
                + " 63 C (145 F) until it is filled, or cool it at once, spread thinly or in cold water, and fill it cold.";
    }

    /** burner 1; shelf 1+2; microwave; empty when nothing is used. */
    public static String place(PlacedStep step) {
        String places = step.places().stream().map(String::valueOf).collect(Collectors.joining("+"));
        return step.on()
                .map(a -> switch (a) {
                    case BURNER -> "burner " + places;
                    case OVEN -> "shelf " + places;
                    default -> a.label();
                })
                .orElse("");
    }

    /** Since the start of the session: 1:05 */
    public static String clock(int minute) {
        return minute / HOUR + ":" + String.format(Locale.ROOT, "%02d", minute % HOUR);
    }

    /** 1 h 25 min */
    public static String duration(int minutes) {
        String hours = minutes < HOUR ? "" : minutes / HOUR + " h";
        String rest = minutes % HOUR == 0 && minutes > 0 ? "" : minutes % HOUR + " min";
        return (hours + " " + rest).strip();
    }
}
