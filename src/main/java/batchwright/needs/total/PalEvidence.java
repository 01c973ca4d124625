package batchwright.needs.total;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.ActivityFacts;
import batchwright.person.CommonMultiplier;
import batchwright.person.Diary;
import batchwright.person.FaoLevel;
import batchwright.person.PalFromWeighings;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How sure a PAL is. Those of people who give the same answer are taken as normal about it, and cut off where nobody lives for long: at 1.1
 * and 2.5 (Westerterp 2013: 1.1-1.2 to 2.0-2.5).
 *
 * <p>The standard deviation is 10 % of the PAL, a choice: 0.15 was seen among 41 people of like steps by doubly labelled water (BMC Res
 * Notes 2011;4:512), and there is no study of the rest. A word is easily the wrong one: 0.2 is added as squares, a choice.
 *
 * @param sd standard deviation
 * @param source of the PAL and of how sure it is
 * @param caveats what to know before trusting it; may be empty
 */
public record PalEvidence(double pal, double sd, Citation source, List<String> caveats) {
    private static final double SD_OF_PAL = 0.10;
    private static final double SD_OF_A_WORD = 0.2;
    /** 125 of 2500 kcal: what some weeks of weighings come to. */
    private static final double SD_OF_WEIGHINGS = 0.05;

    private static final double LEAST_SUSTAINED = 1.1;
    private static final double MOST_SUSTAINED = 2.5;
    private static final double ONE_SIDE = (1 - TotalRange.COVERAGE) / 2;

    /** FAO/WHO/UNU 2004, from memory, not seen: below hardly anybody is up and about; above it is hard to keep up. */
    private static final double LEAST_LIVED = 1.40;

    private static final double MOST_LIVED = 2.40;
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    public static PalEvidence of(PhysicalActivity activity) {
        PalEvidence evidence = activity.match(new BySaying());
        List<String> caveats = new ArrayList<>(evidence.caveats);
        caveats.addAll(hardlyLived(activity.pal()));
        return new PalEvidence(evidence.pal, evidence.sd, evidence.source, List.copyOf(caveats));
    }

    /** Lower end for 8 people in 10. */
    public double leastPal() {
        return quantile(ONE_SIDE);
    }

    /** Upper end for 8 people in 10. */
    public double mostPal() {
        return quantile(1 - ONE_SIDE);
    }

    /** The PAL below which this share of people lies. */
    double quantile(double share) {
        double below = NORMAL.cumulativeProbability((Math.min(LEAST_SUSTAINED, pal) - pal) / sd);
        double upTo = NORMAL.cumulativeProbability((Math.max(MOST_SUSTAINED, pal) - pal) / sd);
        return pal + sd * NORMAL.inverseCumulativeProbability(below + share * (upTo - below));
    }

    private static List<String> hardlyLived(double pal) {
        if (Numerals.below(pal, LEAST_LIVED)) {
            return List.of("under PAL 1.40 people are hardly up and about (FAO/WHO/UNU 2004, from memory)");
        }
        return Numerals.above(pal, MOST_LIVED)
                ? List.of("over PAL 2.40 is hard to keep up for long (FAO/WHO/UNU 2004, from memory)")
                : List.of();
    }

    private static PalEvidence counted(PhysicalActivity activity, String source, String... caveats) {
        double pal = activity.pal();
        return new PalEvidence(
                pal,
                SD_OF_PAL * pal,
                new Citation(source + "; people who say the same differ by 10 % (SD), a choice of this program"),
                List.of(caveats));
    }

    private static PalEvidence word(PhysicalActivity activity, String source, String... caveats) {
        double pal = activity.pal();
        return new PalEvidence(
                pal,
                Math.hypot(SD_OF_PAL * pal, SD_OF_A_WORD),
                new Citation(source
                        + "; people who say the same differ by 10 %, and a word is easily wrong by 0.2 (SD), choices of"
                        + " this program"),
                List.of(caveats));
    }

    private static final class BySaying implements PhysicalActivity.Cases<PalEvidence> {
        @Override
        public PalEvidence level(FaoLevel level) {
            return word(
                    level,
                    "FAO/WHO/UNU, Human energy requirements, 2004: level \"" + level.label() + "\", "
                            + Numerals.twoDecimals(level.leastPal()) + "-" + Numerals.twoDecimals(level.mostPal()),
                    "one word is a rough answer: facts (activity: facts) make the range narrower");
        }

        @Override
        public PalEvidence multiplier(CommonMultiplier multiplier) {
            return word(
                    multiplier,
                    Citation.commonPractice("multipliers of resting energy").text(),
                    "no study stands behind the multiplier: facts or a diary are better founded");
        }

        @Override
        public PalEvidence number(PalNumber number) {
            return counted(number, "as the profile says");
        }

        @Override
        public PalEvidence weighings(PalFromWeighings weighings) {
            return new PalEvidence(
                    weighings.pal(),
                    SD_OF_WEIGHINGS * weighings.pal(),
                    new Citation("the eater's own weighings and recorded food"),
                    List.of());
        }

        @Override
        public PalEvidence diary(Diary diary) {
            return counted(
                    diary,
                    "METs of Ainsworth et al., Med Sci Sports Exerc 2011;43:1575-1581",
                    "METs multiply your own resting energy here, as FAO/WHO/UNU do with their activity ratios");
        }

        @Override
        public PalEvidence facts(ActivityFacts facts) {
            String[] held = facts.unheldPal() == facts.pal()
                    ? new String[0]
                    : new String[] {
                        "the facts come to " + Numerals.twoDecimals(facts.unheldPal()) + "; it is held at "
                                + Numerals.twoDecimals(facts.pal()) + ", as far as people of this age live for long"
                    };
            return counted(
                    facts,
                    "day, steps and training, put together by this program from COMA 1991, BMC Res Notes 2011;4:512 and the METs of"
                            + " Ainsworth et al. 2011",
                    held);
        }
    }
}
