package batchwright.needs.resting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who was studied and how far off an equation is for one person, as the papers say. */
class StudiedPeoplePublishedTest {
    /**
     * Mifflin 1990: 19-78 years. ten Haaf and Weijs 2014: 18-35 years. Owen 1986: 18-65 years, 43-143 kg. Owen 1988: 18-82 years, to
     * 171 kg across both studies. From memory: Mueller 2004, 5-91 years. Our reading: Harris-Benedict's normal weight as BMI 18.5-25,
     * Mifflin's groups as BMI 18.5 and over, adults as 18 years and over.
     */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource(textBlock = """
                    Mifflin-St Jeor 1990,               ages,    19,   78
                    Mifflin-St Jeor 1990,               a BMI,   18.5, Infinity
                    'ten Haaf-Weijs 2014, weight',      ages,    18,   35
                    'ten Haaf-Weijs 2014, fat-free mass', ages,  18,   35
                    Owen 1986,                          ages,    18,   65
                    Owen 1986,                          weights, 43,   143
                    Owen 1987,                          ages,    18,   82
                    Owen 1987,                          weights, 0,    171
                    Mueller 2004,                       ages,    5,    91
                    'Mueller 2004, by BMI',             ages,    5,    91
                    Harris-Benedict 1919,               a BMI,   18.5, 25
                    Harris-Benedict 1919,               ages,    18,   Infinity
                    Cunningham 1991,                    ages,    18,   Infinity
                    """)
    void knows_who_was_studied(String equation, String what, double least, double most) {
        assertThat(Equations.named(equation).studied().limits())
                .filteredOn(limit -> limit.what().equals(what))
                .singleElement()
                .satisfies(limit -> {
                    assertThat(limit.least()).isEqualTo(least);
                    assertThat(limit.most()).isEqualTo(most);
                });
    }

    /**
     * St Jeor 2004: Mifflin within 10 % for 78 people in 100. Roza and Shizgal 1984: Harris-Benedict to 14 %. From memory: Roza and
     * Shizgal's own 213 and 201 kcal, Mueller's 0.83 MJ, the standard errors of FAO/WHO/UNU 2004 Table 5.2.
     */
    @ParameterizedTest(name = "{0}, {1}, {2} years")
    @CsvSource(textBlock = """
                    Mifflin-St Jeor 1990, MALE, 30, 173.0
                    Harris-Benedict 1919, MALE, 30, 251.4
                    Roza-Shizgal 1984,    MALE, 30, 213
                    Roza-Shizgal 1984,  FEMALE, 30, 201
                    Mueller 2004,         MALE, 30, 198.4
                    'Schofield 1985 (FAO/WHO/UNU), weight', MALE,   25, 153
                    'Schofield 1985 (FAO/WHO/UNU), weight', MALE,   45, 167
                    'Schofield 1985 (FAO/WHO/UNU), weight', MALE,   65, 164
                    'Schofield 1985 (FAO/WHO/UNU), weight', FEMALE, 25, 119
                    'Schofield 1985 (FAO/WHO/UNU), weight', FEMALE, 45, 111
                    'Schofield 1985 (FAO/WHO/UNU), weight', FEMALE, 65, 108
                    """)
    void knows_its_error(String equation, Sex sex, double years, double kcal) {
        // At 30 years the man rests on 1730 kcal by Mifflin, on 1795.79 by Harris-Benedict: 10 % and 14 % of that.
        Body body = TestEater.body(sex, 75, 180, years);
        assertThat(Equations.named(equation).estimate(body, false).orElseThrow().errorKcal())
                .isCloseTo(kcal, within(0.05));
    }
}
