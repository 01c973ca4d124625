package batchwright.app.newdish;

import batchwright.answer.Fault;
import batchwright.app.EnterPrice;
import batchwright.app.Refused;
import batchwright.app.SeenPrice;
import batchwright.app.Workspace;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a new dish, a question at a time. A wrong answer is said and asked for again; an empty one takes what is proposed. Nothing is
 * written before the last answer.
 */
public final class DishDialogue {
    /** What is asked, in this order. */
    private enum Stage {
        NAME,
        CONTAINERS,
        KIND,
        INGREDIENTS,
        PARTS,
        STEPS,
        DAYS,
        FREEZES,
        PRICES,
        REVIEW,
        DONE
    }

    private static final String UNDO = "undo";
    private static final Pattern CHANGE = Pattern.compile("(\\d{1,2})\\s+(.+)");
    private static final Pattern PRICE = Pattern.compile("(\\S+)\\s+for\\s+(.+?)\\s+at\\s+(.+)");
    private static final int MOST_LINES = 40;

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final NewDish dishes;
    private final DishInWords words;
    private final List<String> ingredients = new ArrayList<>();
    private final List<String> steps = new ArrayList<>();
    private final Map<Food, Optional<SeenPrice>> prices = new LinkedHashMap<>();
    private Stage stage = Stage.NAME;
    private TypedDish typed = TypedDish.NOTHING;
    private @Nullable ProposedDish proposed;

