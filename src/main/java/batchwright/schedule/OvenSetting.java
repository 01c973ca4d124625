package batchwright.schedule;

/**
 * The moment to turn the oven to a temperature.
 *
 * @param minute from the start of the session
 */
public record OvenSetting(int minute, int celsius) {}
