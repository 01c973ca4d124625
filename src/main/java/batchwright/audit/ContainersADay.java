package batchwright.audit;

import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.Fill;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import batchwright.plan.left.LeftDish;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Each day has exactly the containers asked for, a dish no more often than allowed, be it cooked now or before; what is served is what was
 * packed; and all that is left from before is eaten, by whom and when it was said, or no more than there is of what is only offered.
 */
record ContainersADay() implements Inspection {
    private record Packed(String dish, String eater) {
        static Packed of(String dish, Eater eater) {
            return new Packed(dish, eater.id());
        }
    }

    @Override
    public String name() {
        return "containers a day";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> inspectDay(evidence, seat, day, findings));
        compare(served(evidence), packed(evidence, findings), findings);
        evidence.request().left().dishes().forEach(left -> inspectLeft(left, evidence, findings));
    }

    private static void inspectLeft(LeftDish left, Evidence evidence, Findings findings) {
        Map<Integer, Integer> eaten = new LinkedHashMap<>();
        evidence.days((seat, day) -> day.servings().stream()
                .filter(serving -> serving.dish().id().equals(left.dish().id()))
                .forEach(serving -> {
                    eaten.merge(day.day(), serving.count(), Integer::sum);
                    if (!left.isFor(seat.eater().id())) {
                        findings.add(Say.day(seat, day) + ": " + left.dish().id() + " is for somebody else");
                    }
                }));
        int all = eaten.values().stream().mapToInt(Integer::intValue).sum();
        if (left.isEaten() ? all != left.containers() : all > left.containers()) {
            findings.add(left.dish().id() + ": " + left.containers() + " containers are left, " + all + " are eaten");
        }
        if (!left.byDay().isEmpty() && !left.byDay().equals(eaten)) {
            findings.add(left.dish().id() + " is eaten on other days than those that it stays on");
        }
    }

    private static void inspectDay(Evidence evidence, Seat seat, Day day, Findings findings) {
        Map<String, Integer> byDish = new LinkedHashMap<>();
        int all = 0;
        for (Serving serving : day.servings()) {
            if (serving.count() < 1) {
                findings.add(Say.day(seat, day) + ": " + serving.count() + " containers of "
                        + serving.dish().id() + " is no count");
            }
            all += serving.count();
            byDish.merge(evidence.request().left().origin(serving.dish().id()), serving.count(), Integer::sum);
        }
        int wanted = seat.eater().wishes().containersADay();
        if (all != wanted) {
            findings.add(Say.day(seat, day) + ": " + all + " containers, exactly " + wanted + " were asked for");
        }
        byDish.forEach((dish, count) -> {
            if (count > seat.eater().wishes().meals().sameDishADay()) {
                findings.add(Say.day(seat, day) + ": " + count + " containers of " + dish + ", at most "
                        + seat.eater().wishes().meals().sameDishADay());
            }
        });
    }

    private static Map<Packed, Integer> served(Evidence evidence) {
        Map<Packed, Integer> served = new LinkedHashMap<>();
        evidence.days((seat, day) -> day.servings()
                .forEach(s -> served.merge(Packed.of(s.dish().id(), seat.eater()), s.count(), Integer::sum)));
        return served;
    }

    private static Map<Packed, Integer> packed(Evidence evidence, Findings findings) {
        Map<Packed, Integer> packed = new LinkedHashMap<>();
        evidence.fills((Batch batch, Fill fill) -> fill.eater().ifPresent(eater -> {
            var key = Packed.of(batch.dish().id(), eater);
            if (packed.merge(key, fill.containers(), Integer::sum) != fill.containers()) {
                findings.add(key.dish() + " is packed in two ways for " + key.eater());
            }
        }));
        return packed;
    }

    private static void compare(Map<Packed, Integer> served, Map<Packed, Integer> packed, Findings findings) {
        Set<Packed> keys = new LinkedHashSet<>(served.keySet());
        keys.addAll(packed.keySet());
        for (Packed key : keys) {
            int eaten = served.getOrDefault(key, 0);
            int cooked = packed.getOrDefault(key, 0);
            if (eaten != cooked) {
                findings.add(key.dish() + " for " + key.eater() + ": " + cooked + " containers packed, " + eaten
                        + " served");
            }
        }
    }
}