    /** @throws Refused when there is no folder of one's own that a dish can be written to */
    public DishDialogue(Workspace workspace, Kitchen kitchen) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.dishes = new NewDish(workspace, kitchen);
        this.words = new DishInWords(kitchen);
        dishes.checkFolder();
    }

    /** What is asked next; empty when the dish is written. */
    public Optional<String> question() {
        return switch (stage) {
            case NAME -> Optional.of("What is the dish called?");
            case CONTAINERS -> Optional.of("How many containers does the batch fill?");
            case KIND -> Optional.of("Breakfast, lunch, dinner, or main for both? Enter for main.");
            case INGREDIENTS ->
                Optional.of(
                        ingredients.isEmpty()
                                ? "What goes into this batch of " + typed.containers()
                                        + " containers? One a line: 500 g brown rice; 2 tbsp olive oil; 3 onions; 10 g salt. "
                                        + "Undo takes the last one back; Enter alone when all is there."
                                : "Next?");
            case PARTS ->
                Optional.of("Enter keeps these. Else a number and what changes: 3 in sauce, 3 roasted, 3 out.");
            case STEPS ->
                Optional.of(
                        steps.isEmpty()
                                ? "The steps, one a line, with their minutes and degrees; Enter alone for plain ones."
                                : "Next step? Enter alone when that is all.");
            case DAYS ->
                Optional.of("Days in the fridge, the cooking day being day 1? Enter for "
                        + current().dish().fridgeDays() + ": " + current().why() + ".");
            case FREEZES ->
                Optional.of("May it be frozen? Enter for " + (current().dish().freezes() ? "yes." : "no."));
            case PRICES ->
                unpriced()
                        .map(food -> "What does " + food.name() + " cost? Such as 2.10 for 500 g at "
                                + kitchen.shopNames().stream().findFirst().orElse("corner market")
                                + ". Enter leaves it open.");
            case REVIEW -> Optional.of("Enter writes it; name, ingredients, steps or days goes back to that.");
            case DONE -> Optional.empty();
        };
    }

    /** What is to be seen before the question is answered, a line each; may be empty. */
    public List<String> shown() {
        return switch (stage) {
            case PARTS -> words.parts(typed, dishes);
            case REVIEW -> words.review(current());
            default -> List.of();
        };
    }

    /** @return what is to be said to it: how it was understood, or what is wrong with it */
    public List<String> answer(String answer) {
        return switch (stage) {
            case NAME -> taken(dishes.wrongName(answer), typed.withName(answer), Stage.CONTAINERS);
            case CONTAINERS -> {
                String wanted = answer.isEmpty() ? typed.containers() : answer;
                yield taken(dishes.wrongContainers(wanted), typed.withContainers(wanted), Stage.KIND);
            }
            case KIND -> {
                String small = answer.toLowerCase(java.util.Locale.ROOT);
                yield taken(dishes.wrongKind(small), typed.withKind(small), Stage.INGREDIENTS);
            }
            case INGREDIENTS -> ingredient(answer);
            case PARTS -> change(answer);
            case STEPS -> step(answer);
            case DAYS -> keeping(dishes.wrongDays(answer), typed.withFridgeDays(answer), Stage.FREEZES);
            case FREEZES -> keeping(dishes.wrongFreezes(answer), typed.withFreezes(answer), Stage.PRICES);
            case PRICES -> price(answer);
            case REVIEW -> review(answer);
            case DONE -> List.of();
        };
    }

    private ProposedDish current() {
        ProposedDish now = proposed;
        if (now == null) {
            throw new IllegalStateException("nothing is proposed before the steps are known");
        }
        return now;
    }

    private List<String> taken(Optional<String> wrong, TypedDish changed, Stage next) {
        if (wrong.isEmpty()) {
            typed = changed;
            stage = next;
        }
        return wrong.stream().toList();
    }

    private List<String> ingredient(String answer) {
        if (answer.equals(UNDO)) {
            return List.of(
                    ingredients.isEmpty()
                            ? "There is nothing yet."
                            : "Taken back: " + ingredients.remove(ingredients.size() - 1) + ".");
        }
        if (answer.isEmpty()) {
            typed = typed.withIngredients(ingredients);
            boolean food = ingredients.stream().map(dishes::line).anyMatch(BatchLine.Mixed.class::isInstance);
            stage = food ? Stage.PARTS : stage;
            return food ? List.of() : List.of("There is no food in it yet.");
        }
        if (ingredients.size() >= MOST_LINES) {
            return List.of("A dish has at most " + MOST_LINES + " ingredients.");
        }
        BatchLine line = dishes.line(answer);
        if (!(line instanceof BatchLine.Wrong)) {
            ingredients.add(answer);
        }
        return List.of(words.says(line));
    }

    private List<String> change(String answer) {
        if (answer.isEmpty()) {
            typed = typed.withIngredients(ingredients);
            stage = Stage.STEPS;
            return List.of();
        }
        Matcher form = CHANGE.matcher(answer);
        int number = form.matches() ? Integer.parseInt(form.group(1)) : 0;
        if (number < 1 || number > ingredients.size()) {
            return List.of("Enter a number from the list and what changes, such as 1 in sauce.");
        }
        String wish = form.group(2);
        if (wish.equals("out")) {
            ingredients.remove(number - 1);
        } else {
            String before = ingredients.get(number - 1);
            String changed = (wish.startsWith("in ") ? before.replaceAll(",\\s*in [^,]*", "") : before) + ", " + wish;
            if (dishes.line(changed) instanceof BatchLine.Wrong no) {
                return List.of(no.says());
            }
            ingredients.set(number - 1, changed);
        }
        typed = typed.withIngredients(ingredients);
        if (ingredients.isEmpty()) {
            stage = Stage.INGREDIENTS;
        }
        return List.of();
    }

    private List<String> step(String answer) {
        if (answer.equals(UNDO)) {
            return List.of(steps.isEmpty() ? "There is nothing yet." : "Taken back: " + steps.remove(steps.size() - 1));
        }
        if (!answer.isEmpty()) {
            steps.add(answer);
            return List.of();
        }
        return keeping(Optional.empty(), typed.withSteps(steps), Stage.DAYS);
    }

    /** Proposes anew; a reader's error sends back to the steps. */
    private List<String> keeping(Optional<String> wrong, TypedDish changed, Stage next) {
        if (wrong.isPresent()) {
            return List.of(wrong.get());
        }
        try {
            proposed = dishes.propose(changed);
        } catch (Refused no) {
            steps.clear();
            stage = Stage.STEPS;
            return no.faults().stream().map(DishDialogue::sentence).toList();
        }
        typed = changed;
        stage = next == Stage.PRICES && unpriced().isEmpty() ? Stage.REVIEW : next;
        return List.of();
    }

    private static String sentence(Fault fault) {
        return Character.toUpperCase(fault.wrong().charAt(0)) + fault.wrong().substring(1) + ". " + fault.cure();
    }

    /** The next food without a price that nobody was asked about. */
    private Optional<Food> unpriced() {
        return current().unpriced().stream()
                .filter(food -> !prices.containsKey(food))
                .findFirst();
    }

    private List<String> price(String answer) {
        Food food = unpriced().orElseThrow();
        if (answer.isEmpty()) {
            prices.put(food, Optional.empty());
        } else {
            Matcher form = PRICE.matcher(answer);
            if (!form.matches()) {
                return List.of("Enter the price, the pack and the shop: 2.10 for 500 g at corner market.");
            }
            var seen = new SeenPrice(form.group(3), form.group(2), Optional.empty(), form.group(1));
            try {
                new EnterPrice(workspace.quietly(), kitchen).check(food, seen);
            } catch (Refused no) {
                return no.faults().stream().map(DishDialogue::sentence).toList();
            }
            prices.put(food, Optional.of(seen));
        }
        if (unpriced().isEmpty()) {
            stage = Stage.REVIEW;
        }
        return List.of();
    }

    private List<String> review(String answer) {
        return switch (answer) {
            case "" -> write();
            case "name" -> back(Stage.NAME);
            case "ingredients" -> back(Stage.PARTS);
            case "steps" -> {
                steps.clear();
                yield back(Stage.STEPS);
            }
            case "days" -> back(Stage.DAYS);
            default -> List.of("Enter alone writes it; or name, ingredients, steps, days.");
        };
    }

    private List<String> back(Stage to) {
        stage = to;
        return List.of();
    }

    private List<String> write() {
        List<String> said = new ArrayList<>();
        try {
            said.add("Written: " + dishes.write(current()));
        } catch (Refused no) {
            stage = Stage.NAME;
            return no.faults().stream().map(DishDialogue::sentence).toList();
        }
        stage = Stage.DONE;
        prices.forEach((food, price) -> price.ifPresent(seen -> said.add(priced(food, seen))));
        return List.copyOf(said);
    }

    private String priced(Food food, SeenPrice seen) {
        try {
            return "Price written: "
                    + new EnterPrice(workspace.quietly(), kitchen)
                            .enter(food, seen)
                            .line();
        } catch (Refused no) {
            return "The price of " + food.name() + " was not written: "
                    + sentence(no.faults().get(0));
        }
    }
}
