package batchwright.schedule.search;

/**
 * Something that is done must not stand too long.
 *
 * @param before what is done, by index
 * @param most minutes from its end to the end of the activity that waits for it
 */
public record Wait(int before, int most) {}
