package batchwright.plan;

/** Finds the cheapest way to fill containers of one dish as asked. */
public interface DishPlanner {
    DishAnswer fill(DishRequest request);
}
