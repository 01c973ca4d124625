package batchwright.app;

import batchwright.answer.TakenFood;
import batchwright.food.Kitchen;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Measures;
import batchwright.reference.take.CatalogueLine;
import batchwright.reference.take.MeasureLines;
import batchwright.reference.take.Proposal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;

/** Foods of USDA SR28 as lines for the user's own tables. Nothing is written: the user pastes them. */
public final class TakeFoods {
    private static final int NDB_DIGITS = 5;

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final Sr28 table;

    public TakeFoods(Workspace workspace, Kitchen kitchen, Sr28 table) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.table = table;
    }

    /** @throws Refused when there is no food with one of these numbers, or none is named */
    public List<TakenFood> answer(List<String> numbers) {
        if (numbers.isEmpty()) {
            throw Refused.because(
                    "no food is named", "Write its NDB number, such as 20031. A search shows the numbers.");
        }
        List<String> columns = workspace.source().foodColumns();
        var taken = new HashSet<>(kitchen.foods().keySet());
        var measures = Sr28Measures.load();
        var foods = new ArrayList<TakenFood>();
        for (String number : new LinkedHashSet<>(numbers)) {
            Sr28Food food = food(number);
            Proposal proposal = Proposal.of(food, taken::contains);
            taken.add(proposal.id());
            foods.add(new TakenFood(
                    proposal,
                    CatalogueLine.of(proposal, columns),
                    MeasureLines.of(proposal.id(), measures.of(food)),
                    kitchen.foods().values().stream()
                            .filter(f -> f.ndb().filter(food.ndb()::equals).isPresent())
                            .findFirst()));
        }
        return foods;
    }

    /** A spreadsheet drops the first zero of a number. */
    private Sr28Food food(String number) {
        boolean digits = !number.isEmpty() && number.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!digits) {
            throw Refused.because(
                    "\"" + number + "\" is no NDB number",
                    "Write five digits, such as 20031. A search for its words shows the numbers.");
        }
        return table.food("0".repeat(Math.max(0, NDB_DIGITS - number.length())) + number)
                .orElseThrow(() -> Refused.because(
                        "there is no food " + number + " in USDA SR28, as far as it is known here",
                        "A search for its words shows the numbers. Foods with a trade name are left out: write those from their"
                                + " label."));
    }
}
