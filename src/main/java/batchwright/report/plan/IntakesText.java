package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import batchwright.needs.intakes.Intake.Standing;
import batchwright.report.needs.IntakeWords;
import batchwright.report.needs.IntakesTable;
import batchwright.report.print.Page;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * An average day of each eater beside published amounts: in short what is below or above, or all of it in a table. It must not
 * alarm: an amount that is not reached for some days is no deficiency.
 */
final class IntakesText {
    private static final String BELOW = "Below " + Intake.REACHED_PERCENT + " % of the published amount";
    /** Limits that are shown even where they are kept. */
    private static final Set<Nutrient> SHOWN = EnumSet.of(Nutrient.SATURATED_FAT, Nutrient.SODIUM);

    private final List<Needs> eaters;
    private final Function<Needs, List<Intake>> intakes;
    private final Page page;

    IntakesText(PlanAnswer answer, Page page) {
        this(answer.needs(), answer::intakes, page);
    }

    /** @param intakes what the average day of an eater holds */
    IntakesText(List<Needs> eaters, Function<Needs, List<Intake>> intakes, Page page) {
        this.eaters = eaters;
        this.intakes = intakes;
        this.page = page;
    }

    void write(boolean all) {
        page.heading("NUTRIENTS: an average day beside published amounts");
        for (Needs needs : eaters) {
            page.gap();
            List<Intake> mine = intakes.apply(needs);
            page.line("  " + needs.eater().name());
            if (all) {
                new IntakesTable(mine, page).write();
            } else {
                summary(mine);
            }
            if (mine.stream().noneMatch(i -> IntakeWords.isBySexAndAge(i.reference()))) {
                page.paragraph("    ", "    ", IntakeWords.NO_TABLE);
            }
        }
        page.gap();
        page.paragraph(
                "  ",
                "  ",
                "A few days below are no deficiency: the amounts leave a margin over what most people need. What cooking takes from"
                        + " vitamins is not counted. Whether a supplement makes sense is a question for a"
                        + " clinician." + (all ? "" : " --nutrients shows all."));
        if (all) {
            IntakesTable.explain(page);
        }
    }

    private void summary(List<Intake> intakes) {
        say(intakes, Standing.SHORT, BELOW + ": ", IntakesText::ofRecommended);
        say(
                intakes,
                Standing.MAYBE_SHORT,
                BELOW + ", or not, because a food has no value for it: ",
                IntakesText::ofRecommended);
        say(intakes, Standing.ABOVE, "Above a limit: ", IntakesText::besideLimit);
        say(
                intakes,
                Standing.MAYBE_ABOVE,
                "Above a limit that does not count all of it, so it may be fine: ",
                IntakesText::besideLimit);
        List<Intake> within =
                intakes.stream().filter(i -> i.standing() == Standing.WITHIN).toList();
        List<Intake> shown =
                within.stream().filter(i -> SHOWN.contains(i.nutrient())).toList();
        say(shown, Standing.WITHIN, "Not above a limit: ", IntakesText::besideLimit);
        page.paragraph(
                "    ",
                "      ",
                "In line with what is published, as far as is known: " + (within.size() - shown.size()) + " more.");
    }

    private void say(List<Intake> intakes, Standing standing, String words, Function<Intake, String> say) {
        String list =
                intakes.stream().filter(i -> i.standing() == standing).map(say).collect(Collectors.joining("; "));
        if (!list.isEmpty()) {
            page.paragraph("    ", "      ", words + list + ".");
        }
    }

    /** vitamin D at least 2.9 of 15 ug (19 %). */
    private static String ofRecommended(Intake intake) {
        return IntakeWords.name(intake.nutrient()) + " " + (intake.complete() ? "" : "at least ")
                + IntakeWords.figure(intake.aDay())
                + intake.reference()
                        .recommended()
                        .map(r -> " of " + IntakeWords.printed(r.amount()))
                        .orElse("")
                + " " + intake.nutrient().unit()
                + intake.percent().map(percent -> " (" + percent + " %)").orElse("");
    }

    /** saturated fat 14.6 g, limit 36. */
    private static String besideLimit(Intake intake) {
        BigDecimal amount = intake.counted().orElse(intake.aDay());
        return whatIsLimited(intake.nutrient()) + " " + (intake.complete() ? "" : "at least ")
                + IntakeWords.figure(amount) + " " + intake.nutrient().unit()
                + intake.reference()
                        .limit()
                        .map(limit -> ", limit " + IntakeWords.printed(limit.amount()))
                        .orElse("");
    }

    private static String whatIsLimited(Nutrient nutrient) {
        return switch (nutrient) {
            case FOLATE_DFE -> "folic acid";
            case SODIUM -> "sodium, without salt that you add,";
            default -> IntakeWords.name(nutrient);
        };
    }
}
