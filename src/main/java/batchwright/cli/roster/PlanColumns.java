package batchwright.cli.roster;

import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.roster.AnswerRoster;
import batchwright.cli.Given;
import batchwright.plan.Cooking;
import batchwright.plan.PlanRequest;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The columns of a roster that ask for a plan, in the words of the options of {@code plan}. */
public final class PlanColumns implements AnswerRoster.Asks {
    private static final String DAYS = "days";
    private static final String BUDGET = "budget";
    static final String DISHES = "dishes";
    private static final String COOKS = "cooks";
    private static final String COOK = "cook";
    private static final String WITH = "with";
    private static final String WITHOUT = "without";
    private static final String LAST_TIME = "last_time";
    private static final String SHOPS = "shops";
    /** In one cooking session. */
    public static final int MOST_DISHES = 10;

    /** What may be said of a plan for all. */
    static final Set<String> FOR_ALL = Set.of(DAYS, COOK, WITHOUT, SHOPS);

    /** The work ends the search, not the clock. */
    private static final Duration LONG = Duration.ofHours(24);

    @Override
    public Set<String> columns() {
        return Set.of(DAYS, BUDGET, DISHES, COOKS, COOK, WITH, WITHOUT, LAST_TIME, SHOPS);
    }

    @Override
    public PlanQuestion question(List<String> eaters, Map<String, String> said) {
        int days = whole(said, DAYS, PlanRequest.USUAL_DAYS, PlanRequest.MOST_DAYS, "days");
        int cooks = whole(said, COOKS, 1, Math.min(days, Cooking.MOST_SESSIONS), "cooking sessions");
        DishNumber dishes =
                new Given(DISHES, said.getOrDefault(DISHES, "" + PlanRequest.USUAL_MOST_DISHES)).dishes(MOST_DISHES);
        var wanted =
                new DishesWanted(names(said, COOK), names(said, WITH), names(said, WITHOUT), names(said, LAST_TIME));
        return new PlanQuestion(
                eaters,
                days,
                Optional.ofNullable(said.get(BUDGET)).map(text -> new Given(BUDGET, text).money()),
                new CookingWanted(wanted, dishes, cooks, false, false),
                names(said, SHOPS),
                new PlanQuestion.HowLong(LONG),
                InsightWanted.NONE);
    }

    private static int whole(Map<String, String> said, String column, int usual, int most, String unit) {
        return new Given(column, said.getOrDefault(column, "" + usual)).whole(1, most, unit);
    }

    private static List<String> names(Map<String, String> said, String column) {
        return Arrays.stream(said.getOrDefault(column, "").split(","))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }
}
