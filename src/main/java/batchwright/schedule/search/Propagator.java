package batchwright.schedule.search;

/** Something every timetable keeps. */
interface Propagator {
    /** Takes from windows what no timetable inside them has; false when there is none. */
    boolean tighten(Windows windows);
}
