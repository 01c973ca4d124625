package batchwright.food;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that tell of an allergen, and phrases in which they do not: peanut butter holds no butter. Allergens are those of FALCPA
 * 2004, the FASTER Act 2021 and Regulation (EU) 1169/2011, Annex II. Kinds of fish, cheese and grain are common knowledge, not
 * a complete list: a food or staple of which no word is known may still hold an allergen, and the label
 * decides.
 */
public final class AllergenWords {
    /** allergens | words | phrases that do not count. A phrase without any of the words, or with "free", excuses the food. */
    private static final String TABLE = """
            milk | milk, buttermilk, cheese, yogurt, yoghurt, butter, cream, whey, casein, caseinate, lactose, ghee, kefir, \
            cheesecake, milkshake, cheddar, mozzarella, parmesan, feta, ricotta, mascarpone, paneer, halloumi, gouda, camembert, quark, skyr, eggnog \
            | vegan, dairy free, milk free, non dairy, nondairy, coconut milk, almond milk, soy milk, rice milk, oat milk, \
            cashew milk, hemp milk, milk human, human milk, coconut cream, cream coconut, cream of tartar, cream of rice, \
            cream of wheat, cream style, soy cheese, tofu yogurt, soy yogurt, coconut yogurt, head cheese, peanut butter, \
            almond butter, cashew butter, nut butter, seed butter, sesame butter, sunflower butter, tahini butter, cocoa butter, \
            cacao butter, shea butter, apple butter, fruit butter, pumpkin butter, butter bean, butter lettuce, bread and butter, cream soda
            egg | egg, eggnog, mayonnaise, mayo, meringue, omelet, omelette | vegan, egg free, eggless, egg plant, egg replacer, herring egg
            fish | fish, salmon, tuna, cod, haddock, pollock, tilapia, trout, mackerel, herring, sardine, anchovy, halibut, \
            catfish, swordfish, whitefish, flounder, snapper, caviar, surimi, worcestershire, dashi, bonito | vegan, fish free
            crustacean | crustacean, shrimp, prawn, crab, lobster, crayfish, crawfish, langoustine, scampi, krill \
            | vegan, crab apple
            mollusc | mollusk, mollusc, clam, mussel, oyster, squid, calamari, octopus, scallop, cuttlefish, abalone, whelk, snail \
            | vegan, oyster mushroom, mushroom oyster, vegetable oyster, oyster cracker, include oyster, oyster blade, \
            ostrich oyster, emu oyster, chicken oyster, summer scallop
            tree_nut | almond, walnut, hazelnut, filbert, cashew, pistachio, pecan, macadamia, brazil nut, brazilnut, pine nut, \
            marzipan, mixed nut | nut free, almond free
            peanut | peanut, groundnut | peanut free, nut free
            wheat gluten | wheat, bread, breadcrumb, pasta, couscous, bulgur, semolina, seitan, spelt, kamut, durum, farro, \
            freekeh, macaroni, spaghetti, bagel, naan, pita, croissant, pretzel, cookie, cracker, saltine, english muffin, \
            flour tortilla, egg noodle, noodle egg, panko, filo, phyllo | gluten free, wheat free, rice cracker, shortening bread, wheat grass, rice pasta, corn pasta, lentil pasta, chickpea pasta, pasta sauce, \
            sauce pasta, spaghetti sauce, spaghetti marinara, spaghetti squash, winter spaghetti
            wheat gluten | soy sauce, shoyu, teriyaki, hoisin, oyster sauce | gluten free, wheat free, tamari, hydrolyzed
            wheat gluten | flour | gluten free, wheat free, rice flour, corn flour, soy flour, potato flour, almond flour, \
            lupin flour, lupine flour, nut flour, hazelnut flour, \
            chickpea flour, gram flour, lentil flour, pea flour, bean flour, buckwheat flour, oat flour, rye flour, \
            barley flour, millet flour, sorghum flour, teff flour, quinoa flour, amaranth flour, arrowroot flour, \
            tapioca flour, cassava flour, coconut flour, carob flour, peanut flour, seed flour, sesame flour, flour corn
            gluten | barley, rye, oat, oatmeal, granola, muesli, malt, triticale, beer, worcestershire | gluten free, root beer, ginger beer
            soy | soy, soya, soybean, soymilk, tofu, tempeh, miso, edamame, natto, tamari, teriyaki, hoisin, shoyu, oyster sauce \
            | soy free, soybean oil, oil soybean, oil industrial soy
            sesame | sesame, tahini, halva, halvah, hummus | sesame free
            celery | celery, celeriac, bouillon, stock cube, stock powder, broth cube, broth powder | celery free, celery cabbage
            mustard | mustard, curry powder | mustard free, mustard spinach
            lupin | lupin, lupine | lupin free
            sulphite | wine, balsamic, sulfured, sulphured, sulfite, sulphite, dried apricot, apricot dried | rice wine, sulphite free
            """;

    private static final Pattern BAR = Pattern.compile("\\|");
    private static final Pattern BLANK = Pattern.compile(" ");
    private static final Pattern COMMA = Pattern.compile(",");
    private static final Set<String> NONE_OF_IT = Set.of("without", "no");
    private static final List<AllergenWords> ALL =
            TABLE.lines().map(AllergenWords::row).toList();

    private final Set<Allergen> allergens;
    private final List<Phrase> words;
    private final List<Phrase> excuses;
    private final Set<String> firstWords;

    private AllergenWords(Set<Allergen> allergens, List<Phrase> words, List<Phrase> excuses) {
        this.allergens = allergens;
        this.words = words;
        this.excuses = excuses;
        this.firstWords = words.stream().map(word -> word.word(0)).collect(Collectors.toSet());
    }

    /** A word of a text, and what it tells of. */
    public record Hint(Phrase word, Set<Allergen> allergens) {}

    /**
     * At most one hint for each line of the table.
     *
     * @param texts what names and describes a food; a phrase that excuses the food may stand in any of them
     */
    public static List<Hint> in(List<String> texts) {
        Phrase text = Phrase.ofAll(texts);
        return ALL.stream()
                .flatMap(row -> text.hasOneOf(row.firstWords) ? row.hint(text) : Stream.empty())
                .toList();
    }

    private static AllergenWords row(String line) {
        List<String> cells = BAR.splitAsStream(line).toList();
        var allergens = EnumSet.noneOf(Allergen.class);
        BLANK.splitAsStream(cells.get(0).strip())
                .forEach(id -> allergens.add(Allergen.byId(id).orElseThrow()));
        return new AllergenWords(allergens, phrases(cells.get(1)), phrases(cells.get(2)));
    }

    private static List<Phrase> phrases(String cell) {
        return COMMA.splitAsStream(cell).map(Phrase::of).toList();
    }

    private Stream<Hint> hint(Phrase text) {
        Stream<Hint> told =
                words.stream().filter(word -> isTold(text, word)).limit(1).map(word -> new Hint(word, allergens));
        return excuses.stream().anyMatch(excuse -> isOfAll(excuse) && text.holds(excuse)) ? Stream.empty() : told;
    }

    private boolean isOfAll(Phrase excuse) {
        return excuse.holds("free") || words.stream().noneMatch(excuse::holds);
    }

    private boolean isTold(Phrase text, Phrase word) {
        for (int i = text.find(word, 0); i >= 0; i = text.find(word, i + 1)) {
            if (!NONE_OF_IT.contains(text.word(i - 1)) && !isExcused(text, i)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a phrase that does not count lies over this place. */
    private boolean isExcused(Phrase text, int place) {
        return excuses.stream().anyMatch(excuse -> text.covers(excuse, place));
    }
}
