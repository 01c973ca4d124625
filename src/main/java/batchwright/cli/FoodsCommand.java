package batchwright.cli;

import batchwright.app.EnterPrice;
import batchwright.app.FindFoods;
import batchwright.app.Refused;
import batchwright.app.TakeFoods;
import batchwright.app.Workspace;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.PriceRank;
import batchwright.reference.Sr28;
import batchwright.reference.find.FoundFoods;
import batchwright.report.foods.CompareText;
import batchwright.report.foods.FoodsJson;
import batchwright.report.foods.FoodsText;
import batchwright.report.foods.FoundJson;
import batchwright.report.foods.FoundText;
import batchwright.report.foods.PriceAnswer;
import batchwright.report.foods.TakeJson;
import batchwright.report.foods.TakeText;
import batchwright.text.Echo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** foods [WORDS...], foods --compare [WORDS...], foods --take NDB..., foods FOOD --price M ... */
@Command(
        name = "foods",
        header = "Search foods, compare and enter prices, take foods from USDA SR28.",
        customSynopsis = {
            "foods [WORDS...] [--all] [OPTIONS]",
            "foods --compare [WORDS...] [--by kcal|protein] [OPTIONS]",
            "foods --take NDB... [OPTIONS]",
            "foods FOOD --price M --pack WEIGHT --shop NAME [--label TEXT]"
        },
        footer = {
            "  java -jar target/batchwright.jar foods yogurt greek",
            "  java -jar target/batchwright.jar foods --take 20031"
        })
final class FoodsCommand implements Callable<Integer> {
    private static final int SHOWN = 15;
    private static final int LONGEST_ECHO = 100;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "WORDS",
            description =
                    "What a cook calls it, British or American, in any order: searched for in your catalogue and in USDA SR28."
                            + " A food's short name shows all about it; without words, your whole catalogue.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--all", description = "Show every match in USDA SR28, not only the best " + SHOWN + ".")
    private boolean all;

    @Option(
            names = "--compare",
            description =
                    "Rank your foods that have a price by what 1000 kcal and 30 g of protein cost: those that match all words or, if"
                            + " none does, any of them.")
    private boolean compare;

    @Option(names = "--by", paramLabel = "WHAT", description = "What --compare ranks by: kcal (default) or protein.")
    @Nullable
    private String by;

    @Option(
            names = "--take",
            description = "Print the lines for your tables of the foods with these NDB numbers of USDA SR28.")
    private boolean take;

    @Mixin
    private PriceOptions price = new PriceOptions();

    @Override
    public Integer call() {
        refuseMixtures();
        Workspace workspace = program.workspace();
        Kitchen kitchen = workspace.foods();
        if (price.any()) {
            return enterPrice(workspace, kitchen);
        }
        if (take) {
            var taken = new TakeFoods(workspace, kitchen, Sr28.load()).answer(words);
            return program.answer(program.json ? TakeJson.of(taken) : TakeText.of(taken));
        }
        var find = new FindFoods(kitchen);
        Optional<Food> exactly = find.exactly(words);
        if (compare) {
            return compared(kitchen, find, exactly);
        }
        if (exactly.isPresent() || words.isEmpty()) {
            List<Food> foods = exactly.map(List::of).orElseGet(() -> find.matching(words));
            return program.answer(program.json ? FoodsJson.of(kitchen, foods) : known(kitchen, foods, exactly));
        }
        return found(kitchen, find);
    }

    private int enterPrice(Workspace workspace, Kitchen kitchen) {
        Food food = new FindFoods(kitchen)
                .exactly(words)
                .orElseThrow(() -> Refused.because(
                        words.isEmpty()
                                ? "no food is named"
                                : "there is no food called " + asked() + " in your catalogue",
                        "Name one food by its short name; \"foods\" and words of it find that."));
        PriceAnswer entered = new EnterPrice(workspace, kitchen).enter(food, price.seen(food.id()));
        return program.answer(program.json ? entered.json() : entered.text());
    }

    /** Foods that fit all words; when there is none, those that fit any: lentils rice. */
    private int compared(Kitchen kitchen, FindFoods find, Optional<Food> exactly) {
        List<Food> all = exactly.map(List::of).orElseGet(() -> find.matching(words));
        List<Food> foods = all.isEmpty() ? find.matchingAny(words) : all;
        var rank = PriceRank.of(kitchen, foods, rankedBy());
        if (program.json) {
            return program.answer(FoodsJson.compared(kitchen, rank));
        }
        String none = "No food of your catalogue has all the words " + asked() + ".";
        String which = all.isEmpty() ? none + (foods.isEmpty() ? "" : " These have one of them.") : "";
        return program.answer(CompareText.of(rank, kitchen.currency(), which));
    }

    private void refuseMixtures() {
        if (price.any() && (take || compare || all)) {
            throw Refused.because(
                    "--price cannot be used with --take, --compare or --all",
                    "Write it alone: foods FOOD --price 2.49 --pack 500g --shop NAME.");
        }
        if (take && (compare || all)) {
            throw Refused.because(
                    "--take cannot be used with --compare or --all", "Write it alone: foods --take 20031.");
        }
        if (by != null && !compare) {
            throw Refused.because("--by needs --compare", "Write foods --compare --by " + by + ".");
        }
        if (all && (compare || words.isEmpty())) {
            throw Refused.because("--all needs words to search for", "Write words before it: foods yogurt --all.");
        }
    }

    private PriceRank.By rankedBy() {
        String what = by == null ? "kcal" : by;
        return switch (what) {
            case "kcal" -> PriceRank.By.KCAL;
            case "protein" -> PriceRank.By.PROTEIN;
            default -> throw Refused.because("--by cannot be \"" + what + "\"", "Write --by kcal or --by protein.");
        };
    }

    private static String known(Kitchen kitchen, List<Food> foods, Optional<Food> exactly) {
        return exactly.map(food -> FoodsText.one(kitchen, food))
                .orElseGet(() -> FoodsText.table(
                        kitchen,
                        foods,
                        count(foods.size()) + "; prices of the pack that is cheapest per edible gram."));
    }

    private int found(Kitchen kitchen, FindFoods find) {
        var table = Sr28.load();
        FoundFoods found = find.found(table, words);
        int most = all ? found.reference().size() : SHOWN;
        if (program.json) {
            return program.answer(FoundJson.of(kitchen, found, most));
        }
        List<String> near = found.isEmpty() ? find.nearestWords(table, words) : List.of();
        return program.answer(FoundText.of(kitchen, found, most, asked(), near));
    }

    private String asked() {
        return "\"" + Echo.shortened(LONGEST_ECHO, String.join(" ", words)) + "\"";
    }

    private static String count(int foods) {
        return foods == 1 ? "1 food" : foods + " foods";
    }
}
