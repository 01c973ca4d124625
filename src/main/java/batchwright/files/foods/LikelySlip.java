package batchwright.files.foods;

import static batchwright.food.Nutrient.CARBOHYDRATE;
import static batchwright.food.Nutrient.ENERGY;
import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.FIBRE;
import static batchwright.food.Nutrient.PROTEIN;

import batchwright.food.Nutrient;
import batchwright.quantity.Energy;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** The one slip in copying a label that, undone, makes energy and macros fit. */
final class LikelySlip {
    private static final double TEN = 10;

    /** @param miss how far energy and macros are still apart, as a share of the energy */
    private record Guess(double miss, String reason) {}

    private final Label label;
    private final Figures figures;
    private final double kcal;

    LikelySlip(Label label) {
        this.label = label;
        this.figures = label.figures();
        this.kcal = figures.number(ENERGY);
    }

    /** The best fit among frequent slips; only when none fits, a point in the wrong place. */
    Optional<String> reason() {
        return best(Stream.of(otherUnit(), otherConvention(), otherWeight(), fibreWithLittleEnergy())
                        .flatMap(s -> s))
                .or(() -> best(pointInWrongPlace()));
    }

    private static Optional<String> best(Stream<Guess> guesses) {
        return guesses.min(Comparator.comparingDouble(Guess::miss)).map(Guess::reason);
    }

    /** The figures as they would be without the slip: a guess if they fit well, with nothing allowed for rounding. */
    private Stream<Guess> guess(Figures meant, double energy, String reason) {
        boolean fits = meant.availableCarbohydrate() >= 0
                && meant.macros().compareTo(meant.grams()) <= 0
                && MacroEnergy.fits(meant, energy, 0);
        return fits ? Stream.of(new Guess(MacroEnergy.miss(meant, energy) / Math.max(1, energy), reason)) : Stream.of();
    }

    private Stream<Guess> otherUnit() {
        LabelEnergy stated = label.energy();
        if (stated.statedKcal().isEmpty()) {
            return guess(figures, kcal * Energy.KJ_PER_KCAL, "this looks like kcal written as kJ");
        }
        Stream<Guess> kilojoules = stated.statedKilojoules().stream()
                .flatMap(kj ->
                        guess(figures, kj.doubleValue() / Energy.KJ_PER_KCAL, "the kJ fit: look at the kcal again"));
        return Stream.concat(
                kilojoules, guess(figures, kcal / Energy.KJ_PER_KCAL, "this looks like kJ written as kcal"));
    }

    private Stream<Guess> otherConvention() {
        String reason = figures.fibreInside()
                ? "it fits if carbohydrate leaves the fibre out, as on a European label: is label eu?"
                : "it fits if carbohydrate holds the fibre, as on a US label: is label us?";
        return figures.number(FIBRE) > 0 ? guess(figures.readOtherwise(), kcal, reason) : Stream.of();
    }

    private Stream<Guess> otherWeight() {
        double share = figures.grams().doubleValue() / 100;
        String reason =
                "it fits if the energy is for 100 g and the rest for %s, or the reverse: take one column of the label"
                        .formatted(label.per().shown());
        return share == 1
                ? Stream.of()
                : Stream.concat(guess(figures, kcal * share, reason), guess(figures, kcal / share, reason));
    }

    /** Some tables and makers count none of the fibre, some only the soluble part: all up to 2 kcal/g fits. */
    private Stream<Guess> fibreWithLittleEnergy() {
        Figures without = figures.with(FIBRE, BigDecimal.ZERO);
        return figures.fibreInside() || figures.number(FIBRE) == 0 || kcal > figures.kcalOfMacros()
                ? Stream.of()
                : guess(
                        without,
                        Math.min(kcal, without.kcalOfMacros()),
                        "it fits if fibre was given little or no energy; by European rules it has 2 kcal/g");
    }

    private Stream<Guess> pointInWrongPlace() {
        Stream<Guess> macros = Stream.of(PROTEIN, FAT, CARBOHYDRATE, FIBRE)
                .filter(nutrient -> figures.number(nutrient) > 0)
                .flatMap(nutrient -> Stream.concat(pointMoved(nutrient, 1), pointMoved(nutrient, -1)));
        Stream<Guess> energy = Stream.concat(
                guess(figures, kcal * TEN, "it fits if the energy is ten times that: look for the point"),
                guess(figures, kcal / TEN, "it fits if the energy is a tenth of that: look for the point"));
        return Stream.concat(macros, energy);
    }

    private Stream<Guess> pointMoved(Nutrient nutrient, int places) {
        BigDecimal stated = figures.get(nutrient);
        BigDecimal moved = stated.scaleByPowerOfTen(places);
        return guess(
                figures.with(nutrient, moved),
                kcal,
                "it fits if %s is %s g instead of %s g: look for the point"
                        .formatted(nutrient.label(), moved.toPlainString(), stated.toPlainString()));
    }
}
