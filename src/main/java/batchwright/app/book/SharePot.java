package batchwright.app.book;

import batchwright.answer.PotAnswer;
import batchwright.answer.PotAnswer.Planned;
import batchwright.answer.PotAnswer.PotFill;
import batchwright.answer.PotLabels;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Event;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.plan.pot.Claim;
import batchwright.plan.pot.PotShares;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shares a pot out as its weight came out, so that all containers of a kept plan miss their nutrients least. What went in is what the
 * book says of the cooking; where it says nothing, what the plan does.
 */
public final class SharePot {
    private static final List<Nutrient> COUNTED =
            List.of(Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.CARBOHYDRATE, Nutrient.FIBRE);
    /** What a pot may lose or gain in cooking; outside of it, a weight is a slip. Our choice. */
    private static final double LEAST_FACTOR = 0.25;

    private static final double MOST_FACTOR = 4;

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final LocalDate day;

    /** What goes into each container, and its new labels. */
    public record SharedPot(PotAnswer answer, PotLabels labels) {}

    public SharePot(Workspace workspace, Kitchen kitchen, LocalDate day) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.day = day;
    }

    /**
     * @param part name of the part in the pot; empty for the first of the dish
     * @param cooked what the pot holds, without pot and lid [g]
     * @throws Refused when no kept plan cooks the dish, or the weight cannot be
     */
    public SharedPot share(String dish, Optional<String> part, BigDecimal cooked) {
        KeptPlan plan = workspace
                .keptPlans()
                .on(day)
                .orElseThrow(
                        () -> Refused.because("no plan was kept that holds " + day, "Keep a plan when you make one."));
        KeptBatch batch = plan.batches().stream()
                .filter(b -> b.dish().equals(dish) && !plan.date(b.day()).isAfter(day))
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> Refused.because(
                        "the plan of %s does not cook %s".formatted(plan.cookingDay(), dish),
                        "It cooks "
                                + String.join(
                                        ", ",
                                        plan.batches().stream()
                                                .map(KeptBatch::dish)
                                                .distinct()
                                                .toList()) + "."));
        Dish known = new KeptDish(kitchen).of(batch);
        return share(plan, batch, known, part(known, part), cooked);
    }

    private static Part part(Dish dish, Optional<String> name) {
        return dish.parts().stream()
                .filter(part -> name.filter(n -> !n.equals(part.name())).isEmpty())
                .findFirst()
                .orElseThrow(() -> Refused.because(
                        "%s has no part called \"%s\"".formatted(dish.id(), name.orElse("")),
                        "Its parts: "
                                + String.join(
                                        ", ",
                                        dish.parts().stream().map(Part::name).toList()) + "."));
    }

    private SharedPot share(KeptPlan plan, KeptBatch batch, Dish dish, Part part, BigDecimal cooked) {
        List<KeptFill> fills =
                batch.fills().stream().filter(fill -> raw(fill, part) > 0).toList();
        if (fills.isEmpty()) {
            throw Refused.because(
                    "no container of the plan has %s of %s".formatted(part.name(), dish.id()), "Name another part.");
        }
        int planned = fills.stream()
                .mapToInt(fill -> fill.containers() * raw(fill, part))
                .sum();
        Map<Food, BigDecimal> went = wentIn(batch, part, planned);
        BigDecimal rawGrams = went.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        double factor = cooked.doubleValue() / rawGrams.doubleValue();
        if (factor < LEAST_FACTOR || factor > MOST_FACTOR) {
            throw Refused.because(
                    "%s g in the pot cannot be right: %s g raw went in"
                            .formatted(cooked.toPlainString(), rawGrams.setScale(0, RoundingMode.HALF_UP)),
                    "Weigh the full pot and the empty one again; name the part that is in it.");
        }
        Part asCooked = part.asCooked(went, cooked.divide(rawGrams, MathContext.DECIMAL64));
        Nutrients inPot = asCooked.per100g().ofGrams(rawGrams);
        List<Claim> claims = fills.stream()
                .map(fill -> claim(fill, dish, part, inPot, cooked, factor))
                .toList();
        List<BigDecimal> shares = onTheScale(cooked, fills, PotShares.of(cooked.doubleValue(), claims));
        List<PotFill> answers = new ArrayList<>();
        BigDecimal over = cooked;
        for (int i = 0; i < fills.size(); i++) {
            answers.add(fill(fills.get(i), dish, part, inPot, cooked, shares.get(i)));
            over = over.subtract(
                    shares.get(i).multiply(BigDecimal.valueOf(fills.get(i).containers())));
        }
        return new SharedPot(
                new PotAnswer(dish.id(), part.name(), rawGrams, cooked, part.yieldFactor(), answers, over),
                new FilledFromPot(workspace, kitchen, plan, batch).labels(dish, asCooked, answers));
    }

    private static int raw(KeptFill fill, Part part) {
        return fill.parts().stream()
                .filter(p -> p.part().equals(part.name()))
                .mapToInt(KeptPlan.KeptPart::rawGrams)
                .sum();
    }

    /** Raw grams of each food of the part: as planned, times what the book says of the food over what the plan says. */
    private Map<Food, BigDecimal> wentIn(KeptBatch batch, Part part, int planned) {
        Map<String, BigDecimal> cooked = new HashMap<>();
        workspace.book().on(day).forEach(entry -> {
            if (entry.event() instanceof Event.Cooked line && line.dish().equals(batch.dish())) {
                line.foods().forEach(weight -> cooked.merge(weight.food(), weight.grams(), BigDecimal::add));
            }
        });
        Map<String, BigDecimal> asPlanned = new HashMap<>();
        batch.ingredients().forEach(weight -> asPlanned.merge(weight.food(), weight.grams(), BigDecimal::add));
        Map<Food, BigDecimal> went = new HashMap<>();
        part.shares().forEach((food, share) -> {
            BigDecimal grams = share.multiply(BigDecimal.valueOf(planned));
            BigDecimal plan = asPlanned.getOrDefault(food.id(), BigDecimal.ZERO);
            boolean known = !cooked.isEmpty() && plan.signum() > 0;
            went.put(
                    food,
                    known
                            ? grams.multiply(cooked.getOrDefault(food.id(), BigDecimal.ZERO))
                                    .divide(plan, MathContext.DECIMAL64)
                            : grams);
        });
        return went;
    }

    /** Nutrients of a container as planned. */
    private static Nutrients planned(KeptFill fill, Dish dish) {
        Nutrients sum = Nutrients.NONE;
        for (Part part : dish.parts()) {
            int raw = raw(fill, part);
            if (raw > 0) {
                sum = sum.plus(part.per100g().ofGrams(BigDecimal.valueOf(raw)));
            }
        }
        return sum;
    }

    /**
     * Of each nutrient a container misses (a gram's content x grams - what was planned of this part) / what was planned of the whole
     * container. The sum of squares over nutrients is a parabola in grams.
     */
    private static Claim claim(KeptFill fill, Dish dish, Part part, Nutrients inPot, BigDecimal cooked, double factor) {
        Nutrients whole = planned(fill, dish);
        Nutrients ofPart = part.per100g().ofGrams(BigDecimal.valueOf(raw(fill, part)));
        double top = 0;
        double weight = 0;
        for (Nutrient nutrient : COUNTED) {
            double all = whole.get(nutrient).doubleValue();
            if (all > 0) {
                double inAGram = inPot.get(nutrient).doubleValue() / cooked.doubleValue() / all;
                top += inAGram * ofPart.get(nutrient).doubleValue() / all;
                weight += inAGram * inAGram;
            }
        }
        return new Claim(
                fill.containers(), top / weight, weight, part.leastGrams() * factor, part.mostGrams() * factor);
    }

    /** To the marks of a kitchen scale, together no more than there is: what is over goes where most was cut off. */
    private static List<BigDecimal> onTheScale(BigDecimal cooked, List<KeptFill> fills, List<Double> shares) {
        int step = Part.SCALE_STEP_GRAMS;
        int[] grams = new int[shares.size()];
        int rest = cooked.intValue();
        List<Integer> byRest = new ArrayList<>();
        for (int i = 0; i < grams.length; i++) {
            grams[i] = (int) Math.floor(shares.get(i) / step + 1e-9) * step;
            rest -= grams[i] * fills.get(i).containers();
            byRest.add(i);
        }
        byRest.sort((a, b) -> Double.compare(shares.get(b) - grams[b], shares.get(a) - grams[a]));
        for (int i : byRest) {
            int all = step * fills.get(i).containers();
            if (all <= rest && shares.get(i) - grams[i] > 0.5) {
                grams[i] += step;
                rest -= all;
            }
        }
        List<BigDecimal> rounded = new ArrayList<>();
        for (int g : grams) {
            rounded.add(BigDecimal.valueOf(g));
        }
        return rounded;
    }

    private static PotFill fill(
            KeptFill fill, Dish dish, Part part, Nutrients inPot, BigDecimal cooked, BigDecimal grams) {
        Nutrients planned = planned(fill, dish);
        Nutrients ofPart = part.per100g().ofGrams(BigDecimal.valueOf(raw(fill, part)));
        BigDecimal plannedGrams = fill.parts().stream()
                .filter(p -> p.part().equals(part.name()))
                .map(p -> BigDecimal.valueOf(p.cookedGrams()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new PotFill(
                fill.eater().orElse(""),
                fill.containers(),
                new Planned(grams, plannedGrams),
                figure(Nutrient.ENERGY, planned, ofPart, inPot, cooked, grams),
                figure(Nutrient.PROTEIN, planned, ofPart, inPot, cooked, grams));
    }

    private static Planned figure(
            Nutrient nutrient,
            Nutrients planned,
            Nutrients ofPart,
            Nutrients inPot,
            BigDecimal cooked,
            BigDecimal grams) {
        BigDecimal now = planned.get(nutrient)
                .subtract(ofPart.get(nutrient))
                .add(inPot.get(nutrient).multiply(grams).divide(cooked, MathContext.DECIMAL64));
        return new Planned(now, planned.get(nutrient));
    }
}
