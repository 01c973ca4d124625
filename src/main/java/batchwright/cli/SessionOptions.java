package batchwright.cli;

import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.Refused;
import batchwright.plan.Cooking;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Several cooking sessions spread over the days. */
final class SessionOptions {
    private static final String EACH = "each";
    private static final String ONCE = "once";

    @Option(
            names = "--cooks",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "Cooking sessions, evenly spread over the days, 1 to 8; default ${DEFAULT-VALUE}. Each has its own"
                            + " dishes; what one leaves is stock for the next.")
    private String cooks = "";

    @Option(
            names = "--shop",
            paramLabel = "each|once",
            description = "With --cooks: shop before each session, or once for all; default each.")
    private @Nullable String shop;

    @Option(names = "--vary", description = "With --cooks: cook no dish in two sessions in a row.")
    private boolean vary;

    /**
     * @param wanted which dishes may, must and must not be cooked
     * @param number of dishes in a cooking session
     * @param days of the plan
     */
    CookingWanted cooking(DishesWanted wanted, DishNumber number, int days) {
        int sessions = new Given("--cooks", cooks).whole(1, Cooking.MOST_SESSIONS, "cooking sessions");
        if (sessions > days) {
            throw Refused.because(
                    "--cooks cannot be \"" + cooks + "\" for " + days + " days",
                    "Each cooking session needs a day of its own.");
        }
        String trips = shop == null ? EACH : shop;
        if (!trips.equals(EACH) && !trips.equals(ONCE)) {
            throw Refused.because("--shop cannot be \"" + trips + "\"", "Enter each or once.");
        }
        if (sessions == 1 && (shop != null || vary)) {
            throw Refused.because(
                    (vary ? "--vary" : "--shop") + " is about several cooking sessions", "Say how many: --cooks 2.");
        }
        return new CookingWanted(wanted, number, sessions, vary, trips.equals(ONCE));
    }
}
