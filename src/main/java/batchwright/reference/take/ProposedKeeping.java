package batchwright.reference.take;

/**
 * Whether a leftover would spoil within about two weeks, tins counted as opened; and whether the food counts as fruit and
 * vegetables.
 */
record ProposedKeeping(boolean perishable, boolean fruitVeg) {
    private static final String KEEPS = "dried dry dehydrated powder powdered frozen flour jerky pickled candied";
    private static final String OPENED_OR_COOKED =
            "cooked canned prepared boiled roasted drained stewed heated baked fried strained junior";
    private static final String KEEPING_CHEESE =
            "cheddar parmesan romano swiss gouda edam gruyere provolone mozzarella feta colby monterey american fontina tilsit";
    private static final String KEEPING_VEGETABLES =
            "onions carrots cabbage beets turnips rutabagas winter pumpkin celeriac parsnips";
    private static final String KEEPING_FRUIT = "apples oranges lemons limes grapefruit pomegranates quinces";

    static ProposedKeeping of(String group, Description d) {
        boolean counts = (group.equals("vegetable") || group.equals("fruit"))
                && !d.has("dried dehydrated powder juice candied pickled syrup seeds chips leather");
        return new ProposedKeeping(!d.has(KEEPS) && spoils(group, d), counts);
    }

    private static boolean spoils(String group, Description d) {
        boolean opened = d.has(OPENED_OR_COOKED);
        return switch (group) {
            case "meat", "fish" -> true;
            case "dairy" -> !d.startsWith("butter") && !d.has(KEEPING_CHEESE) && !d.startsWith("ice cream");
            case "egg" -> !d.startsWith("egg, whole, raw");
            case "vegetable" -> opened || !d.has(KEEPING_VEGETABLES);
            case "fruit" -> opened || !d.has(KEEPING_FRUIT);
            case "legume" -> opened || d.has("tofu tempeh soymilk sprouted natto falafel yogurt");
            case "grain" ->
                opened || d.has("bread rolls bagels tortillas muffins naan biscuits croissants pita refrigerated");
            case "sauce" -> opened || d.has("hummus salsa pesto");
            case "other" -> opened || d.has("fast restaurant entree soup milk");
            case "starchy_vegetable", "sweet" -> opened;
            default -> false;
        };
    }
}
