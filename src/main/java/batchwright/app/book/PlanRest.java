package batchwright.app.book;

import batchwright.answer.RestOfPlan;
import batchwright.answer.RestOfPlan.ForGuest;
import batchwright.answer.RestOfPlan.Stretch;
import batchwright.app.NeedsOfEater;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlans;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.plan.left.LeftContainers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The rest of a kept plan from today on, or from tomorrow when something was eaten today: what was planned, and what is there for it. */
public final class PlanRest {
    private final LocalDate today;
    private final Kitchen kitchen;
    private final Book book;
    private final KeptPlans plans;
    private final boolean keeps;

    private PlanRest(Workspace workspace, boolean keeps) {
        this.today = workspace.cookingDay();
        this.kitchen = workspace.kitchen();
        this.book = workspace.book();
        this.plans = workspace.keptPlans();
        this.keeps = keeps;
    }

    /**
     * @param names of eaters, as the user names them
     * @param keeps whether containers stay on the days they were planned for
     * @param guests days on which a container is for somebody else
     * @throws Refused when no plan is kept, or there is nothing for a guest
     */
    public static RestOfPlan of(Workspace workspace, List<String> names, boolean keeps, List<LocalDate> guests) {
        List<Eater> eaters = names.stream()
                .map(name -> NeedsOfEater.answer(workspace, name).eater())
                .toList();
        return new PlanRest(workspace, keeps).rest(eaters, guests);
    }

    private RestOfPlan rest(List<Eater> eaters, List<LocalDate> guests) {
        LocalDate first = eaters.stream().anyMatch(this::hasEaten) ? today.plusDays(1) : today;
        LocalDate last = eaters.stream()
                .map(eater -> lastDay(eater, first))
                .max(LocalDate::compareTo)
                .orElseThrow();
        int days = (int) (last.toEpochDay() - first.toEpochDay()) + 1;
        List<EatersDay> planned = new ArrayList<>();
        eaters.forEach(eater -> planned.addAll(planned(eater, first, days)));

        Map<String, List<BoxesLeft.Lot>> there = new LinkedHashMap<>();
        List<BoxesLeft.Lot> past = new ArrayList<>();
        for (Eater eater : eaters) {
            List<BoxesLeft.Lot> mine = new ArrayList<>();
            for (BoxesLeft.Lot lot : BoxesLeft.of(book).of(eater.id())) {
                (lot.until().isBefore(first) ? past : mine).add(lot);
            }
            there.put(eater.id(), mine);
        }
        List<ForGuest> aside = guests.stream()
                .map(day -> aside(day, first, last, planned, there))
                .toList();
        var shares = new ShareLeft(new MayEat(kitchen, plans, book), first, days, keeps);
        eaters.forEach(eater -> shares.share(
                eater,
                there.getOrDefault(eater.id(), List.of()),
                planned.stream().filter(day -> day.eater().equals(eater.id())).toList()));
        shares.offer();
        LocalDate planOf = plan(eaters.get(0), first).cookingDay();
        return new RestOfPlan(
                new Stretch(planOf, first, days, keeps),
                planned,
                new LeftContainers(shares.dishes()),
                aside,
                shares.over(),
                past,
                shares.offers());
    }

    private boolean hasEaten(Eater eater) {
        return book.on(today)
                .map(entry -> entry.event())
                .anyMatch(event -> (event instanceof Event.AteBoxes boxes
                                && boxes.eater().equals(eater.id()))
                        || (event instanceof Event.AteFood food && food.eater().equals(eater.id()))
                        || (event instanceof Event.AteOut out && out.eater().equals(eater.id()))
                        || (event instanceof Event.NothingElse all
                                && all.eater().equals(eater.id())));
    }

    private KeptPlan plan(Eater eater, LocalDate first) {
        return plans.on(first, eater.id())
                .orElseThrow(() -> Refused.because(
                        "no plan was kept that holds %s for %s".formatted(first, eater.id()),
                        "There is no rest to plan: ask for a whole plan, and keep it."));
    }

    private LocalDate lastDay(Eater eater, LocalDate first) {
        KeptPlan plan = plan(eater, first);
        return plan.date(plan.days());
    }

    /** Days are counted from the first of them. */
    private List<EatersDay> planned(Eater eater, LocalDate first, int days) {
        return IntStream.rangeClosed(1, days)
                .mapToObj(day -> {
                    LocalDate date = first.plusDays(day - 1L);
                    return plans.on(date, eater.id())
                            .flatMap(plan -> plan.on(date, eater.id()))
                            .map(mine -> new EatersDay(day, mine.eater(), mine.boxes(), mine.snacks(), mine.kcal()));
                })
                .flatMap(Optional::stream)
                .toList();
    }

    /** One that is planned for nobody, else one that its eater would have had on that day: who eats with a guest shares. */
    private static ForGuest aside(
            LocalDate day,
            LocalDate first,
            LocalDate last,
            List<EatersDay> planned,
            Map<String, List<BoxesLeft.Lot>> there) {
        if (day.isBefore(first) || day.isAfter(last)) {
            throw Refused.because(
                    "a guest cannot come on " + day, "The rest of the plan is from " + first + " to " + last + ".");
        }
        BoxesLeft.Lot best = there.values().stream()
                .flatMap(List::stream)
                .filter(lot -> !lot.until().isBefore(day))
                .min(Comparator.comparingInt(lot -> rank(lot, day, first, planned, there)))
                .orElseThrow(() -> Refused.because(
                        "no container is left for a guest on " + day,
                        "Fill one container of a dish by itself, or plan without a guest."));
        List<BoxesLeft.Lot> mine = there.getOrDefault(best.boxes().eater(), List.of());
        int at = mine.indexOf(best);
        mine.remove(at);
        if (best.count() > 1) {
            mine.add(at, best.of(best.count() - 1));
        }
        return new ForGuest(day, new Boxes(1, best.boxes().dish(), best.boxes().eater()));
    }

    private static int rank(
            BoxesLeft.Lot lot,
            LocalDate day,
            LocalDate first,
            List<EatersDay> planned,
            Map<String, List<BoxesLeft.Lot>> there) {
        int number = (int) (day.toEpochDay() - first.toEpochDay()) + 1;
        int has = there.getOrDefault(lot.boxes().eater(), List.of()).stream()
                .filter(other -> other.isOf(lot.boxes()))
                .mapToInt(BoxesLeft.Lot::count)
                .sum();
        int wanted = planned.stream().mapToInt(mine -> count(mine, lot)).sum();
        boolean thatDay = planned.stream().anyMatch(mine -> mine.day() == number && count(mine, lot) > 0);
        return has > wanted ? 0 : thatDay ? 1 : 2;
    }

    private static int count(EatersDay mine, BoxesLeft.Lot lot) {
        return mine.eater().equals(lot.boxes().eater())
                ? mine.boxes().stream()
                        .filter(box -> box.dish().equals(lot.boxes().dish()))
                        .mapToInt(KeptPlan.PlannedBox::count)
                        .sum()
                : 0;
    }
}
