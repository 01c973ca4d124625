package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.BoxKeeping;
import batchwright.book.BoxesLeft;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.book.KeptPlans;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** What a kept plan foresaw for a day, as events; and household measures as grams. */
final class AsPlanned {
    private static final Pattern ATE = Pattern.compile("ate (\\S+) as planned");
    private static final Pattern BATCH = Pattern.compile("(cooked|filled) (?:(\\S+) )?as planned");
    private static final Pattern THAWED = Pattern.compile("thawed as planned");
    private static final Pattern LIST = Pattern.compile("bought (?:list|as planned)");
    /** ate EATER COUNT MEASURE FOOD */
    private static final Pattern MEASURES = Pattern.compile("(ate \\S+) (?:(\\d{1,2}) )?(.+) ([a-z][a-z0-9_]*)");

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final LocalDate day;
    private final Map<String, Event.Holds> holds;

    /** @param holds what a container of each eater holds, where it is not what was planned */
    AsPlanned(Workspace workspace, Kitchen kitchen, LocalDate day, Map<String, Event.Holds> holds) {
        this.holds = holds;
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.day = day;
    }

    /**
     * None when the words do not speak of a plan.
     *
     * @throws Refused when they do and there is none for the day
     */
    List<Event> events(String words, Book book) {
        String one = words.strip().replaceAll("\\s+", " ");
        Matcher ate = ATE.matcher(one);
        Matcher batch = BATCH.matcher(one);
        if (ate.matches()) {
            return eaten(ate.group(1), book);
        } else if (batch.matches()) {
            List<KeptBatch> batches = batches(Optional.ofNullable(batch.group(2)));
            return batch.group(1).equals("cooked") ? cooked(batches) : filled(batches);
        } else if (THAWED.matcher(one).matches()) {
            return thawed(book);
        } else if (LIST.matcher(one).matches()) {
            return bought(book);
        }
        return List.of();
    }

    /** Where the book has it already; what was eaten is refused in any case. */
    Optional<Entry> before(List<Event> events, Book book) {
        boolean bought = events.stream().anyMatch(Event.Bought.class::isInstance);
        return IntStream.rangeClosed(0, bought ? WrittenBefore.DAYS_AHEAD : 0)
                .mapToObj(day::plusDays)
                .flatMap(date ->
                        workspace
                                .keptPlans()
                                .on(date)
                                .flatMap(plan -> WrittenBefore.of(plan, date, events, book))
                                .stream())
                .findFirst();
    }

    private KeptPlan plan() {
        return workspace.keptPlans().on(day).orElseThrow(() -> noPlan(""));
    }

    private Refused noPlan(String forWhom) {
        return Refused.because(
                "no plan was kept that holds " + day + forWhom, "Say what happened, or keep a plan when you make one.");
    }

    /** What of the day is not in the book yet, and that this was all. */
    private List<Event> eaten(String eater, Book book) {
        EatersDay planned = workspace
                .keptPlans()
                .on(day, eater)
                .flatMap(plan -> plan.on(day, eater))
                .orElseThrow(() -> noPlan(" for " + eater));
        if (book.on(day).anyMatch(entry -> isEating(entry.event(), eater))) {
            throw Refused.because(
                    "the book has something already that %s ate on %s".formatted(eater, day),
                    "Say what else was eaten, and then: nothing else.");
        }
        List<Event> events = new ArrayList<>();
        for (PlannedBox box : planned.boxes()) {
            events.add(new Event.AteBoxes(eater, new Boxes(box.count(), box.dish(), eater), Optional.empty()));
        }
        for (PlannedSnack snack : planned.snacks()) {
            events.add(new Event.AteFood(eater, new Weight(snack.food(), snack.grams()), Optional.empty()));
        }
        events.add(new Event.NothingElse(eater));
        return events;
    }

    private static boolean isEating(Event event, String eater) {
        return (event instanceof Event.AteBoxes boxes && boxes.eater().equals(eater))
                || (event instanceof Event.AteFood food && food.eater().equals(eater))
                || (event instanceof Event.NothingElse all && all.eater().equals(eater));
    }

    /** Those of the session that cooks last up to the day; a dish that is named must be among them. */
    private List<KeptBatch> batches(Optional<String> dish) {
        KeptPlan plan = plan();
        int session = plan.sessionOf(plan.dayOf(day));
        List<KeptBatch> batches = plan.batches().stream()
                .filter(batch -> batch.day() == session
                        && dish.filter(d -> !d.equals(batch.dish())).isEmpty())
                .toList();
        if (batches.isEmpty()) {
            throw Refused.because(
                    "the plan of %s does not cook %s".formatted(plan.cookingDay(), dish.orElse("anything")),
                    "It cooks "
                            + String.join(
                                    ", ",
                                    plan.batches().stream()
                                            .map(KeptBatch::dish)
                                            .distinct()
                                            .toList()) + ".");
        }
        return batches;
    }

