package batchwright.reference.find;

import batchwright.food.Food;
import batchwright.food.OtherNames;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.find.FoodFinder.Fitting;
import batchwright.reference.find.FoundFoods.Match;
import batchwright.reference.find.Query.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds foods by the words that cooks type: order, letter case, accents and one or many do not matter, a beginning is enough, British
 * and American names count alike, a slip or two are overlooked in words that nothing else fits. Foods with all words come first,
 * then those that have the most of them.
 */
public final class FoodSearch {
    private final Vocabulary vocabulary = new Vocabulary();
    private final FoodFinder<Object> finder;
    private final Spelling spelling;

    public FoodSearch(Collection<Food> catalogue, List<Sr28Food> reference) {
        var foods = new ArrayList<IndexedFood<Object>>();
        catalogue.forEach(f -> foods.add(IndexedFood.of(f, true, f.name(), f.id() + " " + f.group(), vocabulary)));
        reference.forEach(f -> foods.add(IndexedFood.of(f, false, f.description(), "", vocabulary)));
        this.finder = new FoodFinder<>(vocabulary, foods);
        this.spelling = new Spelling(vocabulary, otherWords());
    }

    /** In the catalogue and in USDA SR28. */
    public static FoodSearch in(Collection<Food> catalogue, Sr28 table) {
        return new FoodSearch(catalogue, table.foods());
    }

    private static Set<String> otherWords() {
        var words = new TreeSet<String>();
        OtherNames.words().forEach(w -> words.add(Word.form(w)));
        OtherNames.lackingWords().forEach(w -> words.add(Word.form(w)));
        return words;
    }

    /** Every word that can be found, in the form in which words are compared. */
    public Set<String> words() {
        Set<String> words = otherWords();
        vocabulary.words().forEach(word -> words.add(word.text()));
        return words;
    }

    /** Nothing when there is no word, or no food has enough of what was typed. */
    public FoundFoods find(String typed) {
        List<String> words = spelling.mended(Vocabulary.wordsOf(typed));
        List<Fitting<Object>> fitting = finder.find(wordings(words));
        List<Object> best = asGoodAsTheFirst(fitting);
        return new FoundFoods(
                only(Food.class, best),
                only(Sr28Food.class, best),
                !best.isEmpty() && best.get(0) instanceof Food,
                fitting.isEmpty() ? Match.SOME : match(fitting.get(0)),
                String.join(" ", words));
    }

    private static List<Query> wordings(List<String> words) {
        var wordings = new ArrayList<Query>();
        wordings.add(Query.of(words, Wording.TYPED));
        OtherNames.replacedIn(words).forEach(w -> wordings.add(Query.of(forms(w), Wording.OTHER_NAME)));
        OtherNames.nearestTo(words).forEach(w -> wordings.add(Query.of(forms(w), Wording.NEAREST)));
        return wordings;
    }

    private static List<String> forms(List<String> words) {
        return words.stream().map(Word::form).toList();
    }

    private static Match match(Fitting<?> first) {
        if (first.wording() == Wording.NEAREST) {
            return Match.NEAREST;
        }
        return first.hasAll() ? Match.ALL : Match.SOME;
    }

    /** Those that have no less of what was asked for than the first, in a wording that is no farther from it. */
    private static List<Object> asGoodAsTheFirst(List<Fitting<Object>> fitting) {
        return fitting.stream()
                .filter(f -> f.coverage() >= fitting.get(0).coverage())
                .filter(f -> f.wording() != Wording.NEAREST || fitting.get(0).wording() == Wording.NEAREST)
                .map(Fitting::food)
                .toList();
    }

    private static <F> List<F> only(Class<F> kind, List<Object> foods) {
        return foods.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
