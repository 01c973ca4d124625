package batchwright.schedule.search;

import java.util.List;

/**
 * When each activity starts, and how good that is.
 *
 * @param starts minute of each activity, in the order of the project
 * @param minutes when the last one ends
 * @param lowerBound no timetable ends sooner
 * @param steps of the search
 */
public record Timetable(List<Integer> starts, int minutes, int lowerBound, int steps) {
    public Timetable {
        starts = List.copyOf(starts);
    }
}
