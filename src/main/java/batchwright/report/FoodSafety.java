package batchwright.report;

import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Citation;
import batchwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** The usual advice on keeping cooked food; local food-safety advice goes first. */
final class FoodSafety {
    private static final Citation LEFTOVERS = new Citation("USDA FSIS, Leftovers and Food Safety");
    private static final Citation RICE = new Citation("UK Food Standards Agency, home food advice");

    private FoodSafety() {}

    static List<Caution> of(Plan plan) {
        return of(plan, Freezing.anyOf(plan));
    }

    /** @param freezes whether some containers are frozen */
    static List<Caution> of(Plan plan, boolean freezes) {
        List<Caution> advice = new ArrayList<>();
        advice.add(caution(
                "cool_within_2_hours",
                "Cool what you cooked in shallow containers and have it in the fridge within 2 hours.",
                LEFTOVERS));
        advice.add(caution(
                "keep_cold",
                "Keep the fridge at or below 4 C (40 F) and eat cooked food within 3-4 days, the cooking day being day 1; freeze"
                        + " what is for later at -18 C (0 F).",
                LEFTOVERS));
        if (freezes) {
            advice.add(caution(
                    "thaw_in_fridge",
                    "Thaw frozen containers in the fridge the night before, not on the table.",
                    LEFTOVERS));
        }
        advice.add(caution(
                "reheat",
                "Reheat once, until steaming, 74 C (165 F) inside. When food smells or looks off, or was out for long, throw it"
                        + " away.",
                LEFTOVERS));
        if (plan.batches().stream().anyMatch(Notice::holdsRice)) {
            advice.add(caution(
                    "rice",
                    "Rice needs more care: chill it within 1 hour. British advice keeps cooked rice 1 day only, so freeze its"
                            + " containers if you follow that.",
                    RICE));
        }
        advice.add(caution(
                "local_advice",
                "This is general advice: the food-safety authority where you live goes first.",
                new Citation("common practice")));
        return advice;
    }

    private static Caution caution(String code, String text, Citation source) {
        return Caution.warn(code, text, source);
    }
}
