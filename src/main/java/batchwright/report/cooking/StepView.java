package batchwright.report.cooking;

import batchwright.answer.SaltOfBatch;
import batchwright.answer.SaltOfBatches;
import batchwright.food.Dish;
import batchwright.food.Handled;
import batchwright.plan.Batch;
import batchwright.plan.Session;
import batchwright.report.print.Show;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import batchwright.schedule.StepWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A step of a session as a cook reads it: with what it takes in hand, and how the batch is divided. All sums are done here, so that
 * text, JSON and report print the same.
 */
public record StepView(PlacedStep step, List<Amount> amounts) {
    /**
     * @param id of the food; the name of a staple
     * @param grams raw and edible, of the whole batch; empty for a staple that goes in to taste
     */
    public record Amount(String id, String name, boolean staple, Optional<BigDecimal> grams) {
        /** 482 g onions; bay leaf; no salt. */
        String says() {
            return grams.map(g -> g.signum() == 0 ? "no " : amount(g) + " g ").orElse("") + name;
        }
    }

    public StepView {
        amounts = List.copyOf(amounts);
    }

    /** Every step of a session, by start. */
    public static List<StepView> all(Session session, Schedule schedule) {
        return all(session.batches(), SaltOfBatches.of(session), schedule);
    }

    /** Every step of one batch by itself, with the salt of its recipe. */
    public static List<StepView> all(Batch batch, Schedule schedule) {
        return all(List.of(batch), Map.of(), schedule);
    }

    private static List<StepView> all(List<Batch> batches, Map<Dish, SaltOfBatch> salt, Schedule schedule) {
        return schedule.steps().stream()
                .map(step -> of(batchOf(batches, step), step, Optional.ofNullable(salt.get(step.dish()))))
                .toList();
    }

    private static Batch batchOf(List<Batch> batches, PlacedStep step) {
        return batches.stream()
                .filter(batch -> batch.dish().equals(step.dish()))
                .findFirst()
                .orElseThrow();
    }

    private static StepView of(Batch batch, PlacedStep step, Optional<SaltOfBatch> salt) {
        List<Amount> amounts = new ArrayList<>();
        if (step.number().isPresent()) {
            batch.dish()
                    .steps()
                    .get(step.number().getAsInt() - 1)
                    .with()
                    .forEach(handled -> amounts.addAll(of(batch, handled, salt)));
        }
        return new StepView(step, amounts);
    }

    /** What is always at home, for the whole batch: And, to taste: 12 g salt, bay leaf. */
    public static String staples(Session session, Batch batch) {
        Optional<SaltOfBatch> salt =
                Optional.ofNullable(SaltOfBatches.of(session).get(batch.dish()));
        return "And, to taste: "
                + batch.dish().staples().stream()
                        .flatMap(staple -> of(batch, new Handled.OfStaple(staple, BigDecimal.ONE), salt).stream())
                        .map(Amount::says)
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** Nothing of what no container has; of salt that is left out, that it is. */
    private static List<Amount> of(Batch batch, Handled handled, Optional<SaltOfBatch> salt) {
        boolean salted =
                handled instanceof Handled.OfStaple staple && staple.staple().isSalt() && salt.isPresent();
        Optional<BigDecimal> grams =
                salted ? salt.map(s -> s.grams().multiply(((Handled.OfStaple) handled).share())) : batch.grams(handled);
        return !salted && grams.filter(g -> g.signum() == 0).isPresent()
                ? List.of()
                : List.of(handled.match(new Handled.Cases<Amount>() {
                    @Override
                    public Amount food(Handled.OfFood food) {
                        return new Amount(food.food().id(), food.name(), false, grams);
                    }

                    @Override
                    public Amount part(Handled.OfPart part) {
                        return new Amount(part.part(), part.part(), false, grams);
                    }

                    @Override
                    public Amount staple(Handled.OfStaple staple) {
                        return new Amount(staple.name(), staple.name(), true, grams);
                    }
                }));
    }

    /** 482 g onions, 50 g garlic, bay leaf; 4 pans of about 500 g, 2 at a time. Empty when there is nothing to say. */
    public String says() {
        String what = amounts.stream().map(Amount::says).collect(Collectors.joining(", "));
        return Stream.of(what, step.task().work().loads().map(StepView::says).orElse(""))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String says(StepWork.Loads loads) {
        return loads.number() + " " + loads.vessel() + "s of about " + loads.gramsEach() + " g"
                + (loads.atOnce() > 1 ? ", " + loads.atOnce() + " at a time" : ", one after another");
    }

    /** 20 min, oven, the first 4 hands on. */
    public String minutes() {
        int hands = step.handsOnMinutes();
        String handsOn =
                hands == 0 ? "" : hands == step.minutes() ? ", hands on" : ", the first " + hands + " hands on";
        return step.minutes() + " min" + step.on().map(a -> ", " + a.label()).orElse("") + handsOn;
    }

    private static String amount(BigDecimal grams) {
        return grams.compareTo(BigDecimal.TEN) < 0 ? Show.oneDecimal(grams) : Show.whole(grams);
    }
}
