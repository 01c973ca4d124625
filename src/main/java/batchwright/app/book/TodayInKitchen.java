package batchwright.app.book;

import batchwright.answer.Thawing;
import batchwright.answer.Today;
import batchwright.answer.Today.Due;
import batchwright.answer.Today.ForEater;
import batchwright.answer.Today.PlanOfDay;
import batchwright.answer.Today.SpoilsSoon;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlans;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.text.NearestName;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What to eat, thaw, use up, freeze and cook on a day, by the kept plan and the book. */
public final class TodayInKitchen {
    /** What spoils within so many days is to be used up. Our choice. */
    private static final int SOON_DAYS = 2;
    /** That a container takes to thaw. */
    private static final int MOST_EVENINGS = 2;

    private final Workspace workspace;
    private final LocalDate day;
    private final Kitchen kitchen;
    private final Book book;
    private final KeptPlans plans;
    private final List<BoxesLeft.Lot> boxes;

    private TodayInKitchen(Workspace workspace) {
        this.workspace = workspace;
        this.day = workspace.cookingDay();
        this.kitchen = workspace.kitchen();
        this.book = workspace.book();
        this.plans = workspace.keptPlans();
        this.boxes = BoxesLeft.of(book).lots();
    }

    /** @throws Refused when a file has an error */
    public static Today answer(Workspace workspace) {
        return new TodayInKitchen(workspace).today();
    }

    private Today today() {
        Optional<KeptPlan> plan = plans.on(day);
        return new Today(
                day,
                plan.map(p -> new PlanOfDay(p.cookingDay(), p.dayOf(day), p.days())),
                eaters(),
                boxes.stream().filter(this::isOffered).toList(),
                useUp(),
                due(plan),
                notes());
    }

    private List<ForEater> eaters() {
        Set<String> ids = new LinkedHashSet<>();
        List<LocalDate> dates = List.of(day, day.plusDays(1));
        dates.forEach(date -> plans.on(date).ifPresent(plan -> plan.on(date).forEach(mine -> ids.add(mine.eater()))));
        boxes.forEach(lot -> ids.add(lot.boxes().eater()));
        return ids.stream()
                .map(id -> new ForEater(id, planned(id, day), planned(id, day.plusDays(1)), eaten(id), isClosed(id)))
                .toList();
    }

    /** Not to an eater who avoids the dish; what is past its day stays, to be thrown away. */
    private boolean isOffered(BoxesLeft.Lot lot) {
        return lot.until().isBefore(day)
                || workspace
                        .source()
                        .eater(lot.boxes().eater(), Optional.of(kitchen))
                        .value()
                        .map(eater -> MayEat.to(eater, lot, kitchen))
                        .orElse(true);
    }

    private static String notOffered(BoxesLeft.Lot lot) {
        return "%s x %s for %s: avoided by this eater, so not for eating. Give it to somebody else."
                .formatted(lot.count(), lot.boxes().dish(), lot.boxes().eater());
    }

    private Optional<EatersDay> planned(String eater, LocalDate date) {
        return plans.on(date, eater).flatMap(plan -> plan.on(date, eater));
    }

    private BigDecimal eaten(String eater) {
        BigDecimal kcal = BigDecimal.ZERO;
        for (var entry : book.on(day).toList()) {
            if (entry.event() instanceof Event.AteBoxes ate && ate.eater().equals(eater)) {
                kcal = kcal.add(ate.kcal().orElse(BigDecimal.ZERO));
            } else if (entry.event() instanceof Event.AteFood ate && ate.eater().equals(eater)) {
                kcal = kcal.add(ate.kcal().orElse(BigDecimal.ZERO));
            } else if (entry.event() instanceof Event.AteOut ate && ate.eater().equals(eater)) {
                kcal = kcal.add(ate.kcal());
            }
        }
        return kcal;
    }

    private boolean isClosed(String eater) {
        return book.on(day)
                .anyMatch(entry -> entry.event() instanceof Event.NothingElse all
                        && all.eater().equals(eater));
    }

    /** What spoils in some days, and what is past its date already. */
    private List<SpoilsSoon> useUp() {
        List<SpoilsSoon> soon = new ArrayList<>();
        kitchen.pantry().forEach((food, lots) -> {
            for (Lot lot : lots) {
                lot.useBy()
                        .filter(last -> !last.isAfter(day.plusDays(SOON_DAYS))
                                && lot.grams().compareTo(BigDecimal.ONE) >= 0)
                        .ifPresent(last -> soon.add(new SpoilsSoon(new Weight(food.id(), lot.grams()), last)));
            }
        });
        soon.sort(Comparator.comparing(SpoilsSoon::useBy));
        return soon;
    }

