package batchwright.report.labels;

/** How many words a label has; who, when, dish, allergens, storage and the warmth inside are always among them. */
enum Wording {
    /** All figures, and the dish's own way to reheat. */
    FULL,
    /** Of the figures energy and protein. */
    SHORT,
    /** The same run together, in as few lines as possible, with who on one line. */
    BRIEF,
    /** Weight of the whole box in place of its parts. */
    LEAST
}
