package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.Read;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import java.util.Optional;

/** Lines of foods/labels.csv in the small workspace, read the way the program reads them. */
final class LabelLines {
    static final String HEADER =
            "food,name,group,label,per,energy,fat_g,saturated_g,carbohydrate_g,sugar_g,fibre_g,protein_g,"
                    + "salt_or_sodium,potassium_mg,calcium_mg,iron_mg,snack_max\n";

    private final FilesInMemory files = FilesInMemory.base();

    Read<Kitchen> read(String lines) {
        return KitchenReader.read(files.with("foods/labels.csv", HEADER + lines), FilesInMemory.DAY);
    }

    /** The food of a line, which must be right. */
    Food food(String id, String line) {
        Read<Kitchen> read = read(line + "\n");
        assertThat(read.value()).as("%s %s", line, read.problems()).isPresent();
        return Optional.ofNullable(read.value().orElseThrow().foods().get(id)).orElseThrow();
    }
}
