package batchwright.app.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.app.desk.EaterSliders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is changed by a command stands in the file, nothing else changes, and what would not be right is not written. */
class ChangePageTest {
    private static final String EATER = "lifter-gaining";

    @TempDir
    Path folder;

    private Workspace workspace;
    private Path profile;

    @BeforeEach
    void init() {
        new WriteStarterFiles().into(folder);
        workspace = Workspace.open(Optional.of(folder), folder, LocalDate.of(2026, 11, 30), note -> {});
        profile = folder.resolve("profiles/" + EATER + ".yaml");
    }

    @Test
    void what_was_moved_at_the_desk_is_in_the_profile() throws IOException {
        List<String> before = Files.readAllLines(profile);
        var went = new WriteSliders(workspace)
                .into(
                        EATER,
                        EaterSliders.AS_WRITTEN
                                .withGoalKcal(-300)
                                .withProtein(1.8)
                                .withContainersADay(2)
                                .withSnacks(Set.of("banana", "almonds")));

        assertThat(went.inPlace()).isTrue();
        List<String> gone = new ArrayList<>(before);
        List<String> after = Files.readAllLines(profile);
        gone.removeAll(after);
        after.removeAll(before);
        assertThat(gone).hasSize(3);
        assertThat(after)
                .containsExactly(
                        "goal: lose 300 kcal a day",
                        "containers_a_day: 2        # cooked boxes a day; the rest of the day is snacks",
                        "  only: [almonds, banana]                                                              # leave this line out to allow all",
                        "target:",
                        "  protein: 1.8 g per kg");
        assertThat(workspace
                        .source()
                        .eater(EATER, Optional.of(workspace.kitchen()))
                        .value()
                        .orElseThrow()
                        .wishes()
                        .containersADay())
                .isEqualTo(2);
    }

    @Test
    void what_would_not_be_right_is_not_written() throws IOException {
        String before = Files.readString(profile);
        assertThatThrownBy(
                        () -> new ChangePage(workspace).profile(EATER, List.of(KeyChange.text("weight", "74 stone"))))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new ChangePage(workspace).profile("../x", List.of(KeyChange.text("weight", "74 kg"))))
                .isInstanceOf(Refused.class);
        assertThat(Files.readString(profile)).isEqualTo(before);
    }

    @Test
    void a_page_in_an_unusual_form_stays_and_the_lines_are_beside_it() throws IOException {
        String odd = Files.readString(profile).replace("avoid: []", "avoid:\n  - egg # since 2020\n");
        Files.writeString(profile, odd);
        var went = new ChangePage(workspace).profile(EATER, List.of(KeyChange.list("avoid", List.of("egg", "milk"))));

        assertThat(went.inPlace()).isFalse();
        assertThat(Files.readString(profile)).isEqualTo(odd);
        assertThat(Files.readString(folder.resolve("profiles/" + EATER + "-changes.txt")))
                .endsWith("avoid: [egg, milk]\n");
    }

    @Test
    void the_kitchen() throws IOException {
        Path kitchen = folder.resolve("foods/kitchen.yaml");
        new ChangePage(workspace)
                .kitchen(List.of(
                        KeyChange.text("burners", "2"),
                        KeyChange.list("pots", List.of("5.4")),
                        KeyChange.text("rice_cooker", "1.8")));
        assertThat(workspace.kitchen().equipment().hob().burners()).isEqualTo(2);
        assertThat(Files.readString(kitchen))
                .contains(
                        "burners: 2                # 0 where there is none", "# rice_cooker: yes", "rice_cooker: 1.8");
        assertThatThrownBy(() -> new ChangePage(workspace).kitchen(List.of(KeyChange.text("burners", "40"))))
                .isInstanceOf(Refused.class);
        Files.delete(kitchen);
        new ChangePage(workspace).kitchen(List.of(KeyChange.text("burners", "3")));
        assertThat(workspace.kitchen().equipment().hob().burners()).isEqualTo(3);
    }
}
