package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.text.Written;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an eater's containers are for: breakfasts_a_day, lunches_a_day, dinners_a_day, same_dish_a_day, same_dish_in_all. */
final class MealsReader {
    private static final Pattern TIMES = Pattern.compile("(\\d{1,3})(?:\\s+to\\s+(\\d{1,3}))?");
    private static final NumberRange A_DAY =
            NumberRange.of("same_dish_a_day", "1", String.valueOf(Meals.MOST_OF_A_DISH_A_DAY), "", "");
    private static final NumberRange IN_ALL = NumberRange.of("same_dish_in_all", "2", "168", "", "");

    private final Problems problems;

    MealsReader(Problems problems) {
        this.problems = problems;
    }

    Meals read(Fields fields, int containers) {
        return Meals.USUAL
                .withBreakfasts(times(fields, "breakfasts", containers))
                .withLunchesAndDinners(times(fields, "lunches", containers), times(fields, "dinners", containers))
                .withSameDish(
                        fields.whole("same_dish_a_day", A_DAY).orElse(Meals.USUAL.sameDishADay()),
                        fields.whole("same_dish_in_all", IN_ALL)
                                .map(OptionalInt::of)
                                .orElse(OptionalInt.empty()));
    }

    private TimesADay times(Fields fields, String meal, int containers) {
        NumberRange number = NumberRange.of(
                meal + "_a_day", "0", String.valueOf(containers), "", "as many as there are containers a day");
        return fields.text(meal + "_a_day")
                .flatMap(written -> times(written, meal, number))
                .orElse(TimesADay.NOT_SAID);
    }

    /** 1, or 0 to 2. */
    private Optional<TimesADay> times(Written written, String meal, NumberRange number) {
        Matcher said = TIMES.matcher(written.text());
        if (!said.matches()) {
            problems.error(
                    written,
                    written.quoted() + " is no number of " + meal,
                    "expected how many of the containers are " + meal + ", such as 1, or 0 to 2");
            return Optional.empty();
        }
        var numbers = new Numbers(problems);
        Optional<Integer> least = numbers.whole(new Written(said.group(1), written.at()), number);
        Optional<Integer> most =
                said.group(2) == null ? least : numbers.whole(new Written(said.group(2), written.at()), number);
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        if (least.get() > most.get()) {
            problems.error(
                    written, "the first number is more than the second", "expected the smaller one first: 0 to 2");
            return Optional.empty();
        }
        return Optional.of(TimesADay.of(least.get(), most.get()));
    }
}
