package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.person.Avoided;
import batchwright.person.Eater;
import batchwright.text.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Dishes and foods in front of an eater whose profile avoids them or something in them. */
final class AvoidDoubts {
    private final Kitchen kitchen;
    private final Map<String, Eater> eaters;
    private final List<Problem> doubts = new ArrayList<>();

    private AvoidDoubts(Kitchen kitchen, Map<String, Eater> eaters) {
        this.kitchen = kitchen;
        this.eaters = eaters;
    }

    static List<Problem> of(Book book, Kitchen kitchen, Map<String, Eater> eaters) {
        var doubts = new AvoidDoubts(kitchen, eaters);
        book.entries().forEach(doubts::look);
        return doubts.doubts;
    }

    private void look(Entry entry) {
        Event event = entry.event();
        if (event instanceof Event.Filled filled) {
            dish(filled.boxes().eater(), filled.boxes(), entry);
        } else if (event instanceof Event.AteBoxes ate) {
            dish(ate.eater(), ate.boxes(), entry);
        } else if (event instanceof Event.AteFood ate) {
            food(ate.eater(), ate.food().food(), entry);
        }
    }

    private void dish(String eater, Boxes boxes, Entry entry) {
        Dish dish = kitchen.dish(boxes.dish()).orElse(null);
        if (dish != null) {
            avoided(eater)
                    .filter(avoided -> !avoided.allows(dish))
                    .ifPresent(avoided -> doubt(eater, boxes.dish(), both(avoided, dish.allergens()), entry));
        }
    }

    private void food(String eater, String id, Entry entry) {
        Food food = kitchen.foods().get(id);
        if (food != null) {
            avoided(eater)
                    .filter(avoided -> !avoided.allows(food))
                    .ifPresent(avoided -> doubt(eater, id, both(avoided, food.allergens()), entry));
        }
    }

    private Optional<Avoided> avoided(String eater) {
        return Optional.ofNullable(eaters.get(eater)).map(e -> e.wishes().avoided());
    }

    private static String both(Avoided avoided, Set<Allergen> carried) {
        return carried.stream()
                .filter(avoided.allergens()::contains)
                .sorted()
                .map(Allergen::label)
                .collect(Collectors.joining(" and "));
    }

    private void doubt(String eater, String what, String allergens, Entry entry) {
        String wrong = allergens.isEmpty()
                ? "%s avoids %s or something in it".formatted(eater, what)
                : "%s avoids %s, and %s has it".formatted(eater, allergens, what);
        doubts.add(Problem.warning(entry.at(), wrong, "do not eat it: is it somebody else's?"));
    }
}
