package batchwright.reference.take;

import batchwright.text.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An id and a name from a description: "Rice, white, long-grain, raw" is white_rice and "white rice, long-grain, raw".
 *
 * @param id begins with a letter; whether it is already taken has to be seen elsewhere
 */
record ProposedName(String id, String name) {
    private static final int LONGEST_ID = 30;
    /** First parts that only name a class: the food stands behind. */
    private static final Set<String> CLASSES = Set.of(
            "Nuts",
            "Seeds",
            "Spices",
            "Fish",
            "Crustaceans",
            "Mollusks",
            "Cereals",
            "Cereals ready-to-eat",
            "Snacks",
            "Candies",
            "Beverages",
            "Game meat",
            "Leavening agents",
            "Fast foods",
            "Fast Foods",
            "Fast Food",
            "Restaurant",
            "USDA Commodity");
    /** Animals and the like, whose cut stands behind them in speech too: chicken breast. */
    private static final Set<String> CUT_BEHIND = Set.of(
            "Beef",
            "Pork",
            "Lamb",
            "Veal",
            "Chicken",
            "Turkey",
            "Duck",
            "Goose",
            "Bison",
            "Ostrich",
            "Emu",
            "Egg",
            "Babyfood",
            "Soup",
            "Sauce",
            "Puddings",
            "Frankfurter",
            "Bologna",
            "Salami");

    /** Parts that tell a cook nothing about which food it is. */
    private static final Set<String> NOISE = Set.of(
            "fresh",
            "raw",
            "regular",
            "plain",
            "domesticated",
            "broilers or fryers",
            "broiler or fryers",
            "all types",
            "all varieties",
            "mixed species",
            "all grades",
            "mature seeds",
            "immature seeds",
            "fluid",
            "cured",
            "composite of trimmed retail cuts",
            "separable lean and fat",
            "separable lean only",
            "variety meats and by-products",
            "imported",
            "domestic",
            "New Zealand",
            "Australian",
            "all classes",
            "retail parts",
            "table",
            "family style",
            "canned",
            "frozen",
            "cooked",
            "dried",
            "dry",
            "uncooked",
            "unprepared",
            "dark meat",
            "light meat",
            "from whole bird",
            "young hen",
            "common",
            "commercial",
            "homemade",
            "unsweetened",
            "whole milk",
            "enriched",
            "loin",
            "dark",
            "boiled",
            "unenriched",
            "salted",
            "with salt",
            "without salt");

    private static final List<String> STATES =
            List.of("cooked", "canned", "frozen", "dried", "dehydrated", "condensed");
    private static final int WORDS_OF_A_KIND = 2;

    static ProposedName of(Description description) {
        List<String> parts = new ArrayList<>(description.parts());
        String head = parts.remove(0);
        if (CLASSES.contains(head) && !parts.isEmpty()) {
            head = parts.remove(0);
        }
        String core = core(head, parts);
        String rest = parts.stream().map(part -> ", " + part).collect(Collectors.joining());
        return new ProposedName(id(core, description), core + rest);
    }

    /** Takes the part that tells the kind of food away from the others. */
    private static String core(String head, List<String> parts) {
        String food = small(head);
        for (String part : parts) {
            boolean tells = !NOISE.contains(part)
                    && part.split(" ", -1).length <= WORDS_OF_A_KIND
                    && part.matches("[A-Za-z' -]+");
            if (tells) {
                parts.remove(part);
                return CUT_BEHIND.contains(head) ? food + " " + part : part + " " + food;
            }
        }
        return food;
    }

    /** Only the first letter is made small, and not in names such as USDA. */
    private static String small(String head) {
        boolean capitals = head.length() > 1 && Character.isUpperCase(head.charAt(1));
        return capitals ? head : Character.toLowerCase(head.charAt(0)) + head.substring(1);
    }

    private static String id(String core, Description description) {
        var words = new ArrayList<>(Words.of(core.replace("%", "").replace("'", "")));
        STATES.stream()
                .filter(state -> description.has(state) && !words.contains(state))
                .findFirst()
                .ifPresent(words::add);
        var id = new StringBuilder();
        for (String word : words) {
            if (id.length() + 1 + word.length() <= LONGEST_ID) {
                id.append(id.length() == 0 ? "" : "_").append(word);
            }
        }
        boolean letterFirst = id.length() > 0 && Character.isLetter(id.charAt(0));
        return letterFirst ? id.toString() : "food_" + id;
    }
}
