package batchwright.report.print;

import batchwright.food.Measure;
import batchwright.food.MeasureName;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.Snack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** Amounts as people read them: rounded half up, a point before decimals, the same in every locale. */
public final class Show {

    private static final String AT_LEAST = ">=";
    private static final String AT_LEAST_NOTE =
            ">= means at least: a food in it has no value for this in the catalogue, so the true figure may be higher.";

    private Show() {}

    /** What >= means, below a table in which it stands. */
    public static void atLeastNote(Page page, TextTable table) {
        if (table.contains(AT_LEAST)) {
            page.paragraph("  ", "  ", AT_LEAST_NOTE);
        }
    }

    public static BigDecimal rounded(BigDecimal value, int decimals) {
        return value.setScale(decimals, RoundingMode.HALF_UP);
    }

    public static String whole(BigDecimal value) {
        return rounded(value, 0).toPlainString();
    }

    public static String whole(double value) {
        return whole(BigDecimal.valueOf(value));
    }

    public static String twoDecimals(double value) {
        return rounded(BigDecimal.valueOf(value), 2).toPlainString();
    }

    public static String oneDecimal(BigDecimal value) {
        return rounded(value, 1).toPlainString();
    }

    public static String oneDecimal(double value) {
        return oneDecimal(BigDecimal.valueOf(value));
    }

    /** At most this many decimals, none of them a closing zero. */
    public static BigDecimal plain(BigDecimal value, int decimals) {
        BigDecimal stripped = rounded(value, decimals).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    public static String plainText(BigDecimal value, int decimals) {
        return plain(value, decimals).toPlainString();
    }

    /** A PAL: at most three decimals, as common practice has them (1.375). */
    public static String pal(double pal) {
        return plainText(BigDecimal.valueOf(pal), 3);
    }

    /** For sentences: 83, or "at least 83" when some food has no value for it. */
    public static String amount(Nutrients nutrients, Nutrient nutrient) {
        return (nutrients.isComplete(nutrient) ? "" : "at least ") + whole(nutrients.get(nutrient));
    }

    /** For tables: 83, or >=83, which {@link #AT_LEAST_NOTE} explains below the table. */
    public static String cell(Nutrients nutrients, Nutrient nutrient) {
        return mark(nutrients, nutrient) + whole(nutrients.get(nutrient));
    }

    /** The same for how far a table's figure is from a target: +12, or >=+12. */
    public static String difference(Nutrients nutrients, Nutrient nutrient, int target) {
        // Of the rounded figure, so that a reader can check the sum.
        int rounded = rounded(nutrients.get(nutrient), 0).intValueExact();
        return mark(nutrients, nutrient) + signed(rounded - target);
    }

    private static String mark(Nutrients nutrients, Nutrient nutrient) {
        return mark(nutrients.isComplete(nutrient));
    }

    /** What stands before an amount in a table. */
    public static String mark(boolean complete) {
        return complete ? "" : AT_LEAST;
    }

    /** A difference with its sign: +12, -3, 0. */
    public static String signed(int difference) {
        return difference > 0 ? "+" + difference : Integer.toString(difference);
    }

    public static String money(Money money, Currency currency) {
        return currency.text(money) + " " + currency;
    }

    /** A dash for what has no price. */
    public static String money(Optional<Money> money, Currency currency) {
        return money.map(currency::text).orElse("-");
    }

    /** Such as " (budget 60.00)"; empty when there is none. */
    public static String budget(Optional<Money> budget, Currency currency) {
        return budget.map(most -> " (budget " + currency.text(most) + ")").orElse("");
    }

    /** The same; or such as ", more than the budget of 60.00". */
    public static String budget(Optional<Money> budget, Money cost, Currency currency) {
        return budget.filter(most -> cost.compareTo(most) > 0)
                .map(most -> ", more than the budget of " + currency.text(most))
                .orElseGet(() -> budget(budget, currency));
    }

    /** Such as "2.70 under the budget of 60.00", or over it; empty when there is none. */
    public static Optional<String> underBudget(Optional<Money> budget, Money cost, Currency currency) {
        return budget.map(most -> (cost.compareTo(most) > 0
                        ? currency.text(cost.minus(most)) + " over"
                        : currency.text(most.minus(cost)) + " under")
                + " the budget of " + currency.text(most));
    }

    public static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** 1 medium banana (118 g); 2 tbsp peanut butter, smooth (32 g); 2 handfuls almonds (56.7 g). */
    public static String snack(Snack snack) {
        Measure measure = snack.measure();
        return MeasureName.counted(snack.count(), measure.name()) + " "
                + measure.food().name() + " (" + plainText(snack.grams(), 1) + " g)";
    }

    public static String snacks(Collection<Snack> snacks) {
        return snacks.stream().map(Show::snack).collect(Collectors.joining(" + "));
    }

    /** For the head of a narrow column. */
    public static String shortly(Nutrient nutrient) {
        return switch (nutrient) {
            case FRUIT_VEG -> "fruit\n+veg";
            case CARBOHYDRATE -> "carb";
            default -> nutrient.label();
        };
    }

    /** The first letter large, for the start of a sentence or a heading. */
    public static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
