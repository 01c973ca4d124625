package batchwright.person;

import java.util.List;

/**
 * Activity by what can be counted. PAL = base(day) + 0.02 (steps - 4000) / 1000 + sum of training hours a day x (MET - 1) / 24 / 0.9,
 * to 0.01, within what people live at: 1.2 to 2.4, and from 60 to 70 years the upper end falls to 2.0.
 *
 * <p>The formula is a choice of this program. Published are its parts: two days in a calorimeter give 0.019 to 0.022 for each 1000 steps (BMC
 * Res Notes 2011;4:512); METs count multiples of rest (Ainsworth et al. 2011); 0.9 takes in the heat of food, 10 % of a total; adults
 * sustain a PAL of 1.1-1.2 to 2.0-2.5, less in old age (Westerterp 2013). That a day without counted steps has 4000 is a choice.
 *
 * @param stepsADay of a usual day, those of training left out
 * @param training minutes a week for each activity
 */
public record ActivityFacts(UsualDay day, int stepsADay, List<Diary.Entry> training, double ageYears)
        implements PhysicalActivity {
    public static final int USUAL_STEPS = 4000;
    /** Of walking at an ordinary pace; common practice. */
    public static final int STEPS_A_MINUTE = 100;

    private static final double PAL_PER_STEP = 0.02 / 1000;
    private static final double HEAT_OF_FOOD_LEFT = 0.9;
    private static final double LEAST = 1.2;
    private static final double MOST = 2.4;
    private static final double MOST_OLD = 2.0;
    private static final double FALLS_FROM_YEARS = 60;
    private static final double FALLS_TO_YEARS = 70;
    private static final double HUNDREDTHS = 100;

    public ActivityFacts {
        training = List.copyOf(training);
    }

    /** Net cost of training, rest not counted / resting energy, on the average day. */
    public double trainingShare() {
        return training.stream()
                .mapToDouble(
                        entry -> (entry.activity().met().doubleValue() - 1) * entry.minutes() / Diary.MINUTES_A_WEEK)
                .sum();
    }

    /** What the formula gives before it is held within what people live at. */
    public double unheldPal() {
        return Math.round(HUNDREDTHS
                        * (day.pal() + PAL_PER_STEP * (stepsADay - USUAL_STEPS) + trainingShare() / HEAT_OF_FOOD_LEFT))
                / HUNDREDTHS;
    }

    @Override
    public double pal() {
        return Math.round(HUNDREDTHS * Math.max(LEAST, Math.min(mostPal(), unheldPal()))) / HUNDREDTHS;
    }

    private double mostPal() {
        double old = (ageYears - FALLS_FROM_YEARS) / (FALLS_TO_YEARS - FALLS_FROM_YEARS);
        return MOST - (MOST - MOST_OLD) * Math.max(0, Math.min(1, old));
    }

    @Override
    public String label() {
        return "facts";
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.facts(this);
    }
}
