package batchwright.answer;

/** Days of a plan, from the first to the last. */
public record Stretch(int first, int last) {}
