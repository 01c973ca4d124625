package batchwright.answer;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import batchwright.needs.caution.EatenCautions;
import batchwright.needs.caution.FibreCaution;
import batchwright.needs.caution.StricterFoodSafety;
import batchwright.needs.evidence.Citation;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A caution that goes with a plan.
 *
 * @param eater whom it is about; empty when it is about the food
 */
public record Notice(Optional<Needs> eater, Caution caution) {
    private static final Citation LABELS = new Citation("FALCPA 2004, FASTER Act 2021; Regulation (EU) 1169/2011");

    /** Nobody was named, so nobody's health was asked about. */
    private static final Caution ANOTHER_QUESTION = new Caution(
            "not_for_somebody",
            "How much a person needs in a day is another question. If you are ill, pregnant, breastfeeding,"
                    + " under 18 or have had an eating disorder, ask a doctor or dietitian before you eat by numbers; with"
                    + " kidney disease also how much protein is right.",
            false,
            new Citation("a choice of this program: the cautions of needs in short, where no eater is named"));

    /** Health, then allergens, then food safety, session by session; each once. */
    public static List<Notice> of(PlanAnswer answer) {
        Set<Notice> notices = new LinkedHashSet<>();
        for (Needs needs : answer.needs()) {
            needs.cautions().forEach(c -> notices.add(new Notice(Optional.of(needs), c)));
        }
        answer.plan()
                .ifPresent(plan -> answer.needs()
                        .forEach(needs -> EatenHazards.of(plan, needs.eater())
                                .forEach(c -> notices.add(new Notice(Optional.of(needs), c)))));
        answer.plan().stream().flatMap(plan -> plan.sessions().stream()).forEach(session -> {
            notices.addAll(eaten(answer, session));
            session.batches().forEach(b -> notices.add(food(allergens(b))));
            notices.add(food(snackAllergens(session)));
            FoodSafety.of(session).forEach(c -> notices.add(food(c)));
        });
        return List.copyOf(notices);
    }

    /** Of containers of one dish, for nobody in particular. */
    public static List<Notice> ofDish(Session session, boolean freezes) {
        List<Notice> notices = new ArrayList<>();
        notices.add(food(ANOTHER_QUESTION));
        session.batches().forEach(b -> notices.add(food(allergens(b))));
        FoodSafety.of(session, freezes).forEach(c -> notices.add(food(c)));
        return notices;
    }

    /** What the days of each eater hold. */
    private static List<Notice> eaten(PlanAnswer answer, Session session) {
        List<Notice> notices = new ArrayList<>();
        for (EaterDays eater : session.eaters()) {
            answer.needs().stream()
                    .filter(needs -> needs.eater().equals(eater.seat().eater()))
                    .forEach(needs -> eaten(eater, session)
                            .forEach(caution -> notices.add(new Notice(Optional.of(needs), caution))));
        }
        return notices;
    }

    private static List<Caution> eaten(EaterDays eater, Session session) {
        Nutrients average = session.averageDay(eater);
        return Stream.of(
                        FibreCaution.of(eater.seat().target(), average.get(Nutrient.FIBRE)),
                        EatenCautions.of(eater.seat().eater().health(), average),
                        StricterFoodSafety.of(eater.seat().eater()))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Notice food(Caution caution) {
        return new Notice(Optional.empty(), caution);
    }

    private static Caution allergens(Batch batch) {
        Dish dish = batch.dish();
        return new Caution("allergens." + dish.id(), dish.name() + ": " + DishAllergens.text(batch), false, LABELS);
    }

    private static Caution snackAllergens(Session session) {
        var all = EnumSet.noneOf(Allergen.class);
        session.eaters().stream()
                .flatMap(e -> e.days().stream())
                .flatMap(d -> Stream.concat(d.snacks().stream(), d.always().stream()))
                .forEach(s -> all.addAll(s.measure().food().allergens()));
        return new Caution(
                "allergens.snacks",
                "Snacks and what is always eaten: " + DishAllergens.named(all) + ". Labels decide: read them.",
                false,
                LABELS);
    }
}
