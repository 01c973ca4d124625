package batchwright.limit;

import batchwright.food.Nutrient;

/** Over what the amounts that a limit is about are added up. */
public enum Scope {
    DAY("", "each day of %s holds", "", " of the day"),
    CONTAINER("container_", "each container of %s holds", " in a container", ", in each container"),
    /** What a container holds, for each 100 g that it weighs cooked: what makes food dense. */
    PER_100_G("per_100_g_", "each container of %s holds", " density of a container", ", in each container"),
    /** The days of a plan, added up and divided by their number. */
    MEAN_OF_DAYS("mean_", "an average day of %s holds", " on average", ", over all days");

    private final String prefix;
    private final String holds;
    private final String where;
    private final String each;

    Scope(String prefix, String holds, String where, String each) {
        this.prefix = prefix;
        this.holds = holds;
        this.where = where;
        this.each = each;
    }

    /** The beginning of a sentence: each day of Ann holds. */
    public String holds(String eater) {
        return holds.formatted(eater);
    }

    /** What is measured: energy, energy in a container. */
    public String measured(Nutrient nutrient) {
        return nutrient.label() + where;
    }

    /** What stands after the name of a limit, for those who read the rows of a model. */
    public String each() {
        return each;
    }

    /** In which unit amounts are compared. */
    String unit(Nutrient nutrient) {
        return this == PER_100_G ? nutrient.unit() + " per 100 g" : nutrient.unit();
    }

    String id(Nutrient nutrient) {
        return prefix + nutrient.id();
    }
}
