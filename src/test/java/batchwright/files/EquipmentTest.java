package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Appliance;
import batchwright.food.Equipment;
import java.math.BigDecimal;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What foods/kitchen.yaml says is what is cooked with. */
class EquipmentTest {
    private static Equipment of(FilesInMemory files) {
        return KitchenReader.read(files, FilesInMemory.DAY)
                .value()
                .orElseThrow()
                .equipment();
    }

    @Test
    void the_starter_kitchen_is_a_usual_one() {
        assertThat(of(FilesInMemory.starter())).isEqualTo(Equipment.USUAL);
    }

    @Test
    void what_is_not_said_is_as_usual() {
        assertThat(of(FilesInMemory.base())).isEqualTo(Equipment.USUAL);
        assertThat(of(FilesInMemory.base().with("foods/kitchen.yaml", "# burners: 2\n\n")))
                .isEqualTo(Equipment.USUAL);
    }

    @Test
    void every_line_is_read() {
        Equipment own = of(FilesInMemory.base().with("foods/kitchen.yaml", """
                        burners: 2
                        burner_kw: 0.7
                        ovens: 2
                        shelves: 3
                        pots: [3, 5.4]
                        pans: [2.8]
                        rice_cooker: 1.8
                        microwave: no
                        cooks: 2
                        most_minutes: 120
                        done_within: 240
                        largest_box_ml: 750
                        largest_box_g: 600
                        """));

        assertThat(own.hob()).isEqualTo(new Equipment.Hob(2, 0.7));
        assertThat(own.oven().shelves()).isEqualTo(6);
        assertThat(own.pots()).containsExactly(new BigDecimal("5.4"), new BigDecimal("3"));
        assertThat(own.pans()).containsExactly(new BigDecimal("2.8"));
        assertThat(own.others()).containsOnlyKeys(Appliance.RICE_COOKER);
        assertThat(own.has(Appliance.MICROWAVE)).isFalse();
        assertThat(own.cooks()).isEqualTo(2);
        assertThat(own.limits())
                .isEqualTo(new Equipment.Limits(
                        OptionalInt.of(120), OptionalInt.of(240), OptionalInt.of(750), OptionalInt.of(600)));
    }

    @Test
    void an_oven_of_none_is_none() {
        Equipment own = of(FilesInMemory.base().with("foods/kitchen.yaml", "ovens: 0\nburners: 0\nmicrowave: yes\n"));

        assertThat(own.has(Appliance.OVEN)).isFalse();
        assertThat(own.has(Appliance.BURNER)).isFalse();
        assertThat(own.has(Appliance.MICROWAVE)).isTrue();
    }
}
