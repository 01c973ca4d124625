package batchwright.app.book;

import batchwright.answer.Thawing;
import batchwright.book.Book;
import batchwright.book.BoxKeeping;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.Event.Place;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlans;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;

/** An event with what the kitchen knows of it: the energy of what was eaten, what went into a dish. */
record Completed(Kitchen kitchen, KeptPlans plans, Book book, LocalDate day) {
    Event of(Event event) {
        if (event instanceof Event.AteBoxes ate && ate.kcal().isEmpty()) {
            return new Event.AteBoxes(ate.eater(), ate.boxes(), kcal(ate.boxes()));
        } else if (event instanceof Event.AteFood ate && ate.kcal().isEmpty()) {
            return new Event.AteFood(ate.eater(), ate.food(), kcal(kitchen, ate.food()));
        } else if (event instanceof Event.Cooked cooked && cooked.foods().isEmpty()) {
            return plans.on(day)
                    .flatMap(plan -> batch(plan, cooked.dish()))
                    .<Event>map(batch -> new Event.Cooked(batch.dish(), batch.ingredients()))
                    .orElse(event);
        } else if (event instanceof Event.Moved moved && moved.until().isEmpty()) {
            return new Event.Moved(moved.boxes(), moved.to(), Optional.of(until(moved)));
        }
        return event;
    }

    /** A large container takes two nights to thaw. */
    private LocalDate until(Event.Moved moved) {
        LocalDate usual = BoxKeeping.moved(day, moved.to());
        int nights = plans.on(day)
                .flatMap(plan -> plan.fill(moved.boxes().dish(), moved.boxes().eater(), plan.dayOf(day)))
                .map(fill -> Thawing.evenings(fill.millilitres()))
                .orElse(1);
        return moved.to() == Place.FREEZER ? usual : usual.plusDays(nights - 1L);
    }

    private Optional<KeptPlan.KeptBatch> batch(KeptPlan plan, String dish) {
        return plan.batches().stream()
                .filter(batch ->
                        batch.dish().equals(dish) && !plan.date(batch.day()).isAfter(day))
                .reduce((earlier, later) -> later);
    }

    /** Of the containers that go first. */
    private Optional<BigDecimal> kcal(Event.Boxes boxes) {
        BigDecimal kcal = BigDecimal.ZERO;
        int missing = boxes.count();
        for (BoxesLeft.Lot lot : BoxesLeft.of(book.until(day)).lots()) {
            if (missing > 0 && lot.isOf(boxes) && lot.each().kcal().isPresent()) {
                int taken = Math.min(missing, lot.count());
                kcal = kcal.add(lot.each().kcal().get().multiply(BigDecimal.valueOf(taken)));
                missing -= taken;
            }
        }
        return missing == 0 ? Optional.of(kcal) : Optional.empty();
    }

    static Optional<BigDecimal> kcal(Kitchen kitchen, Event.Weight weight) {
        return Optional.ofNullable(kitchen.foods().get(weight.food())).map(food -> energy(food, weight.grams()));
    }

    private static BigDecimal energy(Food food, BigDecimal grams) {
        return food.per100g().ofGrams(grams).get(Nutrient.ENERGY).setScale(0, RoundingMode.HALF_UP);
    }
}
