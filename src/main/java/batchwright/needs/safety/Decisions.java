package batchwright.needs.safety;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import batchwright.text.ResourceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Who is planned for, warned, asked or refused: the tables decisions.csv (age, BMI, goal) and decisions_by_fat.csv. The strictest
 * counts.
 */
public final class Decisions {
    private static final int COLUMNS = 7;
    private static final String ANY = "any";
    private static final String NO_REASON = "-";

    private static final List<Row> BY_BMI = ResourceTable.withCommas(Decisions.class, "decisions.csv", COLUMNS).stream()
            .map(Row::of)
            .toList();
    private static final List<FatRow> BY_FAT =
            ResourceTable.withCommas(Decisions.class, "decisions_by_fat.csv", COLUMNS).stream()
                    .map(FatRow::of)
                    .toList();

    private Decisions() {}

    private record Verdict(String action, Outcome outcome, Optional<DecisionReason> reason, Citation source) {
        static Verdict of(List<String> cells) {
            return new Verdict(
                    cells.get(0),
                    Outcome.valueOf(cells.get(1).toUpperCase(Locale.ROOT)),
                    Optional.of(cells.get(2))
                            .filter(name -> !name.equals(NO_REASON))
                            .map(DecisionReason::of),
                    new Citation(cells.get(3)));
        }

        boolean isOf(Action wanted) {
            return action.equals(ANY) || action.equals(wanted.key());
        }

        Optional<Decision> of(Eater eater) {
            return reason.map(why -> Decision.answered(eater, outcome, why, source));
        }
    }

    private record Row(double fromYears, double fromBmi, double toBmi, Verdict verdict) {
        static Row of(List<String> cells) {
            return new Row(
                    Double.parseDouble(cells.get(0)),
                    Double.parseDouble(cells.get(1)),
                    cells.get(2).equals("on") ? Double.POSITIVE_INFINITY : Double.parseDouble(cells.get(2)),
                    Verdict.of(cells.subList(3, COLUMNS)));
        }

        boolean isFor(double years, double bmi) {
            return fromYears == years && !Numerals.below(bmi, fromBmi) && Numerals.below(bmi, toBmi);
        }
    }

    private record FatRow(double male, double female, Verdict verdict) {
        static FatRow of(List<String> cells) {
            return new FatRow(
                    Double.parseDouble(cells.get(1)),
                    Double.parseDouble(cells.get(2)),
                    Verdict.of(cells.subList(3, COLUMNS)));
        }

        double from(Sex sex) {
            return sex == Sex.MALE ? male : female;
        }
    }

    /** All decisions about a goal, with the answers that the eater gives; empty when it is simply planned for. */
    public static List<Decision> of(Eater eater, Action wanted) {
        List<Decision> decisions = new ArrayList<>();
        byBmi(eater.body(), wanted).flatMap(verdict -> verdict.of(eater)).ifPresent(decisions::add);
        byFat(eater.body(), wanted).flatMap(verdict -> verdict.of(eater)).ifPresent(decisions::add);
        return List.copyOf(decisions);
    }

    /** What the tables say before any answer. */
    static Outcome listed(Body body, Action wanted) {
        return byBmi(body, wanted)
                .map(Verdict::outcome)
                .orElse(Outcome.PLAN)
                .strictest(byFat(body, wanted).map(Verdict::outcome).orElse(Outcome.PLAN));
    }

    private static Optional<Verdict> byBmi(Body body, Action wanted) {
        double years = BY_BMI.stream()
                .mapToDouble(Row::fromYears)
                .filter(from -> from <= body.ageYears())
                .max()
                .orElse(0);
        return BY_BMI.stream()
                .filter(row -> row.isFor(years, body.bmi()) && row.verdict().isOf(wanted))
                .map(Row::verdict)
                .findFirst();
    }

    private static Optional<Verdict> byFat(Body body, Action wanted) {
        return fatPercent(body, wanted)
                .flatMap(fat -> BY_FAT.stream()
                        .filter(row -> row.verdict().isOf(wanted) && !Numerals.below(fat, row.from(body.sex())))
                        .map(FatRow::verdict)
                        .reduce((lower, higher) -> higher));
    }

    /** How much of the figure counts; less for a method with a large error, unless weight is to be gained. */
    private static Optional<Double> fatPercent(Body body, Action action) {
        double less = action.gains() ? 0 : SafeEnd.errorNotAllowedFor(body);
        return SafeEnd.isToldOrTaped(body)
                ? body.bodyFat().map(fat -> Math.max(0, fat.percent() - less))
                : Optional.empty();
    }
}
