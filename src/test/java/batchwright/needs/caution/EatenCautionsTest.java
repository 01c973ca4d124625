package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each caution on both sides of its edge. 4700 mg is a choice; 130 g is the RDA of IOM 2005. */
class EatenCautionsTest {
    @ParameterizedTest
    @CsvSource({
        "potassium_raising_medicine, 4701, 200, 200, potassium_high",
        "potassium_raising_medicine, 4700, 200, 200, ",
        "potassium_raising_medicine, 4000, 90, 90, ",
        "sglt2_inhibitor, 5000, 130, 131, ",
        "sglt2_inhibitor, 4000, 129.9, 300, carbohydrate_low",
        "warfarin, 6000, 20, 20, "
    })
    void warns_who_must_know(String question, String potassiumMg, String oneG, String otherG, String code) {
        Health health = Health.NONE.with(HealthQuestion.of(question), Answer.YES);
        List<Nutrients> days = List.of(day(potassiumMg, oneG), day(potassiumMg, otherG));

        List<Caution> cautions = EatenCautions.of(health, day(potassiumMg, otherG), days);

        assertThat(cautions).extracting(Caution::code).isEqualTo(code == null ? List.of() : List.of(code));
        assertThat(cautions).allSatisfy(caution -> assertThat(caution.text()).contains("doctor"));
    }

    private static Nutrients day(String potassiumMg, String carbohydrateG) {
        return Nutrients.of(Map.of(
                Nutrient.POTASSIUM, new BigDecimal(potassiumMg),
                Nutrient.CARBOHYDRATE, new BigDecimal(carbohydrateG)));
    }
}
