package batchwright.app;

/** How many dishes a cooking session has: 1 or more at least, and no fewer than that at most. */
public record DishNumber(int least, int most) {
    public static DishNumber atMost(int most) {
        return new DishNumber(1, most);
    }
}
