package batchwright.person;

/**
 * How active the eater is.
 *
 * @param pal physical activity level: total energy / resting energy
 * @param label how the eater said it: a level's name, or the number
 */
public record Activity(double pal, String label) {}
