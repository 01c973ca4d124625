package batchwright.files.profile;

import batchwright.files.foods.MeasureNames;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.person.Wishes;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Something eaten every day, in household measures: {@code 1 cup whole_milk}, {@code 2 slices rye_bread}. */
final class AlwaysGrammar {
    private static final Pattern FORM = Pattern.compile("(\\S+)\\s+(\\S.*)\\s(\\S+)");
    private static final NumberRange COUNT = NumberRange.of("count", "1", "20", "", "");

    private final Kitchen kitchen;
    private final MeasureNames measures;
    private final Problems problems;

    AlwaysGrammar(Kitchen kitchen, Problems problems) {
        this.kitchen = kitchen;
        this.measures = MeasureNames.of(kitchen, problems);
        this.problems = problems;
    }

    Optional<Wishes.Always> read(Written written) {
        Matcher form = FORM.matcher(written.text());
        if (!form.matches()) {
            problems.error(
                    written,
                    written.quoted() + " is not a count, a measure and a food",
                    "expected these three: 1 cup whole_milk");
            return Optional.empty();
        }
        Optional<Integer> count = new Numbers(problems).whole(new Written(form.group(1), written.at()), COUNT);
        Optional<Food> food = food(new Written(form.group(3), written.at()));
        Optional<Measure> measure =
                food.flatMap(f -> measures.find(f, new Written(form.group(2), written.at()), List.of()));
        return count.flatMap(c -> measure.map(m -> new Wishes.Always(m, c)));
    }

    private Optional<Food> food(Written name) {
        Food food = kitchen.foods().get(name.text());
        if (food == null) {
            problems.unknown(
                    name,
                    "there is no food called " + name.quoted(),
                    "expected a food named in foods/catalogue.csv or foods/labels.csv",
                    kitchen.foods().keySet());
        }
        return Optional.ofNullable(food);
    }
}
