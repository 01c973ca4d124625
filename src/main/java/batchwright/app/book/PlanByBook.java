package batchwright.app.book;

import batchwright.answer.Today.DayByBook;
import batchwright.answer.Today.Lacking;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.book.KeptPlans;
import batchwright.food.Kitchen;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What kept plans still want of an eater from a day on, served from the containers that the book knows of: the earliest day gets those that
 * must go first. Where the book does not say that a dish was filled, its containers are taken to be where the plan has them.
 */
final class PlanByBook {
    /** Plans reach no further. */
    private static final int MOST_DAYS = 60;

    private static final BigDecimal NINE = BigDecimal.valueOf(9);

    private final Kitchen kitchen;
    private final Book book;
    private final String eater;
    private final LocalDate today;
    /** Not yet given to a day. */
    private final List<BoxesLeft.Lot> free;
    /** Those of others, of which a plan may give some to this eater. */
    private final List<BoxesLeft.Lot> anothers;

    private final Map<LocalDate, DayByBook> days = new LinkedHashMap<>();

    /** @param boxes that may be eaten, of all eaters, what must go first in front */
    PlanByBook(Kitchen kitchen, LocalDate today, KeptPlans plans, Book book, String eater, List<BoxesLeft.Lot> boxes) {
        this.kitchen = kitchen;
        this.book = book;
        this.eater = eater;
        this.today = today;
        Map<Boolean, List<BoxesLeft.Lot>> mine = boxes.stream()
                .collect(Collectors.partitioningBy(lot -> lot.boxes().eater().equals(eater)));
        this.free = new ArrayList<>(mine.getOrDefault(true, List.of()));
        this.anothers = new ArrayList<>(mine.getOrDefault(false, List.of()));
        for (LocalDate date = today; date.isBefore(today.plusDays(MOST_DAYS)); date = date.plusDays(1)) {
            LocalDate day = date;
            plans.on(day, eater)
                    .ifPresent(plan ->
                            plan.on(day, eater).ifPresent(planned -> days.put(day, serve(plan, day, planned))));
        }
        for (LocalDate date = today; date.isBefore(today.plusDays(MOST_DAYS)); date = date.plusDays(1)) {
            LocalDate day = date;
            plans.on(day).map(plan -> plan.on(day)).orElse(List.of()).forEach(others -> give(others, day));
        }
    }

    /** What a plan has others eat of this eater's is not free. */
    private void give(EatersDay others, LocalDate date) {
        if (!others.eater().equals(eater)) {
            notEaten(others, date).stream()
                    .filter(box -> box.of(others.eater()).equals(eater))
                    .forEach(box -> taken(box, date));
        }
    }

    Optional<DayByBook> on(LocalDate date) {
        return Optional.ofNullable(days.get(date));
    }

    /** What the days after one lack. */
    List<Lacking> lackingAfter(LocalDate date) {
        return days.values().stream()
                .flatMap(day -> day.lacking().stream())
                .filter(lacking -> lacking.day().isAfter(date))
                .toList();
    }

    /** Containers that no day wants. */
    List<BoxesLeft.Lot> over() {
        return List.copyOf(free);
    }

    private DayByBook serve(KeptPlan plan, LocalDate date, EatersDay planned) {
        List<PlannedBox> boxes = new ArrayList<>();
        List<Lacking> lacking = new ArrayList<>();
        BigDecimal kcal = ofSnacks(planned.snacks()).negate();
        for (PlannedBox box : planned.boxes()) {
            kcal = kcal.subtract(times(each(plan, planned, box), box.count()));
        }
        for (PlannedBox box : notEaten(planned, date)) {
            BigDecimal each = each(plan, planned, box);
            int missing = box.count();
            if (!box.isNew() || isFilled(plan, planned.day(), box.dish())) {
                for (BoxesLeft.Lot lot : taken(box, date)) {
                    boxes.add(new PlannedBox(box.dish(), lot.count(), lot.place() == Place.FREEZER, box.before()));
                    missing -= lot.count();
                    kcal = kcal.add(times(lot.each().kcal().orElse(each), lot.count()));
                }
            } else {
                boxes.add(box);
                kcal = kcal.add(times(each, box.count()));
                missing = 0;
            }
            if (missing > 0) {
                lacking.add(new Lacking(date, box.dish(), missing, times(each, missing)));
            }
        }
        List<PlannedSnack> snacks = snacksNotEaten(planned.snacks(), date);
        BigDecimal left = planned.kcal().add(kcal).add(ofSnacks(snacks)).max(BigDecimal.ZERO);
        return new DayByBook(planned, together(boxes), snacks, lacking, left);
    }

