package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The worked examples of the pages on adding a food, a dish and an eater and on activity, added to the starter files, are right. */
class ExamplesInPagesTest {
    /** A path in back quotes on a line of its own, then the lines to add to that file. */
    private static final Pattern EXAMPLE = Pattern.compile(
            "^`((?:foods|profiles)/[a-z_/]+\\.(?:csv|yaml))`\\n\\n```[a-z]+\\n(.*?)```$",
            Pattern.MULTILINE | Pattern.DOTALL);

    private int found;

    @Test
    void check_is_silent_when_they_are_added() throws IOException {
        FilesInMemory files = FilesInMemory.starter();
        for (String page : List.of(
                "docs/adding-a-food.md", "docs/adding-a-dish.md", "docs/adding-an-eater.md", "docs/activity.md")) {
            add(Files.readString(Path.of(page)), files);
        }

        assertThat(found).isEqualTo(9);
        assertThat(files.problems()).isEmpty();
        var kitchen = KitchenReader.read(files, FilesInMemory.DAY).value().orElseThrow();
        assertThat(kitchen.dishes()).containsKey("millet_pot");
        assertThat(kitchen.foods()).containsKeys("millet", "rye_crispbread");
    }

    private void add(String page, FilesInMemory files) {
        var example = EXAMPLE.matcher(page);
        while (example.find()) {
            String path = example.group(1);
            String before = files.paths().contains(path) ? files.text(path) : "";
            files.with(path, before + example.group(2));
            found++;
        }
    }
}
