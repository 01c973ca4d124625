package batchwright.report.needs;

import batchwright.food.Nutrient;
import batchwright.needs.intakes.Ceiling;
import batchwright.needs.intakes.Kind;
import batchwright.needs.intakes.Reference;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** How nutrients beside published amounts are written: names with units, figures, kinds, and what must be known of them. */
public final class IntakeWords {
    public static final String NO_TABLE =
            "Minerals and vitamins are compared with nothing: the published table begins at 19 years, and in pregnancy and"
                    + " while breastfeeding the amounts are others: ask your midwife, doctor or clinic.";

    private static final BigDecimal WHOLE_FROM = BigDecimal.valueOf(100);

    public static final List<String> NOTES = List.of(
            "RDA is enough for nearly every healthy person, so less is not too little for everybody. AI is what healthy people eat,"
                    + " where no RDA could be set. UL is a limit for every day over a long time; CDRR is what sodium is worth"
                    + " reducing to.",
            "The UL of magnesium is for supplements only, that of folate for added folic acid only, that of vitamin A for preformed"
                    + " vitamin A only (liver, egg, milk), which the catalogue does not tell from the carotene of plants."
                    + " Vitamin A is in RAE, folate in DFE.",
            "Source: Dietary Reference Intakes (IOM, National Academies). RDA and AI of minerals (2019) and vitamins checked;"
                    + " carbohydrate (2005), CDRR (2019) and UL (1997-2011) from memory.");

    private IntakeWords() {}

    /** vitamin C, mg. */
    public static String nameWithUnit(Nutrient nutrient) {
        return name(nutrient) + ", " + nutrient.unit();
    }

    public static String name(Nutrient nutrient) {
        return nutrient == Nutrient.FOLATE_DFE ? "folate" : nutrient.label();
    }

    /** One decimal below 100, where it says something. */
    public static String figure(BigDecimal amount) {
        return amount.compareTo(WHOLE_FROM) < 0 ? Show.oneDecimal(amount) : Show.whole(amount);
    }

    /** What was published, as it was printed. */
    public static String printed(BigDecimal amount) {
        return Show.plainText(amount, 1);
    }

    /** UL; or UL, supplements, where it is a limit of supplements only. */
    public static String kind(Ceiling limit) {
        return limit.kind().label()
                + switch (limit.counts()) {
                    case EVERYTHING -> "";
                    case SUPPLEMENTS -> ", supplements";
                    case FOLIC_ACID -> ", folic acid";
                    case PREFORMED -> ", preformed";
                };
    }

    /** Whether sex and age decide, and not energy. */
    public static boolean isBySexAndAge(Reference reference) {
        return kinds(reference).anyMatch(kind -> kind != Kind.TARGET && kind != Kind.GUIDE);
    }

    private static Stream<Kind> kinds(Reference reference) {
        return Stream.concat(
                reference.recommended().map(r -> r.kind()).stream(), reference.limit().map(Ceiling::kind).stream());
    }

    /** What the kinds are, and where they come from. */
    static void explainKinds(Page page) {
        NOTES.forEach(note -> page.paragraph("  ", "  ", note));
    }
}
