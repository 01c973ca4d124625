package batchwright.needs.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.weighing.PublishedTable;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The two figures of energy per kg, and what groups of people did. */
class HallChow2011PublishedTest {
    private static HallChow2011 of(double kg, double fatKg, double restingKcal, double pal) {
        return HallChow2011.of(new Mass(kg), new Mass(fatKg), new Energy(restingKcal * pal), pal);
    }

    /**
     * Form: supplement of Sanghvi et al. 2015; the table was worked out apart from this program, with costs of building of 180 and 230
     * kcal/kg where the program has 750 and 960 kJ/kg: 0.1 %.
     */
    @Test
    void the_table() {
        var table = new PublishedTable("linear_model_table.csv");
        int rows = 0;
        for (int row = 0; row < table.size(); row++) {
            if (table.text(row, "pair").equals("Hall2011 9441/1816")) {
                HallChow2011 found = of(80, table.number(row, "FM0_kg"), 1750, 1.5);
                assertThat(found.storedKcalPerKg()).isCloseTo(table.number(row, "rho_store_kcal_kg"), within(1.0));
                assertThat(found.dynamicKcalPerKg()).isCloseTo(table.number(row, "rho_dyn_kcal_kg"), within(3.0));
                rows++;
            }
        }
        assertThat(rows).isGreaterThan(3);
    }

    /** 2000 kcal eaten, 0.5 kg lost a week, 20 kg of fat: worked out apart; within 1 kcal for the cost of building. */
    @Test
    void expenditure_now_and_the_intake_that_holds_are_two_figures() {
        HallChow2011 body = of(80, 20, 1750, 1.5);
        double kgADay = -0.5 / 7;

        assertThat(2000 - body.storedKcalPerKg() * kgADay).isCloseTo(2488.0, within(1.0));
        assertThat(2000 - body.dynamicKcalPerKg() * kgADay).isCloseTo(2660.7, within(1.0));
        assertThat(body.burntShare() * (2660.7 - 2000)).isCloseTo(2660.7 - 2488.0, within(1.0));
    }

    /** Upkeep [kcal/kg/d] worked out apart with gamma 3.2 and 22 kcal/kg/d; half-times about a year: Hall et al. 2011. */
    @ParameterizedTest
    @CsvSource(textBlock = """
        # kg, fat kg, resting, PAL, upkeep
        75,   12,     1750,    1.6, 29.2
        110,  38,     2050,    1.6, 20.3
        60,   17,     1320,    1.4, 21.1
        100,  45,     1650,    1.8, 22.3
        """)
    void upkeep(double kg, double fatKg, double resting, double pal, double upkeep) {
        assertThat(of(kg, fatKg, resting, pal).upkeepKcalPerKg()).isCloseTo(upkeep, within(0.2));
    }

