package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.evidence.Estimate;
import batchwright.person.ActivityFacts;
import batchwright.person.Body;
import batchwright.person.CommonMultiplier;
import batchwright.person.FaoLevel;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.person.Sex;
import batchwright.person.UsualDay;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TotalRangeTest {
    private static final Body MAN = TestEater.body(Sex.MALE, 80, 180, 30);

    /**
     * On paper, for a number: 9 % and 10 % are sqrt(0.0081 + 0.01 + 0.000081) = 13.5 % of the total, the product of two normal errors; 8 of 10 lie
     * within 1.2816 of these, 17.3 %. The product leans a little to above, and people above 2.5 or under 1.1 are left out.
     */
    @ParameterizedTest
    @CsvSource({"1.5", "1.65", "1.8"})
    void is_about_17_percent_either_way_for_a_number(double pal) {
        TotalRange range = range(new PalNumber(pal));
        assertThat(range.most().kcal() / (1780 * pal)).isCloseTo(1.173, within(0.01));
        assertThat(range.least().kcal() / (1780 * pal)).isCloseTo(0.827, within(0.01));
    }

    /**
     * 2,500 people of every kind whose resting energy and PAL are drawn from the stated errors by rejection, seeded: 8 in 10 lie inside, and as
     * many below as above. Said of a number, of facts, of a word.
     */
    @Test
    void holds_8_of_10_people_of_the_description() {
        var random = new Random(13);
        int inside = 0;
        int below = 0;
        int people = 2500;
        for (int person = 0; person < people; person++) {
            Needs needs = anybody(random);
            double total = resting(needs, random) * drawnPal(needs.palEvidence(), random);
            TotalRange range = needs.totalRange();
            inside += total >= range.least().kcal() && total <= range.most().kcal() ? 1 : 0;
            below += total < range.least().kcal() ? 1 : 0;
        }
        assertThat(inside / (double) people).isBetween(0.77, 0.83);
        assertThat(below / (double) people).isBetween(0.07, 0.13);
    }

    /** Before, 63 to 74 of 100 were inside when the word was wrong by 0.2, and the range did not say for how many it was made. */
    @ParameterizedTest
    @CsvSource({"-0.2", "0", "0.2"})
    void holds_about_8_of_10_for_a_word_that_is_wrong_by_0_2_for_a_third_each_way(double always) {
        var random = new Random(7);
        Needs needs = TestEater.of(MAN).activity(FaoLevel.ACTIVE).needs();
        TotalRange range = needs.totalRange();
        int mixed = 0;
        int allWrong = 0;
        int people = 3000;
        for (int person = 0; person < people; person++) {
            double resting = resting(needs, random);
            mixed += isInside(range, resting * lived(FaoLevel.ACTIVE.pal() + 0.2 * (person % 3 - 1), random)) ? 1 : 0;
            allWrong += isInside(range, resting * lived(FaoLevel.ACTIVE.pal() + always, random)) ? 1 : 0;
        }
        assertThat(mixed / (double) people).isBetween(0.75, 0.86);
        assertThat(allWrong / (double) people).isGreaterThan(0.74);
    }

    @Test
    void a_word_is_less_sure_than_facts_that_come_to_the_same() {
        var facts = new ActivityFacts(UsualDay.CARRYING, 7000, List.of(), 30);
        assertThat(facts.pal()).isEqualTo(FaoLevel.ACTIVE.pal());
        assertThat(width(range(FaoLevel.ACTIVE))).isGreaterThan(1.2 * width(range(facts)));
    }

    private static Needs anybody(Random random) {
        double cm = 155 + 35 * random.nextDouble();
        double bmi = 19 + 14 * random.nextDouble();
        Sex sex = random.nextBoolean() ? Sex.MALE : Sex.FEMALE;
        Body body = TestEater.body(sex, bmi * cm * cm / 10_000, cm, 20 + 50 * random.nextDouble());
        UsualDay[] days = UsualDay.values();
        List<PhysicalActivity> said = List.of(
                new PalNumber(1.4 + 0.8 * random.nextDouble()),
                random.nextBoolean() ? FaoLevel.SEDENTARY : FaoLevel.ACTIVE,
                new ActivityFacts(
                        days[random.nextInt(days.length)], 1000 * random.nextInt(15), List.of(), body.ageYears()));
        return TestEater.of(body)
                .activity(said.get(random.nextInt(said.size())))
                .needs();
    }

    /** 9 % about the equation, no body fat said. */
    private static double resting(Needs needs, Random random) {
        return needs.restingInUse().perDay().kcal() * (1 + 0.09 * random.nextGaussian());
    }

    /** Nobody under 1.1 or above 2.5. */
    private static double drawnPal(PalEvidence evidence, Random random) {
        while (true) {
            double pal = evidence.pal() + evidence.sd() * random.nextGaussian();
            if (pal > 1.1 && pal < 2.5) {
                return pal;
            }
        }
    }

    /** 10 % among people of like days. */
    private static double lived(double mean, Random random) {
        return mean * (1 + 0.10 * random.nextGaussian());
    }

    private static boolean isInside(TotalRange range, double total) {
        return total >= range.least().kcal() && total <= range.most().kcal();
    }

    private static double width(TotalRange range) {
        return range.most().kcal() - range.least().kcal();
    }

    @Test
    void never_lies_beside_the_total() {
        for (double pal : new double[] {1.0, 1.05, 1.1, 2.4, 2.5}) {
            TotalRange range = range(new PalNumber(pal));
            assertThat(range.least().kcal()).isLessThanOrEqualTo(1780 * pal);
            assertThat(range.most().kcal()).isGreaterThanOrEqualTo(1780 * pal);
        }
    }

    /** FAO/WHO/UNU 2004, from memory: sedentary 1.40-1.69, vigorous 2.00-2.40; seen: active 1.70-1.99. */
    @ParameterizedTest
    @CsvSource({"SEDENTARY, 1.40, 1.69", "ACTIVE, 1.70, 1.99", "VIGOROUS, 2.00, 2.40"})
    void has_the_bands_of_fao(FaoLevel level, double least, double most) {
        assertThat(level.leastPal()).isEqualTo(least);
        assertThat(level.mostPal()).isEqualTo(most);
        assertThat(level.pal()).isBetween(least, most);
        PalEvidence evidence = PalEvidence.of(level);
        assertThat(evidence.source().text()).contains("FAO/WHO/UNU").contains(level.label());
        assertThat(evidence.caveats()).hasSize(1);
    }

    /** Listed on many public pages, without a study: 1.2, 1.375, 1.55, 1.725, 1.9. */
    @ParameterizedTest
    @CsvSource({"DESK, 1.2", "LIGHT, 1.375", "MEDIUM, 1.55", "HARD, 1.725", "VERY_HARD, 1.9"})
    void calls_a_multiplier_common_practice(CommonMultiplier multiplier, double pal) {
        assertThat(multiplier.pal()).isEqualTo(pal);
        PalEvidence evidence = PalEvidence.of(multiplier);
        assertThat(evidence.source().text()).startsWith("common practice");
        assertThat(evidence.caveats()).anyMatch(caveat -> caveat.contains("no study"));
    }

    /** FAO/WHO/UNU 2004, from memory: people under 1.40 are hardly up and about, over 2.40 is hard to sustain. */
    @ParameterizedTest
    @CsvSource({"1.2, under PAL 1.40", "1.39, under PAL 1.40", "1.40, ''", "2.40, ''", "2.41, over PAL 2.40"})
    void warns_of_a_pal_that_hardly_anybody_lives_at(double pal, String caveat) {
        assertThat(PalEvidence.of(new PalNumber(pal)).caveats().stream()
                        .anyMatch(c -> !caveat.isEmpty() && c.startsWith(caveat)))
                .isEqualTo(!caveat.isEmpty());
        assertThat(PalEvidence.of(new PalNumber(pal)).caveats()).hasSize(caveat.isEmpty() ? 0 : 1);
    }

    private static TotalRange range(PhysicalActivity activity) {
        return TestEater.of(MAN).activity(activity).needs().totalRange();
    }

    /**
     * The second opinions come from measured total energy and know nothing of this range. On 3,432 people at each level (19-79
     * years, 150-200 cm, BMI 18.5-35), measured: of NASEM 97.0 % (sedentary) and 93.8 % (active) lie inside, of IOM 99.4 % and 99.8 %.
     */
    @ParameterizedTest
    @CsvSource({"SEDENTARY, NASEM, 0.96", "ACTIVE, NASEM, 0.93", "SEDENTARY, IOM, 0.99", "ACTIVE, IOM, 0.99"})
    void holds_nearly_all_second_opinions(FaoLevel level, String who, double least) {
        assertThat(shareBeside(level, who, 0)).isGreaterThan(least);
    }

    /**
     * FAO's vigorous day is PAL 2.25, while the top categories of NASEM and IOM begin at 1.85 and 1.9 and stand for all above. So
     * their figures lie lower, sometimes below the range (measured: NASEM 8.2 %, IOM none) and never above it.
     */
    @ParameterizedTest
    @CsvSource({"NASEM, 0.083", "IOM, 0.005"})
    void lies_above_some_second_opinions_for_the_vigorous(String who, double most) {
        assertThat(shareBeside(FaoLevel.VIGOROUS, who, -1)).isBetween(most - 0.01, most);
        assertThat(shareBeside(FaoLevel.VIGOROUS, who, 1)).isZero();
    }

    /** @param side -1 below the range, 0 inside, 1 above */
    private static double shareBeside(FaoLevel level, String who, int side) {
        int there = 0;
        int all = 0;
        for (Sex sex : Sex.values()) {
            for (double cm = 150; cm <= 200; cm += 5) {
                for (double bmi = 18.5; bmi <= 35; bmi += 1.5) {
                    for (double years = 19; years <= 80; years += 5) {
                        Body body = TestEater.body(sex, bmi * cm * cm / 10_000, cm, years);
                        TotalRange range =
                                TestEater.of(body).activity(level).needs().totalRange();
                        for (Estimate opinion : SecondOpinions.of(body, level.pal())) {
                            if (opinion.equation().startsWith(who)) {
                                all++;
                                there += side(range, opinion) == side ? 1 : 0;
                            }
                        }
                    }
                }
            }
        }
        return there / (double) all;
    }

    private static int side(TotalRange range, Estimate opinion) {
        if (opinion.perDay().compareTo(range.least()) < 0) {
            return -1;
        }
        return opinion.perDay().compareTo(range.most()) > 0 ? 1 : 0;
    }
}
