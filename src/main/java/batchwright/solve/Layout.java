package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which containers each eater has on which day.
 *
 * @param containers for each seat and dish, how many in all; dishes that are not served are absent
 * @param groups for each seat, its days, like days together
 */
record Layout(Map<Seat, Map<Dish, Integer>> containers, Map<Seat, List<LikeDays>> groups) {
    /**
     * Days of one eater with the same containers.
     *
     * @param servings containers of each dish on each of these days
     * @param days their numbers, 1 being the cooking day
     */
    record LikeDays(Map<Dish, Integer> servings, List<Integer> days) {
        /** Whether the two could change places. */
        boolean isLike(LikeDays other) {
            return servings.equals(other.servings) && days.size() == other.days.size();
        }
    }

    /** The same with every day on its own. */
    Layout singly() {
        Map<Seat, List<LikeDays>> single = new LinkedHashMap<>();
        groups.forEach((seat, mine) -> single.put(
                seat,
                mine.stream()
                        .flatMap(
                                group -> group.days().stream().map(day -> new LikeDays(group.servings(), List.of(day))))
                        .toList()));
        return new Layout(containers, single);
    }

    boolean isSingly() {
        return groups.values().stream()
                .flatMap(List::stream)
                .allMatch(group -> group.days().size() == 1);
    }

    /** The same with one group of like days taken apart into two halves. */
    Layout halved(Seat whose, LikeDays group) {
        int half = group.days().size() / 2;
        Map<Seat, List<LikeDays>> finer = new LinkedHashMap<>(groups);
        finer.computeIfPresent(
                whose,
                (seat, mine) -> mine.stream()
                        .flatMap(g -> g.equals(group)
                                ? Stream.of(
                                        new LikeDays(g.servings(), g.days().subList(0, half)),
                                        new LikeDays(
                                                g.servings(),
                                                g.days().subList(half, g.days().size())))
                                : Stream.of(g))
                        .toList());
        return new Layout(containers, finer);
    }

    /** The containers of each day of an eater, the cooking day first. */
    List<Map<Dish, Integer>> days(Seat seat) {
        Map<Integer, Map<Dish, Integer>> byNumber = new TreeMap<>();
        groups.getOrDefault(seat, List.of())
                .forEach(group -> group.days().forEach(day -> byNumber.put(day, group.servings())));
        return List.copyOf(byNumber.values());
    }

    /** How many containers of each dish there are on all days together. */
    static Map<Dish, Integer> inAll(List<Map<Dish, Integer>> days) {
        Map<Dish, Integer> all = new LinkedHashMap<>();
        days.forEach(day -> day.forEach((dish, count) -> all.merge(dish, count, Integer::sum)));
        return all;
    }

    static List<LikeDays> grouped(List<Map<Dish, Integer>> days) {
        Map<Map<Dish, Integer>, List<Integer>> numbers = new LinkedHashMap<>();
        for (int day = 1; day <= days.size(); day++) {
            numbers.computeIfAbsent(days.get(day - 1), d -> new ArrayList<>()).add(day);
        }
        return numbers.entrySet().stream()
                .map(e -> new LikeDays(e.getKey(), e.getValue()))
                .toList();
    }
}
