package batchwright.app.book;

import batchwright.answer.Thawing;
import batchwright.answer.Today.DayByBook;
import batchwright.answer.Today.Due;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Place;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlans;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be done on a day besides eating: cook, freeze, thaw, throw away. */
record DueToday(KeptPlans plans, Book book, LocalDate day) {
    /** That a container takes to thaw. */
    private static final int MOST_EVENINGS = 2;

    /**
     * @param eaters what each of them has by plan and book
     * @param boxes all that are left
     */
    List<Due> of(Map<String, PlanByBook> eaters, List<BoxesLeft.Lot> boxes) {
        List<Due> due = new ArrayList<>();
        plans.on(day)
                .ifPresent(p -> p.batches().stream()
                        .filter(batch -> p.date(batch.day()).equals(day))
                        .forEach(batch -> cooking(p, batch, due)));
        thawing(eaters).forEach(thaw -> due.add(Due.boxes(Due.Kind.THAW, thaw, Place.FREEZER)));
        boxes.stream()
                .filter(lot -> lot.until().isBefore(day))
                .forEach(lot -> due.add(Due.boxes(Due.Kind.PAST, lot.boxes(), lot.place())));
        return due;
    }

    /** What comes out of the freezer tonight: a large container is eaten only the day after tomorrow. What was thawed today is done. */
    List<Boxes> thawing(Map<String, PlanByBook> eaters) {
        List<Boxes> all = new ArrayList<>();
        eaters.forEach((eater, byBook) -> {
            Map<Boxes, Integer> thaw = new LinkedHashMap<>();
            for (int evenings = 1; evenings <= MOST_EVENINGS; evenings++) {
                LocalDate date = day.plusDays(evenings);
                for (PlannedBox box : byBook.on(date).map(DayByBook::boxes).orElse(List.of())) {
                    if (box.frozen() && evenings(eater, date, box) == evenings) {
                        thaw.merge(new Boxes(1, box.dish(), box.of(eater)), box.count(), Integer::sum);
                    }
                }
            }
            thaw.forEach((one, count) -> all.add(new Boxes(count, one.dish(), one.eater())));
        });
        return all;
    }

    private int evenings(String eater, LocalDate date, PlannedBox box) {
        Optional<KeptPlan> plan = plans.on(date, eater);
        int day = plan.map(p -> p.dayOf(date)).orElse(1);
        int inSession = plan.map(p -> day - p.sessionOf(day) + 1).orElse(1);
        return plan.flatMap(p -> p.fill(box.dish(), eater, day))
                .map(fill -> Thawing.evenings(fill.millilitres(), inSession))
                .orElse(1);
    }

    private void cooking(KeptPlan plan, KeptBatch batch, List<Due> due) {
        boolean cooked = book.on(day)
                .anyMatch(entry -> entry.event() instanceof Event.Cooked done
                        && done.dish().equals(batch.dish()));
        if (!cooked) {
            due.add(Due.batch(Due.Kind.COOK, batch.dish(), 1));
        }
        int next = plan.batches().stream()
                .mapToInt(KeptBatch::day)
                .filter(first -> first > batch.day())
                .min()
                .orElse(plan.days() + 1);
        int frozen = plan.eatersDays().stream()
                .filter(mine -> mine.day() >= batch.day() && mine.day() < next)
                .flatMap(mine -> mine.boxes().stream())
                .filter(box -> box.isNew() && box.frozen() && box.dish().equals(batch.dish()))
                .mapToInt(PlannedBox::count)
                .sum();
        if (frozen > inFreezer(batch.dish())) {
            due.add(Due.batch(Due.Kind.FREEZE, batch.dish(), frozen - inFreezer(batch.dish())));
        }
    }

    /** What went there today. */
    private int inFreezer(String dish) {
        return book.on(day)
                .mapToInt(entry -> {
                    if (entry.event() instanceof Event.Filled filled && filled.place() == Place.FREEZER) {
                        return filled.boxes().dish().equals(dish)
                                ? filled.boxes().count()
                                : 0;
                    } else if (entry.event() instanceof Event.Moved moved && moved.to() == Place.FREEZER) {
                        return moved.boxes().dish().equals(dish) ? moved.boxes().count() : 0;
                    }
                    return 0;
                })
                .sum();
    }
}
