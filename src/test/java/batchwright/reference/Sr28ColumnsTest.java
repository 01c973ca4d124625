package batchwright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Columns of the reference table are found by their names. */
class Sr28ColumnsTest {
    @Test
    void in_any_order_and_none_is_no_value() {
        var food = new Sr28Food(
                "01001,\"Butter, salted\",0,81.11,Dairy and Egg Products,717",
                List.of("id", "name", "REFUSE", "FAT", "GROUP", "ENERC_KCAL"));

        assertThat(food.written(Nutrient.ENERGY)).isEqualTo("717");
        assertThat(food.written(Nutrient.FAT)).isEqualTo("81.11");
        assertThat(food.group()).isEqualTo("Dairy and Egg Products");
        assertThat(food.refuse()).isEqualTo("0");
        assertThat(food.written(Nutrient.ZINC)).isEmpty();
        assertThat(food.amount(Nutrient.ZINC)).isEmpty();
    }
}
