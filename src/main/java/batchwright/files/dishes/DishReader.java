package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.page.YamlPage;
import batchwright.files.value.Ids;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.YesNo;
import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.food.Step;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** foods/dishes/ID.yaml: one dish. */
public final class DishReader {
    private static final List<String> KEYS =
            List.of("dish", "name", "kind", "fridge_days", "freezes", "reheat", "parts", "staples", "steps");
    private static final List<String> KINDS = List.of("breakfast", "lunch", "dinner", "main");
    private static final NumberRange FRIDGE_DAYS = NumberRange.of(
            "fridge time", "1", "7", "days", "the cooking day is day 1; published home advice is 3 to 4 days");
    private static final List<String> COLD = List.of("cold", "do not heat", "not heated");

    private final MixReader mixes;
    private final AmountGrammar amounts;
    private final Problems problems;

    public DishReader(MixReader mixes, AmountGrammar amounts, Problems problems) {
        this.mixes = mixes;
        this.amounts = amounts;
        this.problems = problems;
    }

    /** Empty when there is a problem in it. */
    public Optional<Dish> read(SourceFile file) {
        int before = problems.errors();
        Optional<Yaml.Group> page = YamlPage.read(file, problems);
        if (page.isEmpty()) {
            return Optional.empty();
        }
        var fields = Fields.ofPage(page.get(), KEYS, problems);
        Optional<String> id = id(fields);
        Optional<Written> name = fields.need("name", "Enter what people call it: name: Lentil soup");
        Optional<Dish.Kind> kind = fields.need(
                        "kind", "Enter kind: breakfast, lunch, dinner, or main for lunch and dinner")
                .flatMap(this::kind);
        Optional<Integer> days = fridgeDays(fields);
        Optional<Boolean> freezes = fields.need("freezes", "Enter freezes: yes when a container may be frozen, else no")
                .flatMap(w -> YesNo.read(w, problems));
        Optional<Written> reheat =
                fields.need("reheat", "Enter how to reheat it, with a temperature: 74 C (165 F) inside");
        reheat.ifPresent(this::hasTemperature);
        var partReader = new PartReader(mixes, amounts, problems);
        List<Yaml.Group> groups =
                fields.groups("parts", "Enter the parts below parts: each begins with - part: its name");
        List<Part> parts =
                groups.stream().flatMap(part -> partReader.read(part).stream()).toList();
        List<Staple> staples = fields.texts("staples", "[salt 2 g, black pepper]").stream()
                .map(StapleGrammar::read)
                .toList();
        boolean all = parts.size() == groups.size();
        List<Step> steps = steps(
                fields, new PartOfStepGrammar(parts, all, problems), new HandledGrammar(parts, all, staples, problems));
        if (problems.errors() > before || parts.isEmpty()) {
            return Optional.empty();
        }
        var dish = new Dish(
                id.orElseThrow(),
                name.orElseThrow().text(),
                kind.orElseThrow(),
                days.orElseThrow(),
                freezes.orElseThrow(),
                reheat.orElseThrow().text(),
                parts,
                staples,
                steps);
        InsteadChecks.ofDish(dish).ifPresent(wrong -> problems.error(page.get().at(), wrong.what(), wrong.expected()));
        new StepsDoubts(dish, fields, problems).check();
        new ContainerReach(dish, new DishPlaces(page.get()), problems).check();
        new HazardDoubts(dish, new DishPlaces(page.get()), problems).check();
        if (problems.errors() > before) {
            return Optional.empty();
        }
        return Optional.of(dish);
    }

    private Optional<String> id(Fields fields) {
        Optional<Written> written =
                fields.need("dish", "Enter the short name of the dish, the same as the file's name");
        Optional<String> id = written.flatMap(w -> Ids.id(w, problems));
        id.ifPresent(known -> Ids.sameAsFile(written.orElseThrow(), problems));
        return id;
    }

    private Optional<Dish.Kind> kind(Written written) {
        if (KINDS.contains(written.text())) {
            return Optional.of(Dish.Kind.valueOf(written.text().toUpperCase(Locale.ROOT)));
        }
        problems.unknown(
                written,
                "there is no kind called " + written.quoted(),
                "expected breakfast, lunch, dinner, or main for lunch and dinner",
                KINDS);
        return Optional.empty();
    }

    private Optional<Integer> fridgeDays(Fields fields) {
        return fields.need(
                        "fridge_days",
                        "Enter the days it keeps in the fridge, the cooking day being day 1: fridge_days: 4")
                .flatMap(this::fridgeDays);
    }

    private Optional<Integer> fridgeDays(Written written) {
        Optional<Integer> days = new Numbers(problems).whole(written, FRIDGE_DAYS);
        if (days.isPresent() && days.get() > Dish.ADVISED_FRIDGE_DAYS) {
            problems.warning(
                    written.at(),
                    "%s days in the fridge are longer than published home advice".formatted(days.get()),
                    "the usual advice is 3 to 4 days, five are common practice of the trade; your local food-safety advice goes first");
        }
        return days;
    }

    private void hasTemperature(Written reheat) {
        String text = reheat.text().toLowerCase(Locale.ROOT);
        boolean figure = text.chars().anyMatch(Character::isDigit);
        if (!figure && COLD.stream().noneMatch(text::contains)) {
            problems.warning(
                    reheat.at(),
                    "reheat names no temperature",
                    "the usual advice for leftovers is 74 C (165 F) inside; write \"eat cold\" when it is not heated");
        }
    }

    private List<Step> steps(Fields fields, PartOfStepGrammar partOfStep, HandledGrammar handled) {
        var reader = new StepReader(partOfStep, handled, problems);
        List<Step> steps = new ArrayList<>();
        int number = 1;
        for (Yaml.Group step : fields.groups("steps", "Enter the steps below steps: each begins with - do: \"...\"")) {
            reader.read(number, step).ifPresent(steps::add);
            number++;
        }
        return steps;
    }
}
