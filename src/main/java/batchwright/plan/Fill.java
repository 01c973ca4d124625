package batchwright.plan;

import batchwright.food.Nutrients;
import batchwright.person.Eater;
import java.util.List;
import java.util.Optional;

/**
 * Containers of one dish that are all alike.
 *
 * @param eater whom they are for; empty when they are for nobody in particular
 * @param containers how many, at least 1
 * @param portions one for each part of the dish, in its order
 */
public record Fill(Optional<Eater> eater, int containers, List<Portion> portions) {
    public Fill {
        portions = List.copyOf(portions);
    }

    public Fill(Eater eater, int containers, List<Portion> portions) {
        this(Optional.of(eater), containers, portions);
    }

    public boolean isFor(Eater other) {
        return eater.filter(other::equals).isPresent();
    }

    /** " for Anna", to be put behind a noun; empty when for nobody in particular. */
    public String forWhom() {
        return eater.map(e -> " for " + e.name()).orElse("");
    }

    public Nutrients perContainer() {
        return portions.stream().map(Portion::nutrients).reduce(Nutrients.NONE, Nutrients::plus);
    }
}
