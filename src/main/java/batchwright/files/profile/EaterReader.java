package batchwright.files.profile;

import batchwright.files.disk.DataFiles;
import batchwright.files.disk.Read;
import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.page.YamlPage;
import batchwright.files.value.Ids;
import batchwright.files.value.Measured;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.Sources;
import batchwright.food.Kitchen;
import batchwright.person.Adjustments;
import batchwright.person.Body;
import batchwright.person.Box;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.Health;
import batchwright.person.PhysicalActivity;
import batchwright.person.Training;
import batchwright.person.Wishes;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** profiles/ID.yaml: one eater. */
public final class EaterReader {
    private static final List<String> KEYS = List.of(
            "eater",
            "name",
            "sex",
            "age",
            "weight",
            "height",
            "body_fat",
            "body_fat_method",
            "tape",
            "activity",
            "diary",
            "day",
            "steps",
            "walking",
            "training",
            "goal",
            "strength_training",
            "experience",
            "health",
            "target",
            "containers_a_day",
            "breakfasts_a_day",
            "lunches_a_day",
            "dinners_a_day",
            "same_dish_a_day",
            "same_dish_in_all",
            "avoid",
            "checked",
            "always",
            "snacks");
    private static final List<String> TARGET = List.of(
            "energy_band",
            "energy_on_average",
            "protein",
            "fibre",
            "fruit_and_vegetables",
            "carbohydrate",
            "container_weight",
            "container_volume",
            "container_density");
    private static final NumberRange ON_AVERAGE = NumberRange.of(
            "energy_on_average", "0", "15", "%", "the part of the aim that the mean of all days may miss");
    private static final NumberRange FIBRE = NumberRange.of("fibre", "0", "80", "g", "a day");
    private static final NumberRange FRUIT_VEG = NumberRange.of("fruit_and_vegetables", "0", "1500", "g", "a day");

    private static final NumberRange CARBOHYDRATE = NumberRange.of("carbohydrate", "0", "600", "g", "a day");

    private static final NumberRange WEIGHT = NumberRange.of(
            "container_weight", "200", String.valueOf(Box.HIGHEST), "g", "of what one container holds, cooked");
    private static final NumberRange VOLUME = NumberRange.of(
            "container_volume", "200", String.valueOf(Box.HIGHEST), "ml", "of the room in one container");

    private final Problems problems = new Problems();
    private final Optional<Kitchen> kitchen;

    private EaterReader(Optional<Kitchen> kitchen) {
        this.kitchen = kitchen;
    }

    /**
     * Reads one eater.
     *
     * @param path relative to the data files, or absolute
     * @param kitchen to look up foods, dishes and measures; without it (because it has errors itself) the rest of the file
     *     is still checked, but there is no eater
     */
    public static Read<Eater> read(DataFiles files, String path, Optional<Kitchen> kitchen) {
        var reader = new EaterReader(kitchen);
        Optional<SourceFile> file = new Sources(files, reader.problems)
                .need(path, "expected the profile of an eater; there are some among the starter files");
        Optional<Eater> eater = file.flatMap(reader::eater);
        return new Read<>(reader.problems.errors() == 0 ? eater : Optional.empty(), reader.problems.list());
    }

    private Optional<Eater> eater(SourceFile file) {
        Optional<Yaml.Group> page = YamlPage.read(file, problems);
        if (page.isEmpty()) {
            return Optional.empty();
        }
        var fields = Fields.ofPage(page.get(), KEYS, problems);
        Optional<Written> id = fields.need("eater", "Enter the short name of the eater, the same as the file's name");
        id.flatMap(written -> Ids.eater(written, problems))
                .ifPresent(known -> Ids.sameAsFile(id.orElseThrow(), problems));
        Optional<Written> name = fields.need("name", "Enter what people call this eater: name: Lifter, gaining");
        Optional<Body> body = new BodyReader(problems).read(fields);
        Optional<? extends PhysicalActivity> activity =
                new ActivityReader(problems, body.map(Body::ageYears).orElse(0.0)).read(fields);
        Optional<Goal> goal = fields.need("goal", "Enter hold, or gain or lose with a rate: goal: gain 0.25 % a week")
                .flatMap(written -> GoalGrammar.read(written, kitchen.map(Kitchen::cookingDay), problems));
        var training = new Training(
                fields.text("strength_training").flatMap(written -> StrengthTrainingGrammar.read(written, problems)),
                fields.text("experience").flatMap(written -> ExperienceGrammar.read(written, problems)));
        Health health =
                fields.group("health").map(new HealthReader(problems)::read).orElse(Health.NOT_SAID);
        Adjustments target = fields.group("target").map(this::target).orElse(Adjustments.NONE);
        Optional<Wishes> wishes = kitchen.map(k -> new WishesReader(k, problems).read(fields));
        if (problems.errors() > 0 || wishes.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Eater(
                id.orElseThrow().text(),
                name.orElseThrow().text(),
                body.orElseThrow(),
                activity.orElseThrow(),
                goal.orElseThrow(),
                health,
                target,
                wishes.get(),
                training));
    }

    private Adjustments target(Yaml.Group group) {
        var fields = Fields.of(group, TARGET, problems);
        return new Adjustments(
                decimal(fields, "energy_band", ProfileRanges.BAND, "a share such as 3 %"),
                decimal(fields, "protein", ProfileRanges.PROTEIN, "grams per kg of body weight, such as 1.8 g per kg"),
                grams(fields, "fibre", FIBRE, "grams a day, such as 38 g"),
                grams(fields, "fruit_and_vegetables", FRUIT_VEG, "grams a day, such as 400 g"),
                grams(fields, "carbohydrate", CARBOHYDRATE, "grams a day, such as 130 g"),
                decimal(fields, "energy_on_average", ON_AVERAGE, "a share such as 1 %"),
                box(fields));
    }

    private Box box(Fields fields) {
        Optional<DensityGrammar> density =
                fields.text("container_density").flatMap(written -> DensityGrammar.read(written, problems));
        return new Box(
                grams(fields, "container_weight", WEIGHT, "grams, such as 900 g"),
                grams(fields, "container_volume", VOLUME, "millilitres, such as 1050 ml"),
                density.map(DensityGrammar::least).orElse(OptionalInt.empty()),
                density.map(DensityGrammar::most).orElse(OptionalInt.empty()));
    }

    private OptionalDouble decimal(Fields fields, String key, NumberRange range, String example) {
        return fields.text(key)
                .flatMap(written -> Measured.in(written, range, example, problems))
                .map(number -> OptionalDouble.of(number.doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    private OptionalInt grams(Fields fields, String key, NumberRange range, String example) {
        return fields.text(key)
                .flatMap(written -> Measured.read(written, List.of(range.unit()), example, problems))
                .flatMap(measured -> new Numbers(problems).whole(measured.number(), range))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }
}
