package batchwright.report.html.web;

import batchwright.quantity.Energy;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The units that somebody at a page chose; files stay in theirs. Of a bare number the unit is the chosen one.
 *
 * @param pounds body weight in lb, else kg
 * @param kilojoules energy in kJ, else kcal
 * @param ounces food in oz, else g
 */
public record PageUnits(boolean pounds, boolean kilojoules, boolean ounces) {
    private static final String NUMBER = "[0-9]+([.,][0-9]{1,2})?";
    private static final String BETWEEN = ".";
    /** The international agreement of 1959: a sixteenth of 453.59237 g. */
    private static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("28.349523125");

    /** @param kept by {@link #kept}; anything else in it says nothing */
    public static PageUnits of(String kept) {
        List<String> words = List.of(kept.split("[.]", -1));
        return new PageUnits(words.contains("lb"), words.contains("kJ"), words.contains("oz"));
    }

    /** As a browser keeps it. */
    public String kept() {
        return Stream.of(weight(), energy(), ounces ? "oz" : "g").collect(Collectors.joining(BETWEEN));
    }

    /** kg or lb */
    public String weight() {
        return pounds ? "lb" : "kg";
    }

    private String energy() {
        return kilojoules ? "kJ" : "kcal";
    }

    /** What stands below a field for a body weight. */
    public String weightHint() {
        return pounds ? "In lb; or with its unit, such as 74 kg." : "In kg; or with its unit, such as 163 lb.";
    }

    /** 900 kcal, or 3766 kJ. */
    public String energy(BigDecimal kcal) {
        return (kilojoules ? Show.whole(new Energy(kcal.doubleValue()).kilojoules()) : Show.whole(kcal)) + " "
                + energy();
    }

    /** 350 g, or 12.3 oz. */
    public String food(BigDecimal grams) {
        return ounces
                ? Show.oneDecimal(grams.divide(GRAMS_PER_OUNCE, MathContext.DECIMAL64)) + " oz"
                : Show.whole(grams) + " g";
    }

    /** A weight as the files take it: 75,5 is 75.5 kg. */
    public String bodyWeight(String typed) {
        return typed.matches(NUMBER) ? typed.replace(',', '.') + " " + weight() : typed;
    }

    /** An amount of food as the files take it; a bare number is in g, or in oz. */
    public String foodWeight(String typed) {
        return typed.matches(NUMBER) ? typed.replace(',', '.') + (ounces ? " oz" : " g") : typed;
    }

    /** A number with a decimal comma, as most of the world writes it, has a point in the files. */
    public static String withPoint(String typed) {
        return typed.matches(NUMBER) ? typed.replace(',', '.') : typed;
    }
}
