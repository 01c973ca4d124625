package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One line of the shopping list for several cooking sessions together: one food in one size of pack.
 *
 * @param line packs for all of them
 * @param sessions numbers of those that it is for, the first being 1
 */
public record BoughtTogether(BuyLine line, List<Integer> sessions) {
    public BoughtTogether {
        sessions = List.copyOf(sessions);
    }

    /** What is bought for all of these, in the order in which it is needed. */
    public static List<BoughtTogether> of(List<Session> sessions) {
        Map<Pack, BoughtTogether> lines = new LinkedHashMap<>();
        for (int s = 0; s < sessions.size(); s++) {
            List<Integer> here = List.of(s + 1);
            BuyLine.of(sessions.get(s))
                    .forEach(line -> line.pack()
                            .ifPresent(
                                    pack -> lines.merge(pack, new BoughtTogether(line, here), BoughtTogether::plus)));
        }
        return List.copyOf(lines.values());
    }

    private BoughtTogether plus(BoughtTogether other) {
        List<Integer> all = new ArrayList<>(sessions);
        all.addAll(other.sessions);
        return new BoughtTogether(
                new BuyLine(
                        line.food(),
                        line.pack(),
                        line.packs() + other.line.packs(),
                        BigDecimal.ZERO,
                        line.usedGrams().add(other.line.usedGrams())),
                all);
    }

    /** Perishable foods that are bought for another session than the first of these. */
    public static Set<Food> perishableForLater(List<Session> sessions) {
        Set<Food> perishable = new LinkedHashSet<>();
        sessions.stream()
                .skip(1)
                .forEach(session -> BuyLine.of(session).stream()
                        .filter(line -> line.pack().isPresent() && line.food().perishable())
                        .forEach(line -> perishable.add(line.food())));
        return perishable;
    }
}
