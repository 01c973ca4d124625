package batchwright.app.newdish;

import batchwright.answer.OneContainer;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.app.newdish.BatchLine.Wrong;
import batchwright.files.KitchenReader;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Read;
import batchwright.files.disk.WithChange;
import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.plan.Portion;
import batchwright.reference.Sr28;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.write.CannotWrite;
import batchwright.write.NewFile;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A dish from what goes into a batch: proposed, read by the usual reader, and written to a file that was not there. */
public final class NewDish {
    private static final String FOLDER = "foods/dishes/";
    private static final Pattern CONTAINERS = Pattern.compile("[1-9]|[1-3][0-9]|40");
    private static final Pattern DAYS = Pattern.compile("[1-7]?");
    private static final List<String> KINDS = List.of("breakfast", "lunch", "dinner", "main");
    private static final int LONGEST_ID = 30;
    private static final int LONGEST_NAME = 120;
    private static final int MOST_DOUBTS = 6;

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final BatchLineGrammar grammar;

    /** @param kitchen with its dishes */
    public NewDish(Workspace workspace, Kitchen kitchen) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.grammar = new BatchLineGrammar(kitchen, new FoodsMeant(kitchen, Sr28.load()));
    }

    /** What one line of the batch means. */
    public BatchLine line(String typed) {
        return grammar.read(typed);
    }

    /** @return what is wrong with the name; empty when it can be taken */
    public Optional<String> wrongName(String name) {
        String id = id(name);
        if (id.isEmpty() || name.length() > LONGEST_NAME) {
            return Optional.of("Enter what people call it, such as Bean chili with rice.");
        }
        return kitchen.dishIds().contains(id) || kitchen.foods().containsKey(id)
                ? Optional.of("There is a dish or a food called " + id + " already. Enter another name.")
                : Optional.empty();
    }

    public Optional<String> wrongContainers(String typed) {
        return CONTAINERS.matcher(typed).matches()
                ? Optional.empty()
                : Optional.of("Enter a whole number of containers, 1 to 40.");
    }

    public Optional<String> wrongKind(String typed) {
        return typed.isEmpty() || KINDS.contains(typed)
                ? Optional.empty()
                : Optional.of("Enter breakfast, lunch, dinner, or main for lunch and dinner.");
    }

    public Optional<String> wrongDays(String typed) {
        return DAYS.matcher(typed).matches() ? Optional.empty() : Optional.of("Enter the days, 1 to 7.");
    }

    public Optional<String> wrongFreezes(String typed) {
        return List.of("", "yes", "no").contains(typed) ? Optional.empty() : Optional.of("Enter yes or no.");
    }

    /** Short name and name of the file. */
    static String id(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^[_0-9]+|_+$", "");
        if (plain.length() <= LONGEST_ID) {
            return plain;
        }
        int end = plain.lastIndexOf('_', LONGEST_ID);
        return plain.substring(0, end < 1 ? LONGEST_ID : end);
    }

    /**
     * The dish as it would be written.
     *
     * @throws Refused when something typed is wrong, or the reader finds an error in it
     */
    public ProposedDish propose(TypedDish typed) {
        Optional<String> wrong = wrongName(typed.name())
                .or(() -> wrongContainers(typed.containers()))
                .or(() -> wrongKind(typed.kind()))
                .or(() -> wrongDays(typed.fridgeDays()))
                .or(() -> wrongFreezes(typed.freezes()));
        wrong.ifPresent(says -> {
            throw Refused.because(withoutStop(says), "");
        });
        List<BatchLine> lines = lines(typed);
        List<Seasoning> seasonings = together(only(Seasoning.class, lines));
        List<Mixed> foods = cookedAsSaid(only(Mixed.class, lines), typed.steps());
        if (foods.isEmpty()) {
            throw Refused.because("there is no food in it yet", "Enter what goes in, such as 500 g brown rice.");
        }
        var containers = new BigDecimal(typed.containers());
        List<PartDraft> parts = PartDraft.of(foods, containers);
        List<StepDraft> steps = new StepsProposed(foods, seasonings).of(typed.steps());
        ShelfLife keeping = ShelfLife.of(
                foods.stream().map(Mixed::food).toList(),
                steps.stream().anyMatch(step -> step.words().heats()));
        String id = id(typed.name());
        return read(new DishPageDraft(id, typed, containers, keeping, parts, seasonings, steps));
    }

    private static String withoutStop(String says) {
        return says.endsWith(".") ? says.substring(0, says.length() - 1) : says;
    }

    private List<BatchLine> lines(TypedDish typed) {
        List<BatchLine> lines = new ArrayList<>();
        for (String ingredient : typed.ingredients()) {
            BatchLine line = line(ingredient);
            if (line instanceof Wrong no) {
                throw Refused.because("\"" + ingredient + "\": " + withoutStop(no.says()), "");
            }
            lines.add(line);
        }
        return lines;
    }

    /** Of one that was typed twice, the sum. */
    private static List<Seasoning> together(List<Seasoning> typed) {
        Map<String, Seasoning> byName = new LinkedHashMap<>();
        typed.forEach(one -> byName.merge(
                one.name(),
                one,
                (a, b) -> new Seasoning(
                        a.name(),
                        a.grams().isEmpty()
                                ? b.grams()
                                : Optional.of(a.grams().get().add(b.grams().orElse(BigDecimal.ZERO))))));
        return List.copyOf(byName.values());
    }

    private static <T> List<T> only(Class<T> type, List<BatchLine> lines) {
        return lines.stream().filter(type::isInstance).map(type::cast).toList();
    }

    /** The step that names a food says how it is cooked, unless its own line did. */
    private List<Mixed> cookedAsSaid(List<Mixed> foods, List<String> steps) {
        if (steps.isEmpty()) {
            return foods;
        }
        List<StepDraft> drafts = new StepsProposed(foods, List.of()).of(steps);
        return foods.stream().map(line -> cookedAsSaid(line, drafts)).toList();
    }

    private Mixed cookedAsSaid(Mixed line, List<StepDraft> steps) {
        List<CookedYield> known = kitchen.yields().getOrDefault(line.food(), List.of());
        return line.cookedSaid()
                ? line
                : steps.stream()
                        .filter(step -> step.foods().contains(line))
                        .findFirst()
                        .flatMap(step -> CookingProposed.of(step.text(), known))
                        .map(how -> line.cookedBy(Optional.of(how)))
                        .orElse(line);
    }

    private ProposedDish read(DishPageDraft draft) {
        FolderFiles folder = folder();
        String path = path(draft.id());
        String page = draft.text();
        Read<Kitchen> read = KitchenReader.read(
                new WithChange(folder, path, SourceFile.of(folder.shown(path), page)), workspace.cookingDay());
        List<Problem> ofPage = read.problems().stream()
                .filter(problem -> problem.at().file().path().equals(folder.shown(path)))
                .toList();
        if (read.value().isEmpty()) {
            throw Refused.by(read.problems().stream().filter(Problem::isError).toList());
        }
        Dish dish = Optional.ofNullable(read.value().get().dishes().get(draft.id()))
                .orElseThrow(() -> new IllegalStateException("the new dish must be among those that were read"));
        List<Portion> portions = portions(dish, draft.parts());
        return new ProposedDish(
                page,
                dish,
                draft.keeping().why(),
                portions.stream().map(Portion::nutrients).reduce(Nutrients.NONE, Nutrients::plus),
                OneContainer.cost(kitchen, portions),
                dish.foods().stream().filter(this::isNotToBeHad).toList(),
                ofPage.stream().map(Problem::wrong).limit(MOST_DOUBTS).toList());
    }

    private boolean isNotToBeHad(Food food) {
        return kitchen.packsOf(food).isEmpty() && kitchen.pantryGrams(food).signum() == 0;
    }

    private static List<Portion> portions(Dish dish, List<PartDraft> drafts) {
        List<Part> parts = dish.parts();
        return IntStream.range(0, parts.size())
                .mapToObj(p -> new Portion(parts.get(p), drafts.get(p).middle()))
                .toList();
    }

    private FolderFiles folder() {
        return workspace.ownFolder("and the starter files stay as they are");
    }

    /** @throws Refused when there is no folder of one's own that a dish can be written to */
    public void checkFolder() {
        try {
            new NewFile(folder().path(path("a_new_dish_of_yours"))).tryOut();
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private static String path(String id) {
        return FOLDER + id + ".yaml";
    }

    /**
     * Writes it, never over another file.
     *
     * @return the path as the user knows it
     * @throws Refused when there is such a file, or none can be made
     */
    public String write(ProposedDish proposed) {
        FolderFiles folder = folder();
        String path = path(proposed.dish().id());
        try {
            new NewFile(folder.path(path)).write(proposed.page());
            return folder.shown(path);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }
}
