package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Meals;
import batchwright.text.Written;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an eater's containers are for: breakfasts_a_day, same_dish_a_day, same_dish_in_all. */
final class MealsReader {
    private static final Pattern BREAKFASTS = Pattern.compile("(\\d{1,3})(?:\\s+to\\s+(\\d{1,3}))?");
    private static final NumberRange A_DAY =
            NumberRange.of("same_dish_a_day", "1", String.valueOf(Meals.MOST_OF_A_DISH_A_DAY), "", "");
    private static final NumberRange IN_ALL = NumberRange.of("same_dish_in_all", "2", "168", "", "");

    private final Problems problems;

    MealsReader(Problems problems) {
        this.problems = problems;
    }

    Meals read(Fields fields, int containers) {
        NumberRange number = NumberRange.of(
                "breakfasts_a_day", "0", String.valueOf(containers), "", "as many as there are containers a day");
        Meals usual = fields.text("breakfasts_a_day")
                .map(written -> breakfasts(written, number))
                .orElse(Meals.USUAL);
        return usual.withSameDish(
                fields.whole("same_dish_a_day", A_DAY).orElse(usual.sameDishADay()),
                fields.whole("same_dish_in_all", IN_ALL).map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    /** 1, or 0 to 2. */
    private Meals breakfasts(Written written, NumberRange number) {
        Matcher said = BREAKFASTS.matcher(written.text());
        if (!said.matches()) {
            problems.error(
                    written,
                    written.quoted() + " is no number of breakfasts",
                    "expected how many of the containers are for breakfast, such as 1, or 0 to 2");
            return Meals.USUAL;
        }
        var numbers = new Numbers(problems);
        OptionalInt least = whole(numbers, written, said.group(1), number);
        OptionalInt most = said.group(2) == null ? least : whole(numbers, written, said.group(2), number);
        if (least.isEmpty() || most.isEmpty()) {
            return Meals.USUAL;
        }
        if (least.getAsInt() > most.getAsInt()) {
            problems.error(
                    written, "the first number is more than the second", "expected the smaller one first: 0 to 2");
            return Meals.USUAL;
        }
        return Meals.USUAL.withBreakfasts(least.getAsInt(), most.getAsInt());
    }

    private static OptionalInt whole(Numbers numbers, Written at, String digits, NumberRange range) {
        return numbers.whole(new Written(digits, at.at()), range)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }
}
