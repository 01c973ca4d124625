package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Weight;
import batchwright.book.FoodStock;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.NearestName;
import batchwright.text.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What contradicts itself in a book, or can hardly be: each a warning at its line. */
public final class BookDoubts {
    private final Kitchen before;
    private final Collection<String> ids;
    private final Map<String, Eater> eaters;

    /**
     * @param before the kitchen on the day of today, with what was at home before the book began
     * @param ids of all eaters
     * @param eaters by id, those whose profile can be read
     */
    public BookDoubts(Kitchen before, Collection<String> ids, Map<String, Eater> eaters) {
        this.before = before;
        this.ids = List.copyOf(ids);
        this.eaters = Map.copyOf(eaters);
    }

    /** In the order of the days. */
    public List<Problem> of(Book book) {
        LocalDate today = before.cookingDay();
        List<Problem> doubts = new ArrayList<>();
        var known = new Known();
        for (Entry entry : book.entries()) {
            if (entry.day().isAfter(today)) {
                doubts.add(Problem.warning(
                        entry.at(),
                        "%s is a day to come, seen from %s".formatted(entry.day(), today),
                        "it counts from that day on: is the year right?"));
            }
            known.look(entry, doubts);
        }
        doubts.addAll(WeightDoubts.of(book, eaters));
        doubts.addAll(AvoidDoubts.of(book, before, eaters));
        doubts.addAll(KeepingDoubts.of(book, before));
        BoxesLeft boxes = BoxesLeft.of(book);
        boxes.shortfalls()
                .forEach(s -> doubts.add(Problem.warning(
                        s.entry().at(), s.says(), "was it eaten before, or is a line about filling missing?")));
        boxes.notToFreeze()
                .forEach(
                        s -> doubts.add(
                                Problem.warning(
                                        s.entry().at(),
                                        s.says(),
                                        "never freeze it: eat it within its day or throw it away; what was cooked again is filled anew")));
        FoodStock.of(book, before.pantry(), before.foods())
                .shortfalls()
                .forEach(s -> doubts.add(Problem.warning(
                        s.entry().at(), s.says(), "a line about buying is missing, or count what there is")));
        return doubts;
    }

    /** Names that the kitchen does not know: each is told once. A dish that has containers was known when they were filled. */
    private final class Known {
        private final Set<String> told = new HashSet<>();
        private final Set<String> filled = new HashSet<>();
        private final Set<String> creatine = new HashSet<>();

        void look(Entry entry, List<Problem> doubts) {
            Event event = entry.event();
            if (event instanceof Event.Weighed weighed) {
                eater(weighed.eater(), entry, doubts);
            } else if (event instanceof Event.AteBoxes ate) {
                eater(ate.eater(), entry, doubts);
                boxes(ate.boxes(), entry, doubts);
            } else if (event instanceof Event.AteFood ate) {
                eater(ate.eater(), entry, doubts);
                food(ate.food(), entry, doubts);
            } else if (event instanceof Event.AteOut ate) {
                eater(ate.eater(), entry, doubts);
            } else if (event instanceof Event.NothingElse all) {
                eater(all.eater(), entry, doubts);
            } else if (event instanceof Event.NotLogged not) {
                eater(not.eater(), entry, doubts);
            } else if (event instanceof Event.Marked marked) {
                eater(marked.eater(), entry, doubts);
                creatine(marked, entry, doubts);
            } else if (event instanceof Event.Adopted adopted) {
                eater(adopted.eater(), entry, doubts);
            } else {
                lookInKitchen(event, entry, doubts);
            }
        }

        private void lookInKitchen(Event event, Entry entry, List<Problem> doubts) {
            if (event instanceof Event.Bought bought) {
                food(new Weight(bought.food(), bought.grams()), entry, doubts);
            } else if (event instanceof Event.Cooked cooked) {
                name(cooked.dish(), "dish", before.dishIds(), entry, doubts);
                cooked.foods().forEach(food -> food(food, entry, doubts));
                if (cooked.foods().isEmpty()) {
                    doubts.add(Problem.warning(
                            entry.at(),
                            "nothing says what went into %s, so it stays at home by the book".formatted(cooked.dish()),
                            "expected cooked %s from 300 g FOOD, 200 g FOOD".formatted(cooked.dish())));
                }
            } else if (event instanceof Event.Filled fill) {
                boxes(fill.boxes(), entry, doubts);
                filled.add(fill.boxes().dish());
            } else if (event instanceof Event.BoxesGone gone) {
                boxes(gone.boxes(), entry, doubts);
            } else if (event instanceof Event.Moved moved) {
                boxes(moved.boxes(), entry, doubts);
            } else if (event instanceof Event.FoodGone gone) {
                food(gone.food(), entry, doubts);
            } else if (event instanceof Event.Counted counted) {
                food(counted.food(), entry, doubts);
            }
        }

        /** It is taken from its first day until it is stopped. */
        private void creatine(Event.Marked marked, Entry entry, List<Problem> doubts) {
            if (marked.mark() == Event.Mark.CREATINE && !creatine.add(marked.eater())) {
                doubts.add(Problem.warning(
                        entry.at(),
                        "%s takes creatine already".formatted(marked.eater()),
                        "only its first day is written, and the first day without it"));
            } else if (marked.mark() == Event.Mark.CREATINE_STOPPED && !creatine.remove(marked.eater())) {
                doubts.add(Problem.warning(
                        entry.at(),
                        "no line says that %s takes creatine".formatted(marked.eater()),
                        "write its first day as well: creatine %s".formatted(marked.eater())));
            }
        }

        private void boxes(Boxes boxes, Entry entry, List<Problem> doubts) {
            eater(boxes.eater(), entry, doubts);
            if (!filled.contains(boxes.dish())) {
                name(boxes.dish(), "dish", before.dishIds(), entry, doubts);
            }
        }

        private void food(Weight weight, Entry entry, List<Problem> doubts) {
            name(weight.food(), "food", before.foods().keySet(), entry, doubts);
        }

        private void eater(String id, Entry entry, List<Problem> doubts) {
            name(id, "eater", ids, entry, doubts);
        }

        private void name(String id, String kind, Collection<String> valid, Entry entry, List<Problem> doubts) {
            if (!valid.contains(id) && told.add(kind + " " + id)) {
                doubts.add(Problem.warning(
                                entry.at(),
                                "there is no %s called \"%s\"".formatted(kind, id),
                                "it was renamed or taken away since, or it is a slip")
                        .near(NearestName.of(id, valid)));
            }
        }
    }
}
