package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which words tell of an allergen. Foods as cooks and USDA SR28 write them; what is in them is common knowledge. */
class AllergenWordsTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
        whole milk                                   | milk
        Cheese, cream                                | milk
        Yogurt, Greek, plain, nonfat                 | milk
        Butter, salted                               | milk
        Beverages, Protein powder whey based         | milk
        Candies, milk chocolate                      | milk
        Ice creams, vanilla                          | milk
        Peanut butter, smooth style                  | peanut
        Nuts, almond butter, plain                   | tree_nut
        Seeds, sesame butter, tahini                 | sesame
        Seeds, sunflower seed butter, without salt   | -
        Fruit butters, apple                         | -
        Oil, cocoa butter                            | -
        butternut squash                             | -
        butter beans                                 | -
        Nuts, coconut milk, canned                   | -
        Beverages, rice milk, unsweetened            | -
        almond milk                                  | tree_nut
        oat milk                                     | gluten
        Soymilk, original and vanilla                | soy
        Leavening agents, cream of tartar            | -
        Corn, sweet, yellow, canned, cream style     | -
        Potatoes, mashed, flakes without milk        | -
        vegan mozzarella                             | -
        Egg, white, raw, fresh                       | egg
        eggs                                         | egg
        Eggplant, raw                                | -
        Salad dressing, mayonnaise, regular          | egg
        Fish, cod, Atlantic, raw                     | fish
        tuna in water                                | fish
        anchovies                                    | fish
        Crustaceans, shrimp, mixed species, raw      | crustacean
        king prawns                                  | crustacean
        crab apples                                  | -
        mussels                                      | mollusc
        Mushrooms, oyster, raw                       | -
        oyster mushrooms                             | -
        Squash, summer, scallop, raw                 | -
        Nuts, walnuts, english                       | tree_nut
        brazil nuts                                  | tree_nut
        nutmeg                                       | -
        water chestnuts                              | -
        Bread, white, commercially prepared          | wheat gluten
        whole wheat flour                            | wheat gluten
        Couscous, dry                                | wheat gluten
        Noodles, egg, dry, enriched                  | egg wheat gluten
        seitan                                       | wheat gluten
        Buckwheat groats                             | -
        gluten free bread                            | -
        Squash, winter, spaghetti, raw               | -
        tomato sauce for pasta, pasta sauce          | wheat gluten
        pasta sauce                                  | -
        Barley, pearled, raw                         | gluten
        rolled oats                                  | gluten
        goat, raw                                    | -
        root beer                                    | -
        Soy sauce made from soy and wheat (shoyu)    | wheat gluten soy
        Tofu, raw, firm                              | soy
        Edamame, frozen                              | soy
        Oil, soybean, salad or cooking               | -
        hummus                                       | sesame
        Celery, raw                                  | celery
        Mustard, prepared, yellow                    | mustard
        lupin flour                                  | lupin
        Apricots, dried, sulfured, uncooked          | sulphite
        Apricots, raw                                | -
        red wine                                     | sulphite
        mustard seeds                                | mustard
        curry powder                                 | mustard
        worcestershire sauce                         | fish gluten
        soy sauce                                    | wheat gluten soy
        gluten free soy sauce                        | soy
        tamari                                       | soy
        peanut oil                                   | peanut
        sesame oil                                   | sesame
        malt vinegar                                 | gluten
        balsamic vinegar                             | sulphite
        vinegar                                      | -
        stock cube                                   | celery
        capers                                       | -
        flour for dusting                            | wheat gluten
        rice flour                                   | -
        panko                                        | wheat gluten
        garam masala                                 | -
        winegums                                     | -
        """)
    void a_text_tells_of_its_allergens(String text, String expected) {
        assertThat(ids(List.of(text))).isEqualTo(expected == null ? "" : expected);
    }

    @Test
    void id_and_name_are_read_like_the_description() {
        assertThat(ids(List.of("rye_crisp", "crispbread", ""))).isEqualTo("gluten");
        assertThat(ids(List.of("cheese_slices", "vegan slices", ""))).isEmpty();
    }

    @Test
    void no_phrase_reaches_from_one_text_into_the_next() {
        assertThat(ids(List.of("coconut", "milk", ""))).isEqualTo("milk");
    }

    private static String ids(List<String> texts) {
        return AllergenWords.in(texts).stream()
                .flatMap(hint -> hint.allergens().stream())
                .map(Allergen::id)
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
