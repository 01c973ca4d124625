package batchwright.solve.whole;

import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a column or a row says, told by the first word of its name.
 *
 * @param says in the words of a cook
 * @param unit of the column, or of both sides of the row
 */
record Meaning(String says, String unit) {
    private static final String YES_OR_NO = "0 or 1";
    private static final Map<String, Meaning> COLUMNS = new LinkedHashMap<>();
    private static final Map<String, Meaning> ROWS = new LinkedHashMap<>();

    static {
        column("cook", "the dish is cooked", YES_OR_NO);
        column("gets", "the eater gets containers of the dish", YES_OR_NO);
        column("served", "the eater has a first (or second) container of the dish on that day", YES_OR_NO);
        column("steps", "how much of the part is in each container of the dish for the eater", "scale steps or pieces");
        column("keep", "the optional part is in the containers", YES_OR_NO);
        column("part", "how much of the part that container brings on that day", "scale steps or pieces");
        column("swap", "the dish is cooked as that variant: foods in it are swapped", YES_OR_NO);
        column(
                "swapped",
                "how much of the part is in each container, if the dish is that variant",
                "scale steps or pieces");
        column("swapped_on", "how much of the part that day brings, if the dish is that variant", "g");
        column("snack", "snack of that day", "household measures");
        column("snack_kind", "the snack is among that day's", YES_OR_NO);
        column("snack_alike", "the snack is that day's only one of its kind", YES_OR_NO);
        column("buy", "packs to buy", "packs");
        column("trip", "the shop is gone to; shops are counted in the order of the files", YES_OR_NO);
        column("loose", "the food is bought by weight, not in packs", YES_OR_NO);
        column("hands", "hands-on minutes: what a step takes, or how many loads it has", "minutes, or loads");

        row("containers", "containers a day, of that day", "containers");
        row("breakfasts", "meals: breakfast dishes of that day", "containers");
        row("lunches", "meals: lunch dishes of that day", "containers");
        row("dinners", "meals: dinner dishes of that day", "containers");
        row("for_lunch", "meals: what can be a lunch of that day", "containers");
        row("for_dinner", "meals: what can be a dinner of that day", "containers");
        row("lunches_and_dinners", "meals: what is no breakfast of that day", "containers");
        row("same_dish", "same dish: containers of one dish in all", "containers");
        row("steps_most", "part range, in each container; nothing unless it is in", "scale steps or pieces");
        row("steps_least", "part range, in each container that has it", "scale steps or pieces");
        row("keep_if", "a part can be in only if the eater gets the dish", YES_OR_NO);
        row("part_most", "a container that is not served brings nothing", "scale steps or pieces");
        row("part_least", "a container that is served brings at least the part's least", "scale steps or pieces");
        row("part_same", "a container brings no more than each container holds", "scale steps or pieces");
        row("part_all", "a container that is served brings all it holds", "scale steps or pieces");
        row("gets_if", "an eater gets a dish only if it is cooked", YES_OR_NO);
        row("gets_some", "an eater who gets a dish gets a container of it", "containers");
        row("served_if", "no container unless the eater gets the dish; no second one without a first", YES_OR_NO);
        row("only_if_cooked", "dish count: containers only of dishes that are cooked", "containers");
        row("one_variant", "a dish is cooked as one variant at most, and only if it is cooked", "variants");
        row("swap_most", "nothing of a variant that is not cooked", "the column's");
        row("swap_none", "nothing as written when a variant is cooked", "the column's");
        row("swap_some", "no more of variants than there is in all", "the column's");
        row("batch", "dish count: a dish that is cooked fills at least two containers", "containers");
        row("dishes", "dish count: dishes in the cooking session", "dishes");
        row("least_dishes", "dish count: at least so many dishes", "dishes");
        row("last_time", "dish count: dishes of last time that are cooked again", "dishes");
        row("hands", "hands-on minutes: what a step, filling or washing up takes", "minutes");
        row("hands_on_minutes", "hands-on minutes: all of them", "minutes");
        row("snack_measures", "snack limits: measures of the day", "household measures");
        row("snack_kinds", "snack limits: kinds of the day", "kinds");
        row("snack_if_kind", "snack limits: a measure counts as a kind", "household measures");
        row("snack_spreads", "snack pairs: spreads, less what they are eaten on", "household measures");
        row("snack_if_alike", "snack pairs: a measure counts as one of its kind", "household measures");
        row("snack_one", "snack pairs: one snack of a kind on that day", "kinds");
        row("keeping", "keeping: what spoils is eaten in time, and what keeps fills the days after", "containers");
        row("stock", "stock: what is used is at home or bought", "g as purchased");
        row("shop", "packs are bought only in shops that are gone to", "packs");
        row("one_kind", "one kind: a food is bought by weight or in packs, not both", "packs");
        row("pack_for", "stock: a dish that needs the food needs a pack of it", "packs");
        row("use_by", "use by: what spoils at home goes into batches only", "g as purchased");
        row("budget", "budget: the checkout cost", "minor units");
        row("order", "days that can change places stand in one order only", "none");
    }

    private static void column(String word, String says, String unit) {
        COLUMNS.put(word, new Meaning(says, unit));
    }

    private static void row(String word, String says, String unit) {
        ROWS.put(word, new Meaning(says, unit));
    }

    static Meaning ofColumn(String name) {
        return of(COLUMNS, name);
    }

    /** @param seats whose limits have rows */
    static Meaning ofRow(String name, List<Seat> seats) {
        return seats.stream()
                .flatMap(seat -> seat.target().limits().stream())
                .filter(limit -> word(limit).equals(firstWord(name)))
                .findFirst()
                .map(limit -> new Meaning(
                        limit.name() + limit.scope().each(), limit.measured().unit()))
                .orElseGet(() -> of(ROWS, name));
    }

    private static String word(Limit limit) {
        return limit.isOnContainers() ? eachContainer(limit) : limit.id();
    }

    /** First word of the rows of a limit that each container keeps by itself. */
    static String eachContainer(Limit limit) {
        return "each_" + (limit.scope() == Scope.CONTAINER ? limit.measured().id() : limit.id());
    }

    private static String firstWord(String name) {
        return name.split("\\.", 2)[0];
    }

    private static Meaning of(Map<String, Meaning> known, String name) {
        Meaning meaning = known.get(firstWord(name));
        if (meaning == null) {
            throw new IllegalArgumentException("name (" + name + ") has no meaning; every first word must have one.");
        }
        return meaning;
    }
}