    private BigDecimal each(KeptPlan plan, EatersDay planned, PlannedBox box) {
        return box.before()
                .map(KeptPlan.FromBefore::kcal)
                .or(() -> plan.fill(box.dish(), eater, planned.day())
                        .map(KeptFill::each)
                        .flatMap(Event.Holds::kcal))
                .orElse(BigDecimal.ZERO);
    }

    private BigDecimal ofSnacks(List<PlannedSnack> snacks) {
        return snacks.stream()
                .map(snack -> Completed.kcal(kitchen, new Weight(snack.food(), snack.grams()))
                        .orElse(BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What is planned as frozen and as not frozen may come from one place. */
    private List<PlannedBox> together(List<PlannedBox> boxes) {
        List<PlannedBox> sums = new ArrayList<>();
        for (PlannedBox box : boxes) {
            int count = box.count();
            for (PlannedBox sum : List.copyOf(sums)) {
                if (sum.dish().equals(box.dish())
                        && sum.frozen() == box.frozen()
                        && sum.of(eater).equals(box.of(eater))) {
                    count += sum.count();
                    sums.remove(sum);
                }
            }
            sums.add(box.with(count));
        }
        return sums;
    }

    /** Whether the book has the containers of the session that the day is cooked for in. */
    private boolean isFilled(KeptPlan plan, int day, String dish) {
        LocalDate cooked = plan.date(plan.sessionOf(day));
        return book.all(Event.Filled.class)
                .anyMatch(line -> !line.day().isBefore(cooked)
                        && !line.day().isAfter(today)
                        && line.event().boxes().dish().equals(dish)
                        && line.event().boxes().eater().equals(eater));
    }

    private List<BoxesLeft.Lot> taken(PlannedBox box, LocalDate date) {
        List<BoxesLeft.Lot> taken = new ArrayList<>();
        List<BoxesLeft.Lot> there = box.of(eater).equals(eater) ? free : anothers;
        int wanted = box.count();
        for (BoxesLeft.Lot lot : List.copyOf(there)) {
            boolean fits = lot.isOf(new Boxes(1, box.dish(), box.of(eater)))
                    && !lot.until().isBefore(date);
            int count = fits ? Math.min(wanted, lot.count()) : 0;
            if (count > 0) {
                taken.add(lot.of(count));
                wanted -= count;
                int at = there.indexOf(lot);
                there.remove(at);
                if (lot.count() > count) {
                    there.add(at, lot.of(lot.count() - count));
                }
            }
        }
        return taken;
    }

    private List<PlannedBox> notEaten(EatersDay day, LocalDate date) {
        List<PlannedBox> planned = day.boxes();
        List<PlannedBox> rest = new ArrayList<>();
        for (String dish : planned.stream().map(PlannedBox::dish).distinct().toList()) {
            int eaten = book.on(date)
                    .map(entry -> entry.event() instanceof Event.AteBoxes ate
                                    && ate.eater().equals(day.eater())
                                    && ate.boxes().dish().equals(dish)
                            ? ate.boxes().count()
                            : 0)
                    .reduce(0, Integer::sum);
            for (PlannedBox box : planned) {
                if (box.dish().equals(dish)) {
                    int gone = Math.min(eaten, box.count());
                    eaten -= gone;
                    if (box.count() > gone) {
                        rest.add(box.with(box.count() - gone));
                    }
                }
            }
        }
        return rest;
    }

    /** A snack of which about as much was eaten as is planned is not named again. */
    private List<PlannedSnack> snacksNotEaten(List<PlannedSnack> planned, LocalDate date) {
        return planned.stream().filter(snack -> !isEaten(snack, date)).toList();
    }

    private boolean isEaten(PlannedSnack snack, LocalDate date) {
        BigDecimal eaten = book.on(date)
                .map(entry -> entry.event() instanceof Event.AteFood ate
                                && ate.eater().equals(eater)
                                && ate.food().food().equals(snack.food())
                        ? ate.food().grams()
                        : BigDecimal.ZERO)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return eaten.signum() > 0
                && eaten.multiply(BigDecimal.TEN).compareTo(snack.grams().multiply(NINE)) >= 0;
    }

    private static BigDecimal times(BigDecimal each, int count) {
        return each.multiply(BigDecimal.valueOf(count));
    }
}
