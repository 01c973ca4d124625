package batchwright.person;

/** Sex as the published equations use it. */
public enum Sex {
    FEMALE,
    MALE
}
