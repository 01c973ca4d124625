package batchwright.plan;

import batchwright.food.Nutrients;
import batchwright.person.Eater;
import java.util.List;

/**
 * The containers of one dish for one eater; all are alike.
 *
 * @param containers how many, at least 1
 * @param portions one for each part of the dish, in its order
 */
public record Fill(Eater eater, int containers, List<Portion> portions) {
    public Fill {
        portions = List.copyOf(portions);
    }

    public Nutrients perContainer() {
        return portions.stream().map(Portion::nutrients).reduce(Nutrients.NONE, Nutrients::plus);
    }
}
