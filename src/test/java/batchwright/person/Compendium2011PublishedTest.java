package batchwright.person;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The table against published/compendium_2011.csv. */
class Compendium2011PublishedTest {
    private static final Map<String, ListedActivity> BY_CODE = Compendium2011.activities().values().stream()
            .collect(Collectors.toMap(ListedActivity::code, activity -> activity));

    @ParameterizedTest
    @CsvFileSource(resources = "/published/compendium_2011.csv", useHeadersInDisplayName = true)
    void every_code_has_its_mets(String code, BigDecimal met, String subject) {
        assertThat(BY_CODE.get(code))
                .as(subject)
                .extracting(ListedActivity::met)
                .isEqualTo(met);
    }

    @Test
    void there_are_fifty_with_ids_and_names_of_their_own() {
        assertThat(Compendium2011.activities()).hasSize(50).allSatisfy((id, activity) -> {
            assertThat(id).isEqualTo(activity.id()).matches("[a-z][a-z0-9_]*");
            assertThat(activity.code()).matches("\\d{5}");
        });
        assertThat(BY_CODE).hasSize(50);
        assertThat(Compendium2011.activities().values())
                .extracting(ListedActivity::name)
                .doesNotHaveDuplicates()
                .allMatch(name -> !name.isBlank());
    }
}
