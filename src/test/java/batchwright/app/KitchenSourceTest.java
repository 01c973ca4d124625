package batchwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A kitchen that is kept elsewhere than in files takes one class. */
class KitchenSourceTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final Workspace FILES = Workspace.open(Optional.of(Path.of("")), Path.of(""), DAY, note -> {});

    /** As a database would be: values by their id. */
    private record InMemory(Kitchen kitchen, Map<String, Eater> people) implements KitchenSource {
        @Override
        public Read<Kitchen> kitchen(LocalDate cookingDay) {
            return new Read<>(Optional.of(kitchen), List.of());
        }

        @Override
        public Read<Kitchen> foods(LocalDate cookingDay) {
            return kitchen(cookingDay);
        }

        @Override
        public Found<List<String>> eaters() {
            return new Found.There<>(List.copyOf(people.keySet()));
        }

        @Override
        public Read<Eater> eater(String id, Optional<Kitchen> known) {
            return new Read<>(Optional.ofNullable(people.get(id)), List.of());
        }

        @Override
        public List<Problem> check(LocalDate cookingDay) {
            return List.of();
        }

        @Override
        public List<String> foodColumns() {
            return List.of();
        }

        @Override
        public Optional<Path> folder() {
            return Optional.empty();
        }
    }

    @Test
    void use_cases_find_eaters_wherever_they_are_kept() {
        Kitchen kitchen = FILES.kitchen();
        Eater eater = new Eaters(FILES, kitchen).one("lifter-gaining");
        var elsewhere =
                new Workspace(new InMemory(kitchen, Map.of("lifter-gaining", eater)), Path.of(""), DAY, note -> {});

        assertThat(NeedsOfEater.answer(elsewhere, "lifter-gaining").target())
                .isPresent()
                .isEqualTo(NeedsOfEater.answer(FILES, "lifter-gaining").target());
        assertThatThrownBy(() -> NeedsOfEater.answer(elsewhere, "desk-cutting")).isInstanceOf(Refused.class);
        assertThat(CheckFiles.answer(elsewhere)).isEmpty();
    }
}