    /**
     * Groups, to 2 kg. Wong et al. 2014: 2467 to 1696 kcal for 183 days, -9.6 kg. Bouchard et al. 1990: 1000 kcal more on 84 of 100
     * days, +8.1 kg (body from memory).
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        # who,          kg,   fat,  resting, PAL,  kcal, days, change
        Wong 2014,      71.8, 23.9, 1410,    1.75, -771, 183,  -9.6
        Bouchard 1990,  60.3, 6.8,  1650,    1.7,   840, 100,   8.1
        """)
    void groups_changed_as_the_model_says(
            String who, double kg, double fatKg, double resting, double pal, double kcal, double days, double change) {
        assertThat(of(kg, fatKg, resting, pal).changeKg(kcal, days)).isCloseTo(change, within(2.0));
    }

    /**
     * Groups that ate more, to one standard deviation of their gain (Bray: half its confidence interval and 0.8 kg). Levine et al. 1999: 1000
     * kcal more for 56 days, +4.7 kg (SD 1.8). Diaz et al. 1992: 35 MJ for each of 7.6 kg (SD 1.6) in 42 days. Joosen: 54 MJ for each of 1.5
     * kg (SD 0.9) in 14 days. Dallosso and James: 39 MJ for each of 1.2 kg (SD 0.5) in 7 days. Bray et al. 2012, 15 % protein: 954 kcal for
     * 56 days, +6.05 kg. Their bodies are from memory: lean or usual adults.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        # who,     kg, fat, resting, PAL, kcal, days, gain, within
        Levine,    67, 14,  1650,    1.6, 1000, 56,   4.7,  1.8
        Diaz,      75, 14,  1750,    1.6, 1514, 42,   7.6,  1.6
        Joosen,    61, 18,  1350,    1.6, 1383, 14,   1.5,  0.9
        Dallosso,  70, 12,  1700,    1.6, 1598, 7,    1.2,  0.5
        Bray,      72, 19,  1600,    1.6, 954,  56,   6.05, 2.0
        """)
    void groups_gained_as_the_model_says(
            String who,
            double kg,
            double fatKg,
            double resting,
            double pal,
            double kcal,
            double days,
            double gain,
            double within) {
        assertThat(of(kg, fatKg, resting, pal).changeKg(kcal, days)).isCloseTo(gain, within(within));
    }

    /**
     * Energy stored in a kg [kcal], to 30 %, as people differ: Bouchard 1990 (221 MJ in 8.1 kg), Votruba 2002 (462 MJ in 13.2 kg), Kiel women
     * 6804 (SEM 226) and men 6119 (SEM 240), CALERIE from week 6 on 6041 (SEM 376). Their fat is from memory. The model is low for lean people who gain, high for the men.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Bouchard, 6.8, 6521",
        "Votruba, 30, 8365",
        "Kiel women, 36, 6804",
        "Kiel men, 32, 6119",
        "CALERIE, 23.9, 6041"
    })
    void other_groups_stored_about_as_much(String who, double fatKg, double kcalPerKg) {
        assertThat(of(80, fatKg, 1700, 1.6).storedKcalPerKg()).isCloseTo(kcalPerKg, within(0.3 * kcalPerKg));
    }

    /**
     * Energy eaten above upkeep for each kg that was gained [kcal], to 20 %, as people differ: Bouchard 1990, 84,000 kcal for 8.1 kg; Forbes
     * 1986, 8050 over 48 people of several studies (13 women and 2 men of its own had 6700, which the model misses by a third). Bodies
     * from memory.
     */
    @Test
    void what_a_kg_cost_that_was_gained() {
        double bouchard = 84_000 / of(60.3, 6.8, 1650, 1.7).changeKg(840, 100);
        double forbes = 1404 * 21 / of(55, 15, 1350, 1.6).changeKg(1404, 21);

        assertThat(bouchard).isCloseTo(10_370, within(0.2 * 10_370));
        assertThat(forbes).isCloseTo(8050, within(0.2 * 8050));
    }

    /** The rule of thumb of 7700 kcal is that of a body with some 35 kg of fat: it is too much for leaner ones. */
    @Test
    void the_rule_of_thumb_is_of_a_fat_body() {
        assertThat(of(100, 35, 1800, 1.5).storedKcalPerKg()).isCloseTo(7700, within(0.01 * 7700));
        assertThat(of(75, 12, 1750, 1.6).storedKcalPerKg()).isLessThan(0.8 * 7700);
    }

    /** Racette et al. 2012, CALERIE 2: at -24.9 % expenditure was 9.6 % lower within 2 to 4 weeks (SD 9.9). To 2.5 points: our choice. */
    @Test
    void expenditure_falls_at_once_by_about_what_was_measured() {
        HallChow2011 body = of(71.8, 23.9, 1410, 1.75);
        double less = -0.249 * 2467;
        double kgADay = body.changeKg(less, 28.5) - body.changeKg(less, 27.5);
        double burnt = less - body.storedKcalPerKg() * kgADay;

        assertThat(100 * burnt / 2467).isCloseTo(-9.6, within(2.5));
    }

    /**
     * CALERIE 2 (Lancet Diabetes Endocrinol 2019): two years, -7.5 kg (SE 0.4). From memory: 19.5 % of 2467 kcal less for half a year,
     * then 9.1 %; at the start 71.8 kg, 23.9 kg of fat, resting energy 1410 kcal. A second change adds to the first.
     */
    @Test
    void two_years_of_calerie_2() {
        HallChow2011 body = of(71.8, 23.9, 1410, 2467.0 / 1410);
        double change = body.changeKg(-0.195 * 2467, 730) + body.changeKg((0.195 - 0.091) * 2467, 730 - 182);

        assertThat(change).isCloseTo(-7.5, within(2.0));
    }

    /**
     * Energy of a kg that was lost [kcal]: CALERIE 1, six months, 12 overweight people, fat from 24 kg: 7144 by what they lost; Kiel
     * women 6804 (SEM 226): within 15 %. The first month holds less, 4858 (SEM 388), because
     * water leaves first, as do Mueller's three weeks at -50 %, 4778; the figure must not be used there.
     */
    @Test
    void energy_of_a_kg_is_what_was_measured() {
        double found = of(80, 24.2, 1750, 1.5).storedKcalPerKg();

        assertThat(found).isCloseTo(7144, within(0.02 * 7144));
        assertThat(found).isBetween(0.85 * 6804, 1.15 * 6804);
        assertThat(found).isGreaterThan(4858 + 2 * 388);
        assertThat(of(80, 15, 1800, 1.6).storedKcalPerKg()).isGreaterThan(1.2 * 4778);
    }
}
