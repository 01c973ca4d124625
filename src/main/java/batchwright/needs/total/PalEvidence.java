package batchwright.needs.total;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.person.Activity;
import batchwright.person.CommonMultiplier;
import batchwright.person.Diary;
import batchwright.person.FaoLevel;
import batchwright.person.PalNumber;
import java.util.ArrayList;
import java.util.List;

/**
 * How sure a PAL is.
 *
 * @param leastPal lower end of where the true one most likely lies
 * @param mostPal upper end
 * @param source of the PAL and its two ends
 * @param caveats what to know before trusting it; may be empty
 */
public record PalEvidence(double leastPal, double mostPal, Citation source, List<String> caveats) {
    /** The half-widths of the bands of FAO/WHO/UNU are 8 to 9 % of their middles: nobody can say it better without measuring. */
    private static final double TAKEN_ERROR = 0.10;

    private static final double AT_REST = 1.0;

    /** FAO/WHO/UNU 2004, from memory, not seen: below hardly anybody is up and about; above it is hard to keep up. */
    private static final double LEAST_LIVED = 1.40;

    private static final double MOST_LIVED = 2.40;
    private static final String TAKEN = "; right to 10 %, a choice of this program";

    public static PalEvidence of(Activity activity) {
        PalEvidence evidence = activity.match(new BySaying());
        List<String> caveats = new ArrayList<>(evidence.caveats);
        caveats.addAll(hardlyLived(activity.pal()));
        return new PalEvidence(evidence.leastPal, evidence.mostPal, evidence.source, List.copyOf(caveats));
    }

    private static List<String> hardlyLived(double pal) {
        if (Words.below(pal, LEAST_LIVED)) {
            return List.of("under PAL 1.40 people are hardly up and about (FAO/WHO/UNU 2004, from memory)");
        }
        return Words.above(pal, MOST_LIVED)
                ? List.of("over PAL 2.40 is hard to keep up for long (FAO/WHO/UNU 2004, from memory)")
                : List.of();
    }

    private static PalEvidence taken(Activity activity, String source, String... caveats) {
        double pal = activity.pal();
        return new PalEvidence(
                Math.max(AT_REST, pal * (1 - TAKEN_ERROR)),
                pal * (1 + TAKEN_ERROR),
                new Citation(source + TAKEN),
                List.of(caveats));
    }

    private static final class BySaying implements Activity.Cases<PalEvidence> {
        @Override
        public PalEvidence level(FaoLevel level) {
            return new PalEvidence(
                    level.leastPal(),
                    level.mostPal(),
                    new Citation("FAO/WHO/UNU, Human energy requirements, 2004: band of the level \"" + level.label()
                            + "\""),
                    List.of());
        }

        @Override
        public PalEvidence multiplier(CommonMultiplier multiplier) {
            return taken(
                    multiplier,
                    Citation.commonPractice("multipliers of resting energy").text(),
                    "no study stands behind the multiplier: a level or a diary is better founded");
        }

        @Override
        public PalEvidence number(PalNumber number) {
            return taken(number, "as the profile says");
        }

        @Override
        public PalEvidence diary(Diary diary) {
            return taken(
                    diary,
                    "METs of Ainsworth et al., Med Sci Sports Exerc 2011;43:1575-1581",
                    "METs multiply your own resting energy here, as FAO/WHO/UNU do with their activity ratios");
        }
    }
}
