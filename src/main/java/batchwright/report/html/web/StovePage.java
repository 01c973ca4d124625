package batchwright.report.html.web;

import batchwright.answer.PotAnswer;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPart;
import batchwright.book.KeptSession;
import batchwright.book.KeptWork;
import batchwright.book.KeptWork.KeptStep;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.report.html.part.Table;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * At the stove: step by step with its amounts, then what goes into each box.
 *
 * @param session which cooking this is; empty when none is planned
 * @param pot the pot that is shared out
 * @param doubt what the book did not take
 */
public record StovePage(
        Frame frame, Optional<Cooking> session, List<Step> steps, List<Fill> dishes, Pot pot, Doubt doubt) {
    public StovePage {
        steps = List.copyOf(steps);
        dishes = List.copyOf(dishes);
    }

    /**
     * @param key by which a device knows how far it was
     * @param minutes until all is done, 0 when the order of work was not kept
     * @param filled minutes until all is filled
     * @param evening what is to be done the evening before
     */
    public record Cooking(String key, String when, int minutes, int filled, int boxes, List<String> evening) {}

    /**
     * @param title which dish and step, and where
     * @param with what is taken in hand
     * @param says how long, and how much of it is hands on
     * @param timer by which name it rings
     */
    public record Step(String title, String text, List<Taken> with, String says, String timer, Clock clock) {}

    /** @param amount empty for what goes in to taste */
    public record Taken(String amount, String what) {}

    /** Minutes since the start of cooking. */
    public record Clock(int start, int end) {
        public int minutes() {
            return end - start;
        }
    }

    /**
     * Boxes of a dish.
     *
     * @param boxes what goes into each as planned
     * @param parts that may be in a pot
     */
    public record Fill(String dish, String name, Table boxes, List<String> parts, boolean isCooked, boolean isFilled) {}

    /**
     * A pot that was weighed, as typed.
     *
     * @param shares grams for each box; empty when it could not be shared out
     */
    public record Pot(String dish, String part, String full, String empty, Optional<Shares> shares) {
        public static final Pot NONE = new Pot("", "", "", "", Optional.empty());

        public boolean isOf(Fill fill) {
            return dish.equals(fill.dish());
        }
    }

    /**
     * Something that was to be written and cannot well be; the user may say that it is right.
     *
     * @param what cooked or filled
     */
    public record Doubt(String what, String dish) {
        public static final Doubt NONE = new Doubt("", "");
    }

    public boolean isDoubted(String what, String dish) {
        return doubt.equals(new Doubt(what, dish));
    }

    public record Shares(Table table, List<String> says) {
        /** @param name of an eater by its short name */
        public static Shares of(PotAnswer answer, UnaryOperator<String> name) {
            var table = new Table("%s: %s g in the pot".formatted(answer.part(), Show.whole(answer.cookedGrams())))
                    .words("for")
                    .numbers("boxes")
                    .numbers("g into each")
                    .numbers("planned g")
                    .numbers("kcal each")
                    .numbers("g protein each");
            answer.fills()
                    .forEach(fill -> table.row(
                            name.apply(fill.eater()),
                            Integer.toString(fill.containers()),
                            Show.whole(fill.grams().now()),
                            Show.whole(fill.grams().planned()),
                            Show.whole(fill.kcal().now()),
                            Show.whole(fill.proteinG().now())));
            return new Shares(
                    table,
                    answer.overGrams().signum() == 0
                            ? List.of()
                            : List.of(Show.whole(answer.overGrams()) + " g stay in the pot: spread them."));
        }
    }

    public static StovePage nothing(Frame frame) {
        return new StovePage(frame, Optional.empty(), List.of(), List.of(), Pot.NONE, Doubt.NONE);
    }

    /** @param name of an eater by its short name */
    public static StovePage of(
            Frame frame, KeptSession session, Kitchen kitchen, Done done, UnaryOperator<String> name) {
        var making = new Making(session, kitchen, name);
        return new StovePage(
                frame,
                Optional.of(making.cooking()),
                session.work().map(making::steps).orElse(List.of()),
                session.batches().stream()
                        .map(batch -> making.fill(batch, done))
                        .toList(),
                Pot.NONE,
                Doubt.NONE);
    }

    public StovePage with(Pot weighed, Doubt doubted) {
        return new StovePage(frame, session, steps, dishes, weighed, doubted);
    }

    /** Dishes that the book has already. */
    public record Done(Set<String> cooked, Set<String> filled) {}

    private record Making(KeptSession session, Kitchen kitchen, UnaryOperator<String> name) {
        Cooking cooking() {
            return new Cooking(
                    session.plan().key() + "-" + session.day(),
                    "Cooking of " + Dates.inFull(session.date()),
                    session.work().map(KeptWork::minutes).orElse(0),
                    session.work().map(Making::filled).orElse(0),
                    session.batches().stream()
                            .flatMap(batch -> batch.fills().stream())
                            .mapToInt(KeptFill::containers)
                            .sum(),
                    session.batches().stream()
                            .flatMap(batch -> batch.dayBefore().stream())
                            .toList());
        }

        /** Until the last step of which the dish's boxes are filled: what comes then is to wash up. */
        private static int filled(KeptWork work) {
            return work.steps().stream()
                    .filter(step -> step.text().startsWith("Fill "))
                    .mapToInt(step -> step.at().end())
                    .max()
                    .orElse(work.minutes());
        }

        List<Step> steps(KeptWork work) {
            return work.steps().stream().map(this::step).toList();
        }

        private Step step(KeptStep step) {
            String number = step.number().isPresent() ? "step " + step.number().getAsInt() : "last";
            String place = place(step);
            String dish = shortly(step.dish());
            return new Step(
                    Show.capital(dish)
                            + (step.number().isPresent() ? ", " + number : "")
                            + (place.isEmpty() ? "" : ", " + place),
                    step.text(),
                    step.with().stream().map(this::taken).toList(),
                    says(step),
                    Show.capital(number) + (place.isEmpty() ? "" : ", " + place) + ": " + dish,
                    new Clock(step.at().start(), step.at().end()));
        }

        /** Burner 2; oven, shelf 1 and 2. */
        private static String place(KeptStep step) {
            return step.place()
                    .on()
                    .map(on -> on.replace('_', ' ') + (step.place().places().isEmpty() ? "" : " " + places(step)))
                    .orElse("");
        }

        private static String places(KeptStep step) {
            return step.place().places().stream()
                    .map(String::valueOf)
                    .reduce((one, other) -> one + "+" + other)
                    .orElse("");
        }

        /** 39 min, 2 of them hands on, 200 °C; 4 pans of about 500 g, 2 at a time. */
        private static String says(KeptStep step) {
            int hands = step.at().handsOnUntil() - step.at().start();
            List<String> says = new ArrayList<>();
            says.add(step.at().all() + " min");
            if (hands > 0) {
                says.add(hands == step.at().all() ? "hands on" : hands + " of them hands on");
            }
            step.place().celsius().ifPresent(celsius -> says.add(celsius + " °C"));
            step.loads()
                    .ifPresent(loads -> says.add("%s %ss of about %s g, %s"
                            .formatted(
                                    loads.number(),
                                    loads.vessel(),
                                    loads.gramsEach(),
                                    loads.atOnce() > 1 ? loads.atOnce() + " at a time" : "one after another")));
            return String.join(", ", says) + ".";
        }

        private Taken taken(KeptWork.Taken taken) {
            String what = Optional.ofNullable(kitchen.foods().get(taken.what()))
                    .map(Food::name)
                    .orElse(taken.what());
            return new Taken(
                    taken.grams()
                            .map(grams ->
                                    (grams.compareTo(BigDecimal.TEN) < 0 ? Show.oneDecimal(grams) : Show.whole(grams))
                                            + " g")
                            .orElse(""),
                    what);
        }

        private static String shortly(String dish) {
            return dish.replace('_', ' ');
        }

        Fill fill(KeptBatch batch, Done done) {
            List<String> parts = batch.fills().stream()
                    .flatMap(fill -> fill.parts().stream())
                    .filter(part -> part.rawGrams() > 0)
                    .map(KeptPart::part)
                    .distinct()
                    .toList();
            return new Fill(
                    batch.dish(),
                    kitchen.dish(batch.dish()).map(Dish::name).orElse(shortly(batch.dish())),
                    boxes(batch, parts),
                    parts,
                    done.cooked().contains(batch.dish()),
                    done.filled().contains(batch.dish()));
        }

        private Table boxes(KeptBatch batch, List<String> parts) {
            var table = new Table("Into each box, as planned, cooked g")
                    .words("for")
                    .numbers("boxes");
            parts.forEach(table::numbers);
            for (KeptFill fill : batch.fills()) {
                List<String> row = new ArrayList<>(List.of(
                        fill.eater().map(name).orElse("nobody in particular"), Integer.toString(fill.containers())));
                parts.forEach(part -> row.add(fill.parts().stream()
                        .filter(kept -> kept.part().equals(part) && kept.rawGrams() > 0)
                        .map(kept -> Integer.toString(kept.cookedGrams()))
                        .findFirst()
                        .orElse("–")));
                table.row(row.toArray(new String[0]));
            }
            return table;
        }
    }
}
