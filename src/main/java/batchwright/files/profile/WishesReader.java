package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.origin.Diet;
import batchwright.person.Avoided;
import batchwright.person.Wishes;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How an eater likes to be fed: containers a day, what to avoid, what is always eaten, which snacks. */
final class WishesReader {
    private static final List<String> SNACK_KEYS = List.of("only", "measures_a_day", "kinds_a_day", "any_together");
    private static final NumberRange MEASURES = NumberRange.of("measures_a_day", "0", "12", "", "");
    private static final NumberRange KINDS = NumberRange.of("kinds_a_day", "0", "6", "", "");
    /** Words that claim more than a program can know. */
    private static final Set<String> RITE = Set.of("halal", "kosher");

    private static final int USUAL_CONTAINERS = 3;
    private static final int USUAL_MEASURES = 3;
    private static final int USUAL_KINDS = 3;

    private final Kitchen kitchen;
    private final Problems problems;
    private final Set<Food> avoidFoods = new LinkedHashSet<>();
    private final Set<Allergen> avoidAllergens = new LinkedHashSet<>();
    private final Set<Dish> avoidDishes = new LinkedHashSet<>();
    private final Set<Diet> avoidDiets = new LinkedHashSet<>();

    WishesReader(Kitchen kitchen, Problems problems) {
        this.kitchen = kitchen;
        this.problems = problems;
    }

    Wishes read(Fields fields) {
        int containers =
                fields.whole("containers_a_day", ProfileRanges.CONTAINERS).orElse(USUAL_CONTAINERS);
        fields.texts("avoid", "[peanut, pork_loin]").forEach(this::avoid);
        var avoided = new Avoided(avoidFoods, avoidAllergens, avoidDishes, avoidDiets, checked(fields));
        var always = new ArrayList<Wishes.Always>();
        var grammar = new AlwaysGrammar(kitchen, problems);
        List<Written> lines = fields.texts("always", "[1 cup whole_milk]");
        lines.forEach(line -> grammar.read(line).ifPresent(always::add));
        Fields snacks =
                Fields.of(fields.group("snacks").orElse(new Yaml.Group(List.of(), fields.at())), SNACK_KEYS, problems);
        Optional<Set<Food>> only = snacks.has("only") ? Optional.of(snackFoods(snacks)) : Optional.empty();
        var wishes = new Wishes(
                containers,
                avoided,
                always,
                only,
                snacks.whole("measures_a_day", MEASURES).orElse(USUAL_MEASURES),
                snacks.whole("kinds_a_day", KINDS).orElse(USUAL_KINDS),
                new MealsReader(problems)
                        .read(fields, containers)
                        .withAnySnacks(snacks.yesNo("any_together").orElse(false)));
        refuseAvoidedAlways(wishes, lines);
        warnOfNoDish(wishes, fields);
        if (!avoidDiets.isEmpty()) {
            new DietDoubts(kitchen, wishes).warn(fields.place("avoid"), problems);
        }
        return wishes;
    }

    /** Never skipped: a misspelt allergen must not let the allergen through. */
    private void avoid(Written written) {
        String id = written.text();
        Optional<Allergen> allergen = Allergen.byId(id);
        Optional<Food> food = Optional.ofNullable(kitchen.foods().get(id));
        Optional<Dish> dish = kitchen.dish(id);
        allergen.ifPresent(avoidAllergens::add);
        food.ifPresent(avoidFoods::add);
        dish.ifPresent(avoidDishes::add);
        if (allergen.isEmpty() && food.isEmpty() && dish.isEmpty()) {
            Diet.byWord(id).ifPresentOrElse(avoidDiets::add, () -> unknown(written));
        }
    }

    private void unknown(Written written) {
        List<String> words = words();
        String expected = RITE.contains(written.text().toLowerCase(Locale.ROOT))
                ? "whether something is so cannot be judged from ingredients: name what to leave out, such as [no_pork, no_alcohol]"
                : "expected a food, a dish or one of " + String.join(", ", words);
        var names = new ArrayList<>(words);
        Diet.all().forEach(diet -> names.addAll(diet.words()));
        names.addAll(kitchen.foods().keySet());
        names.addAll(kitchen.dishIds());
        problems.unknown(
                written,
                "there is no food, dish, diet or allergen called " + written.quoted(),
                expected,
                RITE.contains(written.text().toLowerCase(Locale.ROOT)) ? List.of() : names);
    }

    /** Of allergens and diets, as they are offered to people. */
    private static List<String> words() {
        return Stream.concat(
                        Stream.of(Allergen.values()).map(Allergen::id),
                        Diet.all().stream().map(Diet::name))
                .toList();
    }

    /** Foods and staples whose label the eater has read. */
    private Set<String> checked(Fields fields) {
        Set<String> known = new LinkedHashSet<>(kitchen.foods().keySet());
        kitchen.dishes().values().forEach(dish -> dish.staples().forEach(staple -> known.add(staple.id())));
        var checked = new LinkedHashSet<String>();
        for (Written written : fields.texts("checked", "[parmesan, vanilla]")) {
            if (known.contains(written.text())) {
                checked.add(written.text());
            } else {
                problems.unknown(
                        written,
                        "there is no food or staple called " + written.quoted(),
                        "expected foods, or staples of dishes with _ for a blank, whose labels you have read",
                        known);
            }
        }
        return checked;
    }

    private Set<Food> snackFoods(Fields snacks) {
        var foods = new LinkedHashSet<Food>();
        for (Written name : snacks.texts("only", "[banana, almonds]")) {
            Food food = kitchen.foods().get(name.text());
            if (food == null) {
                problems.unknown(
                        name,
                        "there is no food called " + name.quoted(),
                        "expected a food named in foods/catalogue.csv or foods/labels.csv",
                        kitchen.foods().keySet());
            } else if (kitchen.measuresOf(food).stream().noneMatch(m -> m.snackMost() > 0)) {
                problems.error(
                        name,
                        food + " is not offered as a snack",
                        "expected a food with a number under snack_max in foods/measures.csv or foods/labels.csv");
            } else {
                foods.add(food);
                warnOfAvoided(food, name);
            }
        }
        return foods;
    }

    private void warnOfAvoided(Food food, Written name) {
        boolean barred = avoidDiets.stream().anyMatch(diet -> diet.has(food.origins()) == Diet.Answer.NO);
        if (barred || avoidFoods.contains(food) || food.allergens().stream().anyMatch(avoidAllergens::contains)) {
            problems.warning(
                    name.at(),
                    "%s is wanted as a snack, but this eater avoids it or something in it".formatted(food),
                    "it is never offered: expected it in one of the two lists only");
        }
    }

    private void warnOfNoDish(Wishes wishes, Fields fields) {
        if (!kitchen.dishes().isEmpty() && kitchen.dishes().values().stream().noneMatch(wishes::allows)) {
            problems.warning(
                    fields.place("avoid"),
                    "no dish is left for this eater",
                    "every dish is in this list, or holds something that is");
        }
    }

    private void refuseAvoidedAlways(Wishes wishes, List<Written> lines) {
        for (Wishes.Always always : wishes.always()) {
            Food food = always.measure().food();
            if (!wishes.allows(food)) {
                lines.stream()
                        .filter(line -> line.text().endsWith(" " + food.id()))
                        .forEach(line -> problems.error(
                                line,
                                "%s is always eaten, but this eater avoids it or something in it".formatted(food),
                                "expected it in one of the two lists only"));
            }
        }
    }
}
