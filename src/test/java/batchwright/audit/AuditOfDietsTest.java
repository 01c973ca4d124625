package batchwright.audit;

import static batchwright.audit.AuditCases.assertFails;
import static batchwright.audit.AuditCases.wishes;
import static batchwright.audit.AuditCases.with;
import static batchwright.audit.LittlePlan.ANNAS_SEAT;
import static batchwright.audit.LittlePlan.BENS_SEAT;
import static batchwright.audit.LittlePlan.MILK;
import static batchwright.audit.LittlePlan.honest;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.origin.Diet;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The audit works out diets by itself: what is barred for certain, and what nobody has asked about. */
class AuditOfDietsTest {
    private static final Set<String> EVERYTHING =
            LittlePlan.FOODS.stream().map(Food::id).collect(Collectors.toSet());

    private static Wishes on(Wishes wishes, String diet, Set<String> checked) {
        return wishes.with(wishes.avoided()
                .withDiets(Set.of(Diet.byWord(diet).orElseThrow()))
                .withChecked(checked));
    }

    /** Nothing is said of what these foods are made of. */
    @Test
    void what_is_not_known_must_have_been_read() {
        assertFails(wishes(BENS_SEAT, w -> on(w, "vegetarian", Set.of())), honest(), Set.of("avoid"));
        assertThat(Audit.of(wishes(BENS_SEAT, w -> on(w, "vegetarian", EVERYTHING)), honest())
                        .passed())
                .isTrue();
    }

    /** Anna drinks a cup of milk every day: no label makes that vegan. */
    @Test
    void what_is_certain_no_label_lifts() {
        Food milk = new Food(
                MILK.id(),
                MILK.name(),
                MILK.group(),
                MILK.ndb(),
                MILK.description(),
                MILK.per100g(),
                MILK.refusePercent(),
                MILK.allergens(),
                MILK.perishable(),
                Origins.of(Set.of(Origin.MILK), Set.of()),
                Set.of());
        Kitchen k = LittlePlan.kitchen();
        Map<String, Food> foods = new LinkedHashMap<>(k.foods());
        foods.put(milk.id(), milk);
        PlanRequest request = with(new Kitchen(
                foods, k.measures(), k.yields(), k.packs(), k.dishes(), k.pantry(), k.currency(), k.cookingDay()));
        List<Seat> vegan = request.seats().stream()
                .map(seat -> seat.equals(ANNAS_SEAT)
                        ? new Seat(
                                seat.eater().withWishes(on(seat.eater().wishes(), "vegan", EVERYTHING)), seat.target())
                        : seat)
                .toList();

        assertThat(Audit.of(request, honest()).passed()).isTrue();
        assertFails(request.withSeats(vegan), honest(), Set.of("avoid"));
    }

    @Test
    void a_dish_that_was_asked_for_is_cooked() {
        PlanRequest request = LittlePlan.request();
        Dish pot = LittlePlan.EGG_POT;
        var other = new Dish(
                "porridge",
                "porridge",
                pot.kind(),
                pot.fridgeDays(),
                pot.freezes(),
                pot.reheat(),
                pot.parts(),
                pot.staples(),
                pot.steps());

        assertThat(Audit.of(request.withMustCook(Set.of(pot)), honest()).passed())
                .isTrue();
        assertFails(request.withMustCook(Set.of(other)), honest(), Set.of("dish count"));
    }
}
