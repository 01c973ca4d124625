package batchwright.app.book;

import batchwright.answer.Today;
import batchwright.answer.Today.Eaten;
import batchwright.answer.Today.ForEater;
import batchwright.answer.Today.PlanOfDay;
import batchwright.answer.Today.SpoilsSoon;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Weight;
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

    private final Workspace workspace;
    private final LocalDate day;
    private final Kitchen kitchen;
    private final Book book;
    private final KeptPlans plans;
    private final List<BoxesLeft.Lot> boxes;
    private final Map<String, PlanByBook> byBook = new LinkedHashMap<>();

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
        List<ForEater> eaters = eaters();
        return new Today(
                day,
                plans.on(day).map(p -> new PlanOfDay(p.cookingDay(), p.dayOf(day), p.days())),
                eaters,
                boxes.stream().filter(this::isOffered).toList(),
                useUp(),
                new DueToday(plans, book, day).of(byBook, boxes),
                notes());
    }

    private List<ForEater> eaters() {
        Set<String> ids = new LinkedHashSet<>();
        List<LocalDate> dates = List.of(day, day.plusDays(1), day.plusDays(2));
        dates.forEach(date -> plans.on(date).ifPresent(plan -> plan.on(date).forEach(mine -> ids.add(mine.eater()))));
        boxes.forEach(lot -> ids.add(lot.boxes().eater()));
        return ids.stream().map(this::eater).toList();
    }

    private ForEater eater(String id) {
        PlanByBook plan = byBook.computeIfAbsent(id, this::byBook);
        return new ForEater(
                id, plan.on(day), plan.on(day.plusDays(1)), eaten(id), plan.over(), plan.lackingAfter(day.plusDays(1)));
    }

    private PlanByBook byBook(String eater) {
        List<BoxesLeft.Lot> mine = boxes.stream()
                .filter(lot -> lot.boxes().eater().equals(eater) && !lot.until().isBefore(day) && isOffered(lot))
                .toList();
        return new PlanByBook(kitchen, day, plans, book, eater, mine);
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

    private Eaten eaten(String eater) {
        BigDecimal kcal = BigDecimal.ZERO;
        boolean anything = false;
        for (var entry : book.on(day).toList()) {
            Optional<BigDecimal> eaten = Optional.empty();
            if (entry.event() instanceof Event.AteBoxes ate && ate.eater().equals(eater)) {
                eaten = Optional.of(ate.kcal().orElse(BigDecimal.ZERO));
            } else if (entry.event() instanceof Event.AteFood ate && ate.eater().equals(eater)) {
                eaten = Optional.of(ate.kcal().orElse(BigDecimal.ZERO));
            } else if (entry.event() instanceof Event.AteOut ate && ate.eater().equals(eater)) {
                eaten = Optional.of(ate.kcal());
            }
            kcal = kcal.add(eaten.orElse(BigDecimal.ZERO));
            anything |= eaten.isPresent();
        }
        return new Eaten(kcal, anything, isClosed(eater));
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
                .filter(dish -> kitchen.dish(dish).isEmpty())
                .map(dish ->
                        "There is no dish called %s any more%s. Its containers keep that name in the plan and the book."
                                .formatted(
                                        dish,
                                        NearestName.of(dish, kitchen.dishIds())
                                                .map(near -> ": was it renamed to " + near + "?")
                                                .orElse(": it was renamed or taken away")))
                .map(note -> note.replace("?.", "?"));
        return Stream.concat(avoided, gone).toList();
    }
}
