package batchwright.needs.safety;

import batchwright.text.ResourceTable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is said with a decision: a row of reasons.csv.
 *
 * @param code of the caution
 * @param hides whether no figures may be shown
 * @param question what an ask waits for; empty where no decision asks
 * @param says for people; {bmi}, {years} and {fat} stand for the eater's, {harms} and {periods} differ by sex
 */
public record DecisionReason(String code, boolean hides, Optional<Question> question, String says) {
    private static final int COLUMNS = 4;
    private static final Map<String, DecisionReason> ALL =
            ResourceTable.withCommas(DecisionReason.class, "reasons.csv", COLUMNS).stream()
                    .map(DecisionReason::row)
                    .collect(Collectors.toUnmodifiableMap(DecisionReason::code, Function.identity()));

    public static DecisionReason of(String code) {
        return Optional.ofNullable(ALL.get(code))
                .orElseThrow(() -> new IllegalStateException("reasons.csv has no row " + code + "."));
    }

    static Map<String, DecisionReason> all() {
        return ALL;
    }

    private static DecisionReason row(List<String> cells) {
        Optional<Question> question = Optional.of(cells.get(2))
                .filter(name -> !name.equals("-"))
                .map(name -> Question.valueOf(name.toUpperCase(Locale.ROOT)));
        return new DecisionReason(cells.get(0), cells.get(1).equals("yes"), question, cells.get(3));
    }
}
