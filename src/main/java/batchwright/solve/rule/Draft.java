package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan in the making, as linear expressions of a model's columns. */
public interface Draft {
    PlanRequest request();

    Menu menu();

    MipModel model();

    /** 1 when the dish is cooked, else 0. */
    Expression cooked(Dish dish);

    /** Containers of a dish for an eater, over all days. */
    Expression containers(Seat seat, Dish dish);

    /** The most that {@link #containers} can be. */
    int mostContainers(Seat seat, Dish dish);

    /** Raw edible grams of a part in all containers of a dish for an eater together. */
    Expression grams(Seat seat, Dish dish, Part part);

    /** 1 when an optional part is in, 0 when it is left out; empty for a part that is always in. */
    Optional<Column> kept(Seat seat, Dish dish, Part part);

    /** 1 when the dish is cooked as this variant of it, else 0. */
    Expression cookedAs(Variant variant);

    /**
     * Grams of a part, as {@link #grams}, when the dish is cooked as this variant, else 0; left at nothing for a part in which the variant
     * swaps nothing.
     */
    Expression gramsAs(Seat seat, Variant variant, Part part);

    /** Snack measures over all days. */
    Expression snacks(Seat seat, Measure measure);

    Column packs(Pack pack);

    /** For each shop a column: 1 when it is gone to; none where trips cost nothing. */
    Map<String, Column> shops();

    /** Of columns that are decided last: {@link Column#LATER} where that is left to a later step. */
    int rank();

    /** Whether this model only bounds what another decides: a rule may be left out of it. */
    boolean onlyBounds();

    /** The stretches of days over which the day rules are kept: all days at once, or each day alone. */
    List<Span> spans(Seat seat);

    /** A stretch of days of one eater. */
    interface Span {
        /** For the names of rows: eater, and day if it is one. */
        String name();

        /** How many days it has. */
        int days();

        /** What is eaten in it, from containers, snacks and what is always eaten, in the nutrient's unit. */
        Expression intake(Nutrient nutrient);

        Expression snacks(Measure measure);
    }
}
