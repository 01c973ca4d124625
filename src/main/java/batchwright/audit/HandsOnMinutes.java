package batchwright.audit;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.HandTimes;
import batchwright.food.Handled;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/** Cooking takes the hands no longer than the kitchen allows, by the laws of the files' own dishes and the grams of the plan. */
record HandsOnMinutes() implements Inspection {
    private static final BigDecimal KILOGRAM = BigDecimal.valueOf(1000);
    private static final BigDecimal NOT_COUNTED = BigDecimal.valueOf(HandTimes.TOLERANCE);

    @Override
    public String name() {
        return "hands-on minutes";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Equipment equipment = evidence.request().kitchen().equipment();
        equipment.limits().handsOnMinutes().ifPresent(most -> {
            long minutes = 0;
            boolean wiped = false;
            for (Batch batch : evidence.session().batches()) {
                Dish dish = evidence.known().dish(batch.dish()).orElse(batch.dish());
                if (evidence.request().left().has(dish)) {
                    continue;
                }
                minutes += new InOneBatch(dish, batch, equipment).minutes();
                wiped |= HandTimes.areCounted(dish);
            }
            minutes += wiped ? Math.round(HandTimes.WIPE) : 0;
            if (minutes > most) {
                findings.add("cooking takes the hands " + minutes + " minutes, at most " + most);
            }
        });
    }

    /** The hands on one batch, without the last wipe of the kitchen. */
    private record InOneBatch(Dish dish, Batch batch, Equipment equipment) {
        long minutes() {
            boolean counted = HandTimes.areCounted(dish);
            boolean fills = false;
            long minutes = 0;
            BigDecimal washing = BigDecimal.valueOf(HandTimes.WASH_BOARD);
            for (Step step : dish.steps()) {
                if (!step.dayBefore() && isDone(step)) {
                    minutes += up(step(step));
                    washing = washing.add(BigDecimal.valueOf(HandTimes.washing(dish, step)));
                }
                fills |= step.fills();
            }
            if (!fills) {
                minutes += up(counted ? portioning() : BigDecimal.valueOf(containers()));
            }
            return minutes + (counted ? up(washing) : 0);
        }

        private boolean isDone(Step step) {
            return step.parts().isEmpty() || step.parts().stream().anyMatch(part -> rawGrams(part) > 0);
        }

        private BigDecimal step(Step step) {
            Way way = step.way(equipment).orElse(step.way());
            BigDecimal minutes = BigDecimal.ZERO;
            for (TimeLaw law : way.laws()) {
                if (law instanceof TimeLaw.HandWork work) {
                    minutes = minutes.add(BigDecimal.valueOf(work.minutes()));
                    for (Map.Entry<Handled, Double> each : work.perKg().entrySet()) {
                        minutes = minutes.add(BigDecimal.valueOf(each.getValue())
                                .multiply(bought(each.getKey()))
                                .divide(KILOGRAM));
                    }
                } else if (law instanceof TimeLaw.Loads loads && way.uses(Appliance.BURNER)) {
                    minutes = minutes.add(inPans(loads));
                } else if (law instanceof TimeLaw.ForFive five) {
                    minutes = minutes.add(BigDecimal.valueOf(Math.max(
                            five.handsOn(),
                            (five.handsOn() * containers() + Step.FOR_CONTAINERS - 1) / Step.FOR_CONTAINERS)));
                }
            }
            return step.fills() && !way.isForFive() ? minutes.add(portioning()) : minutes;
        }

        private BigDecimal inPans(TimeLaw.Loads loads) {
            BigDecimal grams = loads.of().stream().map(this::edible).reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal load = BigDecimal.valueOf(loads.grams() * HandTimes.panSize(equipment));
            BigDecimal inOne = load.multiply(BigDecimal.valueOf(HandTimes.pansAtOnce(equipment)));
            BigDecimal rounds = BigDecimal.valueOf(up(grams.divide(inOne, Tolerance.DIGITS)));
            if (rounds.signum() == 0) {
                return BigDecimal.ZERO;
            }
            return BigDecimal.valueOf(loads.minutes())
                    .add(rounds.multiply(BigDecimal.valueOf(loads.each())))
                    .add(rounds.subtract(BigDecimal.ONE).multiply(BigDecimal.valueOf(HandTimes.BETWEEN_LOADS)));
        }

        private BigDecimal portioning() {
            BigDecimal minutes = BigDecimal.valueOf(HandTimes.PORTION_START);
            for (Fill fill : batch.fills()) {
                int parts = 0;
                for (Portion portion : fill.portions()) {
                    parts += portion.rawGrams() > 0 ? 1 : 0;
                }
                BigDecimal each = BigDecimal.valueOf(HandTimes.PORTION_PART)
                        .multiply(BigDecimal.valueOf(parts))
                        .add(BigDecimal.valueOf(HandTimes.PORTION_CONTAINER));
                minutes = minutes.add(each.multiply(BigDecimal.valueOf(fill.containers())));
            }
            return minutes;
        }

        private int containers() {
            int containers = 0;
            for (Fill fill : batch.fills()) {
                containers += fill.containers();
            }
            return containers;
        }

        private long rawGrams(String part) {
            long grams = 0;
            for (Fill fill : batch.fills()) {
                for (Portion portion : fill.portions()) {
                    grams += portion.part().name().equals(part) ? (long) portion.rawGrams() * fill.containers() : 0;
                }
            }
            return grams;
        }

        private BigDecimal bought(Handled handled) {
            BigDecimal edible = edible(handled);
            return handled instanceof Handled.OfFood food
                    ? edible.multiply(BigDecimal.valueOf(100))
                            .divide(BigDecimal.valueOf(100).subtract(food.food().refusePercent()), Tolerance.DIGITS)
                    : edible;
        }

        private BigDecimal edible(Handled handled) {
            if (handled instanceof Handled.OfPart part) {
                return BigDecimal.valueOf(rawGrams(part.part()));
            }
            BigDecimal grams = BigDecimal.ZERO;
            if (handled instanceof Handled.OfFood food) {
                List<Part> parts = dish.parts().stream()
                        .filter(p -> food.part().isEmpty() || food.part().get().equals(p.name()))
                        .toList();
                for (Part part : parts) {
                    BigDecimal share = part.shares().getOrDefault(food.food(), BigDecimal.ZERO);
                    grams = grams.add(share.multiply(food.share()).multiply(BigDecimal.valueOf(rawGrams(part.name()))));
                }
            }
            return grams;
        }

        private static long up(BigDecimal minutes) {
            return minutes.subtract(NOT_COUNTED)
                    .setScale(0, RoundingMode.CEILING)
                    .longValueExact();
        }
    }
}
