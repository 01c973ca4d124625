package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.needs.TestEater;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On both sides of its edge: 4700 mg is a choice. */
class EatenCautionsTest {
    @ParameterizedTest
    @CsvSource({
        "potassium_raising_medicine, 4701, true",
        "potassium_raising_medicine, 4700, false",
        "warfarin, 6000, false"
    })
    void warns_whoever_must_not_eat_much_potassium(String question, String mg, boolean warns) {
        Health health = TestEater.HEALTHY.with(HealthQuestion.of(question), Answer.YES);

        var caution = EatenCautions.of(health, Nutrients.of(Map.of(Nutrient.POTASSIUM, new BigDecimal(mg))));

        assertThat(caution.isPresent()).isEqualTo(warns);
        caution.ifPresent(c -> assertThat(c.text()).contains("doctor", mg + " mg"));
    }
}
