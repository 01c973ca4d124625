package batchwright.reference.take;

import batchwright.food.Allergen;
import batchwright.food.origin.OriginList;
import batchwright.food.origin.Origins;
import batchwright.reference.Sr28Food;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What is proposed for the cells of the catalogue that USDA SR28 does not have.
 *
 * @param refuseAsSold filled only where the source says nothing about refuse
 * @param guesses what the user should look at, one thing each
 */
public record Proposal(
        Sr28Food food,
        ProposedName named,
        String group,
        String refuseAsSold,
        ProposedKeeping keeping,
        ProposedContents contents,
        List<String> guesses) {
    /** Groups of the source whose foods hold much that is not in their description. */
    private static final Set<String> MANY_INGREDIENTS = Set.of(
            "Fast Foods",
            "Restaurant Foods",
            "Meals, Entrees, and Side Dishes",
            "Soups, Sauces, and Gravies",
            "Baked Products",
            "Sweets",
            "Snacks",
            "Baby Foods",
            "Sausages and Luncheon Meats");

    /** @param isTaken whether the catalogue, or another line that is printed with it, has this id already */
    public static Proposal of(Sr28Food food, Predicate<String> isTaken) {
        Description description = Description.of(food.description());
        ProposedName name = ProposedName.of(description);
        ProposedGroup group = ProposedGroup.of(food, description);
        ProposedKeeping keeping = ProposedKeeping.of(group.name(), description);
        Set<Allergen> allergens = ProposedAllergens.of(food.group(), description);
        Origins origins = ProposedOrigins.of(food.group(), description, allergens);
        String refuseAsSold = food.refuse().isEmpty() ? "0" : "";
        return new Proposal(
                food,
                new ProposedName(free(name.id(), isTaken), name.name()),
                group.name(),
                refuseAsSold,
                keeping,
                new ProposedContents(allergens, origins),
                guesses(food, group, keeping, allergens, origins, refuseAsSold));
    }

    public Set<Allergen> allergens() {
        return contents.allergens();
    }

    public Origins origins() {
        return contents.origins();
    }

    public String id() {
        return named.id();
    }

    public String name() {
        return named.name();
    }

    private static String free(String id, Predicate<String> isTaken) {
        String free = id;
        for (int number = 2; isTaken.test(free); number++) {
            free = id + "_" + number;
        }
        return free;
    }

    private static List<String> guesses(
            Sr28Food food,
            ProposedGroup group,
            ProposedKeeping keeping,
            Set<Allergen> allergens,
            Origins origins,
            String refuseAsSold) {
        var guesses = new ArrayList<String>();
        guesses.add("allergens: "
                + (allergens.isEmpty() ? none(food) : joined(allergens) + ", guessed from the description")
                + "; the label decides");
        guesses.add(
                origins.known()
                        ? "origins: " + OriginList.written(origins)
                        : "origins: not known, so that a diet does not use it before you fill them in");
        if (!group.sure()) {
            guesses.add("group " + group.name());
        }
        guesses.add("fruit_veg " + yesNo(keeping.fruitVeg()));
        guesses.add("perishable " + yesNo(keeping.perishable()));
        if (!refuseAsSold.isEmpty()) {
            guesses.add("refuse_as_sold 0, because the source has no value");
        }
        return guesses;
    }

    private static String none(Sr28Food food) {
        return "none seen in the description"
                + (MANY_INGREDIENTS.contains(food.group()) ? ", but it has many ingredients" : "");
    }

    static String joined(Set<Allergen> allergens) {
        return allergens.stream().map(Allergen::id).collect(Collectors.joining(" "));
    }

    static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }
}