    /** What comes out of the freezer in the evening, by all plans. */
    private List<Event> thawed(Book book) {
        KeptPlans plans = workspace.keptPlans();
        BoxesLeft left = BoxesLeft.of(book.until(day));
        Map<String, PlanByBook> eaters = new LinkedHashMap<>();
        for (int days = 1; days <= 2; days++) {
            LocalDate date = day.plusDays(days);
            plans.on(date).map(plan -> plan.on(date)).orElse(List.of()).forEach(mine -> {
                List<BoxesLeft.Lot> boxes = left.of(mine.eater()).stream()
                        .filter(lot -> !lot.until().isBefore(day))
                        .toList();
                eaters.putIfAbsent(mine.eater(), new PlanByBook(kitchen, day, plans, book, mine.eater(), boxes));
            });
        }
        List<Event> events = new DueToday(plans, book, day)
                .thawing(eaters).stream()
                        .<Event>map(boxes -> new Event.Moved(boxes, Place.FRIDGE, Optional.empty()))
                        .toList();
        if (events.isEmpty()) {
            throw Refused.because(
                    "no plan has anything to thaw on the evening of " + day,
                    "Say what was thawed: thawed 2 DISH of EATER.");
        }
        return events;
    }

    private static List<Event> cooked(List<KeptBatch> batches) {
        return batches.stream()
                .<Event>map(batch -> new Event.Cooked(batch.dish(), batch.ingredients()))
                .toList();
    }

    private List<Event> filled(List<KeptBatch> batches) {
        KeptPlan plan = plan();
        List<Event> events = new ArrayList<>();
        for (KeptBatch batch : batches) {
            for (KeptFill fill : batch.fills()) {
                fill.eater().ifPresent(eater -> events.addAll(filled(plan, batch, fill, eater)));
            }
        }
        return events;
    }

    /** Those that are planned from the freezer go there. */
    private List<Event> filled(KeptPlan plan, KeptBatch batch, KeptFill fill, String eater) {
        int frozen = plan.eatersDays().stream()
                .filter(d -> d.eater().equals(eater) && plan.sessionOf(d.day()) == batch.day())
                .flatMap(d -> d.boxes().stream())
                .filter(box -> box.frozen() && box.dish().equals(batch.dish()))
                .mapToInt(PlannedBox::count)
                .sum();
        List<Event> events = new ArrayList<>();
        if (fill.containers() > frozen) {
            events.add(filled(fill.containers() - frozen, batch.dish(), eater, Place.FRIDGE, fill));
        }
        if (frozen > 0) {
            events.add(filled(frozen, batch.dish(), eater, Place.FREEZER, fill));
        }
        return events;
    }

    private Event filled(int count, String dish, String eater, Place place, KeptFill fill) {
        return new Event.Filled(
                new Boxes(count, dish, eater),
                place,
                until(dish, place),
                whole(holds.getOrDefault(eater, fill.each())));
    }

    private LocalDate until(String dish, Place place) {
        if (place == Place.FREEZER) {
            return BoxKeeping.frozen(day);
        }
        Dish known = kitchen.dish(dish).orElse(null);
        if (known == null) {
            throw Refused.because(
                    "there is no dish called \"%s\" any more, so nobody knows how long it keeps".formatted(dish),
                    "Say it in full: filled COUNT DISH for EATER in fridge until DAY; or give the dish its name back.");
        }
        return day.plusDays(known.fridgeDays() - 1L);
    }

    private static Event.Holds whole(Event.Holds each) {
        return new Event.Holds(
                each.kcal().map(AsPlanned::whole), each.proteinG().map(AsPlanned::whole));
    }

    private static BigDecimal whole(BigDecimal number) {
        return number.setScale(0, RoundingMode.HALF_UP);
    }

    /** The list of the session that cooks on the day or did before; when that was bought already, or there is none, of the one that cooks next. */
    private List<Event> bought(Book book) {
        KeptPlans plans = workspace.keptPlans();
        Optional<List<Event>> known = Optional.empty();
        for (int ahead = 0; ahead <= WrittenBefore.DAYS_AHEAD; ahead++) {
            LocalDate date = day.plusDays(ahead);
            Optional<KeptPlan> plan =
                    plans.on(date).filter(p -> date.equals(day) || date.equals(p.date(p.sessionOf(p.dayOf(date)))));
            if (plan.isPresent()) {
                List<Event> list =
                        list(plan.get(), plan.get().sessionOf(plan.get().dayOf(date)));
                if (WrittenBefore.of(plan.get(), date, list, book).isEmpty()) {
                    return list;
                }
                known = known.or(() -> Optional.of(list));
            }
        }
        return known.orElseThrow(() -> noPlan(""));
    }

    private List<Event> list(KeptPlan plan, int session) {
        List<Event> events = new ArrayList<>();
        for (KeptPurchase line : plan.shopping()) {
            if (session == line.day()) {
                events.add(line.bought(kitchen.currency().digits()));
            }
        }
        return events;
    }

    /** The words, with a household measure as grams: "ate anna 118 g banana" for "ate anna 1 medium banana". */
    String inGrams(String words) {
        Matcher form = MEASURES.matcher(words.strip().replaceAll("\\s+", " "));
        if (!form.matches()) {
            return words;
        }
        Optional<Food> food = Optional.ofNullable(kitchen.foods().get(form.group(4)));
        Optional<Measure> measure = food.flatMap(f -> kitchen.measure(f, form.group(3)));
        int count = form.group(2) == null ? 1 : Integer.parseInt(form.group(2));
        return measure.map(m -> "%s %s g %s"
                        .formatted(
                                form.group(1),
                                m.grams().multiply(BigDecimal.valueOf(count)).toPlainString(),
                                form.group(4)))
                .orElse(words);
    }
}
