package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.intakes.Kind;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pregnancy and the like: other amounts than those of the table, and less time for food that is kept. */
class StricterFoodSafetyTest {
    private static final Set<Kind> BY_SEX_AND_AGE = Set.of(Kind.RDA, Kind.AI, Kind.UL, Kind.CDRR);

    private static TestEater woman(double years) {
        return TestEater.of(TestEater.body(Sex.FEMALE, 65, 168, years));
    }

    @ParameterizedTest
    @CsvSource({
        "64, gout, NO, false",
        "65, gout, NO, true",
        "30, pregnant_or_breastfeeding, AGREED, true",
        "30, cancer, AGREED, true",
        "30, steroid_tablets, YES, true",
        "30, warfarin, YES, false"
    })
    void is_said_to_whom_an_illness_from_food_harms_more(double years, String question, Answer answer, boolean said) {
        assertThat(StricterFoodSafety.of(woman(years).health(question, answer).eater())
                        .isPresent())
                .isEqualTo(said);
    }

    @Test
    void amounts_for_others_are_not_shown_in_pregnancy() {
        assertThat(published(woman(30).needs())).isTrue();
        Needs pregnant =
                woman(30).health("pregnant_or_breastfeeding", Answer.AGREED).needs();
        assertThat(pregnant.stopsPlanning()).isFalse();
        assertThat(pregnant.references()).isNotEmpty();
        assertThat(published(pregnant)).isFalse();
    }

    private static boolean published(Needs needs) {
        return needs.references().stream()
                .anyMatch(reference -> reference
                                .recommended()
                                .filter(r -> BY_SEX_AND_AGE.contains(r.kind()))
                                .isPresent()
                        || reference
                                .limit()
                                .filter(l -> BY_SEX_AND_AGE.contains(l.kind()))
                                .isPresent());
    }
}
