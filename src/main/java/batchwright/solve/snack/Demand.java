package batchwright.solve.snack;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing the rest of a snack must cover: the energy, the protein, or the sum of both shares. The sum catches the
 * pieces that would have to count twice, once for the energy and once for the protein.
 */
record Demand(Grid energy, Grid protein) {

    /** The demands of a window, none when it asks for nothing. */
    static List<Demand> of(Window window, List<Piece> pieces, int mostSteps) {
        Grid energy = Grid.of(Piece::energy, pieces, window.energyLeast(), mostSteps);
        Grid protein = Grid.of(Piece::protein, pieces, window.proteinLeast(), mostSteps);
        List<Demand> demands = new ArrayList<>();
        if (energy.need() > 0) {
            demands.add(new Demand(energy, Grid.NONE));
        }
        if (protein.need() > 0) {
            demands.add(new Demand(Grid.NONE, protein));
        }
        if (energy.need() > 0 && protein.need() > 0) {
            // Half the steps each, so that energy and protein weigh about the same.
            demands.add(new Demand(
                    Grid.of(Piece::energy, pieces, window.energyLeast(), mostSteps / 2),
                    Grid.of(Piece::protein, pieces, window.proteinLeast(), mostSteps / 2)));
        }
        return demands;
    }

    int steps() {
        return steps(energy.need(), protein.need());
    }

    /** Steps of so much energy and protein; amounts below 0 count as 0. */
    int steps(long energyAmount, long proteinAmount) {
        return energy.steps(energyAmount) + protein.steps(proteinAmount);
    }
}
