package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import batchwright.report.html.part.Document;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Templates;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.needs.LearnedWords;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The page of one eater: the target, what the weighings say in pictures with their tables, where weight goes. Who gets no figures in a
 * terminal gets none here.
 *
 * @param says the answer in a sentence
 * @param weighings paragraphs on what the weighings say; none without weighings
 * @param figures beside them
 * @param ahead where weight goes by the target
 * @param target a line for each limit of a day
 */
public record NeedsPage(
        Document document,
        String says,
        List<String> weighings,
        List<Figure> figures,
        Optional<WeightFigure> ahead,
        List<String> target,
        CautionsSection cautions) {
    private static final ReportStyle STYLE = new ReportStyle(new LabelStyle(LabelSheet.A4_2X7, LabelRounding.US));

    /** As HTML. */
    public static String of(Needs needs, Optional<Learned> learned) {
        return Templates.render("needs", page(needs, learned));
    }

    private static NeedsPage page(Needs needs, Optional<Learned> learned) {
        boolean hidden =
                needs.hidesFigures() || learned.filter(Learned::hidesFigures).isPresent();
        Document document = STYLE.document(needs.eater().name(), List.of());
        if (hidden || needs.target().isEmpty()) {
            List<Caution> why = new ArrayList<>(stops(learned));
            needs.cautions().stream()
                    .filter(caution -> needs.hidesFigures() || caution.stopsPlanning())
                    .forEach(why::add);
            String says =
                    needs.eater().name() + (hidden ? ": no figures" : ": no target") + " here, for the reason below.";
            return new NeedsPage(
                    document, says, List.of(), List.of(), Optional.empty(), List.of(), cautions(why.stream()));
        }
        return new NeedsPage(
                document,
                answer(needs),
                learned.map(NeedsPage::weighings).orElse(List.of()),
                learned.map(LearnedFigures::of).orElse(List.of()),
                WeightFigure.of(needs),
                needs.lines().stream()
                        .map(line -> Show.capital(line.name()) + ": " + line.says() + ".")
                        .toList(),
                cautions(Stream.concat(
                        Stream.concat(stops(learned).stream(), learned.map(Learned::told).orElse(List.of()).stream()),
                        needs.cautions().stream())));
    }

    private static String answer(Needs needs) {
        return needs.target()
                .map(target -> "%s: %s kcal a day (%s), at least %s g of protein; goal: %s."
                        .formatted(
                                needs.eater().name(),
                                target.energyAimKcal(),
                                target.day(Nutrient.ENERGY).says(),
                                target.day(Nutrient.PROTEIN).least(),
                                needs.goalSays()))
                .orElse("");
    }

    private static List<String> weighings(Learned learned) {
        List<String> says = new ArrayList<>();
        says.add(LearnedWords.evidence(learned.seen()));
        says.addAll(LearnedWords.figures(learned.seen()));
        says.addAll(LearnedWords.advice(learned.advice()));
        return says;
    }

    private static List<Caution> stops(Optional<Learned> learned) {
        return learned.map(Learned::advice)
                .filter(TargetAdvice.Stop.class::isInstance)
                .map(stop -> ((TargetAdvice.Stop) stop).why())
                .orElse(List.of());
    }

    private static CautionsSection cautions(Stream<Caution> cautions) {
        return new CautionsSection(
                cautions.map(caution -> new CautionsSection.Line("", caution.text() + " [" + caution.source() + "]"))
                        .toList());
    }
}
