package batchwright.needs.safety;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What becomes of many bodies and goals, by the whole of needs: 180 cm men and 165 cm women with PAL 1.76 (active), who are healthy, have
 * answered all questions of health, and have not been asked anything else.
 */
final class SafetyGrid {
    static final List<Double> YEARS = List.of(17.0, 18.0, 30.0, 64.0, 65.0, 69.0, 70.0, 85.0);
    static final List<Double> BMIS = List.of(
            15.0, 16.0, 17.0, 18.0, 18.5, 19.0, 20.0, 21.0, 22.0, 23.0, 24.0, 25.0, 26.0, 27.5, 29.0, 30.0, 32.5, 35.0,
            37.5, 40.0, 45.0, 50.0);
    /** Per cent of weight a week. */
    static final List<Double> RATES =
            List.of(-1.5, -1.0, -0.75, -0.5, -0.25, 0.0, 0.15, 0.25, 0.4, 0.5, 0.75, 1.0, 1.5);
    /** A class of body fat each, by its order: under the floor, at it, lean, usual, high; men's and women's reading by DXA [%]. */
    static final List<List<Double>> FATS = List.of(
            List.of(4.0, 10.5), List.of(6.5, 14.0), List.of(10.5, 19.0), List.of(17.0, 28.0), List.of(29.0, 39.0));

    /** Say something of the figures or of what is planned instead, nothing against the goal. */
    private static final Set<String> NO_DECISION = Set.of(
            "estimate_only",
            "age_65_or_more",
            "body_fat_estimated",
            "slower_than_advised",
            "low_energy",
            "loss_slowed",
            "gain_slowed");

    /** @param fat place in {@link #FATS}; empty when body fat is not known */
    record Cell(Sex sex, double years, double bmi, double rate, Optional<Integer> fat) {
        TestEater eater() {
            double metres = sex == Sex.MALE ? 1.80 : 1.65;
            Body body =
                    new Body(sex, years, new Mass(bmi * metres * metres), new Length(metres * 100), Optional.empty());
            Body known = fat.map(place -> body.withFat(new BodyFat.Measured(
                            Share.ofPercent(FATS.get(place).get(sex == Sex.MALE ? 0 : 1)), FatMethod.DXA)))
                    .orElse(body);
            return TestEater.of(known).pal(1.76).percentAWeek(rate);
        }

        Cell withRate(double other) {
            return new Cell(sex, years, bmi, other, fat);
        }

        Cell withYears(double other) {
            return new Cell(sex, other, bmi, rate, fat);
        }

        Cell withBmi(double other) {
            return new Cell(sex, years, other, rate, fat);
        }

        Cell withFat(int place) {
            return new Cell(sex, years, bmi, rate, Optional.of(place));
        }
    }

    /** @param codes of all cautions */
    private record Found(Outcome outcome, Set<String> codes) {}

    private final Map<Cell, Outcome> outcomes = new LinkedHashMap<>();
    private final Map<Cell, Set<String>> codes = new HashMap<>();

    SafetyGrid() {
        for (Sex sex : Sex.values()) {
            for (double years : YEARS) {
                for (double bmi : BMIS) {
                    for (double rate : RATES) {
                        add(new Cell(sex, years, bmi, rate, Optional.empty()));
                    }
                }
            }
        }
        for (Sex sex : Sex.values()) {
            for (double bmi : List.of(19.0, 21.0, 23.0, 26.0, 32.5)) {
                for (double rate : RATES) {
                    for (int fat = 0; fat < FATS.size(); fat++) {
                        add(new Cell(sex, 30, bmi, rate, Optional.of(fat)));
                    }
                }
            }
        }
        List<Found> found = List.copyOf(outcomes.keySet()).parallelStream()
                .map(cell -> found(cell.eater().needs()))
                .toList();
        int place = 0;
        for (Map.Entry<Cell, Outcome> entry : outcomes.entrySet()) {
            codes.put(entry.getKey(), found.get(place).codes());
            entry.setValue(found.get(place++).outcome());
        }
    }

    private void add(Cell cell) {
        outcomes.put(cell, Outcome.PLAN);
    }

    Map<Cell, Outcome> outcomes() {
        return outcomes;
    }

    /** Empty when the cell is not in the grid. */
    Optional<Outcome> of(Cell cell) {
        return Optional.ofNullable(outcomes.get(cell));
    }

    boolean says(Cell cell, String code) {
        return codes.getOrDefault(cell, Set.of()).contains(code);
    }

    private static Found found(Needs needs) {
        Outcome outcome = needs.cautions().stream()
                .map(SafetyGrid::outcome)
                .max(Comparator.naturalOrder())
                .orElse(Outcome.PLAN);
        return new Found(outcome, needs.cautions().stream().map(Caution::code).collect(Collectors.toSet()));
    }

    private static Outcome outcome(Caution caution) {
        if (caution.stopsPlanning()) {
            return caution.asks().isEmpty() ? Outcome.REFUSE : Outcome.ASK;
        }
        return NO_DECISION.contains(caution.code()) ? Outcome.PLAN : Outcome.WARN;
    }
}
