package batchwright.needs.safety;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.Golden;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.bodyfat.FatPlausibility;
import batchwright.needs.goal.CappedGoal;
import batchwright.needs.safety.SafetyGrid.Cell;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Eater;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** No cell of the grid contradicts its neighbour. The relations, not the cells, are the outside: what is worse may not be treated more mildly. */
class SafetyGridTest {
    private static final SafetyGrid GRID = new SafetyGrid();

    @Test
    void has_at_least_5000_bodies_and_goals_and_every_outcome() {
        assertThat(GRID.outcomes()).hasSizeGreaterThanOrEqualTo(5000);
        assertThat(GRID.outcomes().values()).contains(Outcome.values());
    }

    @Test
    void never_milder_for_a_faster_change() {
        List<String> milder = new ArrayList<>();
        for (Cell cell : GRID.outcomes().keySet()) {
            int place = SafetyGrid.RATES.indexOf(cell.rate());
            int next = cell.rate() < 0 ? place - 1 : cell.rate() > 0 ? place + 1 : -1;
            if (next >= 0 && next < SafetyGrid.RATES.size()) {
                milder(cell, cell.withRate(SafetyGrid.RATES.get(next))).ifPresent(milder::add);
            }
        }
        assertThat(milder).isEmpty();
    }

    /**
     * But for two reasons: who burns less is slowed down to less, and then ends higher; and needs a smaller surplus for the same rate, which
     * may lie inside the cap in kcal.
     */
    @Test
    void never_milder_with_age_from_18_on() {
        List<String> milder = new ArrayList<>();
        for (Cell cell : GRID.outcomes().keySet()) {
            int next = SafetyGrid.YEARS.indexOf(cell.years()) + 1;
            if (cell.years() >= 18 && next < SafetyGrid.YEARS.size()) {
                Cell older = cell.withYears(SafetyGrid.YEARS.get(next));
                boolean explained = isSlowed(older) || GRID.says(cell, "gain_too_fast");
                milder(cell, older).filter(said -> !explained).ifPresent(milder::add);
            }
        }
        assertThat(milder).isEmpty();
    }

    private static boolean isSlowed(Cell cell) {
        Eater eater = cell.eater().eater();
        return CappedGoal.of(eater, NeedsCalculator.needsOf(eater).total())
                .asked()
                .isPresent();
    }

    /** From a low BMI to a high one it gets milder, then stricter: one valley, no islands. */
    @Test
    void one_valley_along_the_bmi() {
        List<String> islands = new ArrayList<>();
        for (Sex sex : Sex.values()) {
            for (double years : SafetyGrid.YEARS) {
                for (double rate : SafetyGrid.RATES) {
                    var row = SafetyGrid.BMIS.stream()
                            .map(bmi -> at(new Cell(sex, years, bmi, rate, Optional.empty())))
                            .toList();
                    if (!isValley(row)) {
                        islands.add(sex + " " + years + " " + rate + " " + row);
                    }
                }
            }
        }
        assertThat(islands).isEmpty();
    }

    private static boolean isValley(List<Outcome> row) {
        boolean rose = false;
        for (int i = 1; i < row.size(); i++) {
            int step = row.get(i).compareTo(row.get(i - 1));
            if (step < 0 && rose) {
                return false;
            }
            rose |= step > 0;
        }
        return true;
    }

    @Test
    void losing_is_never_stricter_with_more_fat_and_gaining_never_milder() {
        List<String> wrong = new ArrayList<>();
        for (Cell cell : GRID.outcomes().keySet()) {
            cell.fat().filter(place -> place + 1 < SafetyGrid.FATS.size()).ifPresent(place -> {
                Cell fatter = cell.withFat(place + 1);
                if (cell.rate() < 0) {
                    milder(fatter, cell).ifPresent(wrong::add);
                } else if (cell.rate() > 0 && isBelieved(cell)) {
                    milder(cell, fatter).ifPresent(wrong::add);
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    /** A figure that is hard to believe shows nobody to be lean: what is asked of fat people is asked. */
    private static boolean isBelieved(Cell cell) {
        Body body = cell.eater().eater().body();
        return body.fat()
                .map(BodyFat.Measured.class::cast)
                .filter(fat -> FatPlausibility.of(body, fat).isPlausible())
                .isPresent();
    }

    @Test
    void losing_is_never_milder_than_holding() {
        List<String> milder = new ArrayList<>();
        for (Cell cell : GRID.outcomes().keySet()) {
            if (cell.rate() < 0) {
                milder(cell.withRate(0.0), cell).ifPresent(milder::add);
            }
        }
        assertThat(milder).isEmpty();
    }

    @Test
    void nothing_but_refusal_under_18_and_under_bmi_16() {
        for (Map.Entry<Cell, Outcome> cell : GRID.outcomes().entrySet()) {
            if (cell.getKey().years() < 18 || cell.getKey().bmi() < 16) {
                assertThat(cell.getValue()).as(cell.getKey().toString()).isEqualTo(Outcome.REFUSE);
            }
        }
    }

    /** -Dgolden.rewrite=true draws it anew: look at it. */
    @Test
    void the_picture_in_the_pages_is_this_grid() {
        Golden.check(Path.of("docs/pictures/who-is-planned-for.svg"), SafetyPicture.of(GRID));
    }

    private static Outcome at(Cell cell) {
        return GRID.of(cell).orElseThrow();
    }

    /** Said when the second is milder than the first; nothing where one is not in the GRID. */
    private static Optional<String> milder(Cell first, Cell second) {
        if (GRID.of(first).isEmpty() || GRID.of(second).isEmpty()) {
            return Optional.empty();
        }
        return at(second).compareTo(at(first)) < 0
                ? Optional.of(first + ": " + at(first) + ", but " + second + ": " + at(second))
                : Optional.empty();
    }
}
