package batchwright.page;

/** One of the places where a user is: at the desk, before the fridge. It has pages of its own. */
public interface Situation {
    /** Names its pages. */
    void open(Routes routes);

    /** When the program ends: stops what still works. */
    default void close() {}
}
