package batchwright.report;

import batchwright.food.Lot;
import batchwright.plan.Plan;
import batchwright.plan.UseUp;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the cook should know of the pantry: what was taken without buying, what to use up, what is past its date. */
final class PantryText {
    private final PlanAnswer answer;
    private final Plan plan;
    private final Page page;

    PantryText(PlanAnswer answer, Plan plan, Page page) {
        this.answer = answer;
        this.plan = plan;
        this.page = page;
    }

    void write() {
        page.gap();
        say(
                "From the pantry alone: ",
                BuyLine.of(plan).stream()
                        .filter(l -> l.pack().isEmpty())
                        .map(l -> l.food().name() + " " + Show.whole(l.usedGrams()) + " g")
                        .toList());
        say(
                "Use up, besides this plan: ",
                UseUp.of(answer.kitchen(), answer.days(), plan).stream()
                        .map(u -> grams(u.grams()) + u.food().name() + " by " + u.useBy())
                        .toList());
        say("Past its date, not used: ", pastTheirDate());
    }

    private List<String> pastTheirDate() {
        List<String> past = new ArrayList<>();
        answer.kitchen().pastTheirDate().forEach((food, lots) -> {
            for (Lot lot : lots) {
                past.add(grams(lot.grams()) + food.name() + " of " + lot.useBy().orElseThrow());
            }
        });
        return past;
    }

    private static String grams(BigDecimal grams) {
        return Show.whole(grams) + " g ";
    }

    private void say(String what, List<String> which) {
        if (!which.isEmpty()) {
            page.paragraph("  ", "    ", what + which.stream().collect(Collectors.joining("; ")) + ".");
        }
    }
}