    private List<Due> due(Optional<KeptPlan> plan) {
        List<Due> due = new ArrayList<>();
        plan.ifPresent(p -> p.batches().stream()
                .filter(batch -> p.date(batch.day()).equals(day))
                .forEach(batch -> cooking(p, batch, due)));
        thawed().forEach((dish, count) -> due.add(new Due(Due.Kind.THAW, dish, count)));
        boxes.stream()
                .filter(lot -> lot.until().isBefore(day))
                .forEach(lot -> due.add(new Due(Due.Kind.PAST, lot.boxes().dish(), lot.count())));
        return due;
    }

    /** What comes out of the freezer tonight, by dish: a large container is eaten only the day after tomorrow. */
    private Map<String, Integer> thawed() {
        Map<String, Integer> thaw = new LinkedHashMap<>();
        for (int evenings = 1; evenings <= MOST_EVENINGS; evenings++) {
            LocalDate date = day.plusDays(evenings);
            Optional<KeptPlan> plan = plans.on(date);
            for (EatersDay mine : plan.map(p -> p.on(date)).orElse(List.of())) {
                for (PlannedBox box : mine.boxes()) {
                    if (box.frozen() && evenings(plan.orElseThrow(), mine, box) == evenings) {
                        thaw.merge(box.dish(), box.count(), Integer::sum);
                    }
                }
            }
        }
        return thaw;
    }

    private static int evenings(KeptPlan plan, EatersDay mine, PlannedBox box) {
        int inSession = mine.day() - plan.sessionOf(mine.day()) + 1;
        return plan.fill(box.dish(), mine.eater(), mine.day())
                .map(fill -> Thawing.evenings(fill.millilitres(), inSession))
                .orElse(1);
    }

    private void cooking(KeptPlan plan, KeptBatch batch, List<Due> due) {
        boolean cooked = book.on(day)
                .anyMatch(entry -> entry.event() instanceof Event.Cooked done
                        && done.dish().equals(batch.dish()));
        if (!cooked) {
            due.add(new Due(Due.Kind.COOK, batch.dish(), 1));
        }
        int next = plan.batches().stream()
                .mapToInt(KeptBatch::day)
                .filter(first -> first > batch.day())
                .min()
                .orElse(plan.days() + 1);
        int frozen = plan.eatersDays().stream()
                .filter(mine -> mine.day() >= batch.day() && mine.day() < next)
                .flatMap(mine -> mine.boxes().stream())
                .filter(box -> box.frozen() && box.dish().equals(batch.dish()))
                .mapToInt(PlannedBox::count)
                .sum();
        boolean filled = book.on(day)
                .anyMatch(entry -> entry.event() instanceof Event.Filled done
                        && done.place() == Place.FREEZER
                        && done.boxes().dish().equals(batch.dish()));
        if (frozen > 0 && !filled) {
            due.add(new Due(Due.Kind.FREEZE, batch.dish(), frozen));
        }
    }

    /** Containers that are not offered; and names: a plan keeps those it was made with. */
    private List<String> notes() {
        Set<String> dishes = new LinkedHashSet<>();
        for (LocalDate date : List.of(day, day.plusDays(1))) {
            plans.on(date)
                    .ifPresent(plan -> plan.on(date).stream()
                            .flatMap(mine -> mine.boxes().stream())
                            .forEach(box -> dishes.add(box.dish())));
        }
        boxes.forEach(lot -> dishes.add(lot.boxes().dish()));
        Stream<String> avoided = boxes.stream().filter(lot -> !isOffered(lot)).map(TodayInKitchen::notOffered);
        Stream<String> gone = dishes.stream()
                .filter(dish -> !kitchen.dishes().containsKey(dish))
                .map(dish ->
                        "There is no dish called %s any more%s. Its containers keep that name in the plan and the book."
                                .formatted(
                                        dish,
                                        NearestName.of(dish, kitchen.dishes().keySet())
                                                .map(near -> ": was it renamed to " + near + "?")
                                                .orElse(": it was renamed or taken away")))
                .map(note -> note.replace("?.", "?"));
        return Stream.concat(avoided, gone).toList();
    }
}
