package batchwright.files.book;

import batchwright.book.Event;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Holds;
import batchwright.book.Event.Mark;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.quantity.Mass;
import batchwright.text.NearestName;
import batchwright.text.Problem;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a line says after its day. Each event begins with a word of its own. */
final class EventGrammar {
    private static final NumberRange COUNT = NumberRange.of("number of containers", "1", "100", "", "");
    private static final NumberRange PACKS = NumberRange.of("number of packs", "1", "1000", "", "");
    private static final NumberRange KCAL = NumberRange.of("energy", "0", "20000", "kcal", "");
    private static final NumberRange AIM = NumberRange.of("energy", "800", "8000", "kcal", "of a day");
    private static final NumberRange PROTEIN = NumberRange.of("protein", "0", "1000", "g", "");
    private static final NumberRange PRICE = NumberRange.of("price", "0", "1000000", "", "");
    private static final NumberRange KG = NumberRange.of("weight", "25", "300", "kg", "of a body");
    private static final NumberRange LB = NumberRange.of("weight", "55", "661", "lb", "of a body");
    private static final Map<String, Mark> MARKS = Map.of("ill", Mark.ILL, "travel", Mark.TRAVEL, "cycle", Mark.CYCLE);

    private final Map<String, Form> forms = new LinkedHashMap<>();
    private final Problems problems;

    @FunctionalInterface
    private interface Form {
        Event read(LineWords phrase) throws WrongLine;
    }

    EventGrammar(Problems problems) {
        this.problems = problems;
        forms.put("weighed", EventGrammar::weighed);
        forms.put("bought", EventGrammar::bought);
        forms.put("cooked", EventGrammar::cooked);
        forms.put("filled", EventGrammar::filled);
        forms.put("ate", EventGrammar::ate);
        forms.put("gave", phrase -> gone(false, phrase));
        forms.put("threw", phrase -> gone(true, phrase));
        forms.put("thawed", phrase -> moved(Place.FRIDGE, phrase));
        forms.put("froze", phrase -> moved(Place.FREEZER, phrase));
        forms.put("counted", EventGrammar::counted);
        forms.put("adopted", phrase -> new Event.Adopted(phrase.eater(), kcal(phrase, AIM)));
        forms.put("creatine", EventGrammar::creatine);
        MARKS.forEach((word, mark) -> forms.put(word, phrase -> new Event.Marked(phrase.eater(), mark)));
    }

    Event read(LineWords phrase) throws WrongLine {
        Written verb = phrase.word("what happened: " + String.join(", ", forms.keySet()));
        Form form = forms.get(verb.text());
        if (form == null) {
            problems.add(Problem.error(
                            verb.at(),
                            verb.quoted() + " is nothing that the book knows",
                            "expected one of " + String.join(", ", forms.keySet()) + ", undo")
                    .near(NearestName.of(verb.text(), forms.keySet())));
            throw new WrongLine();
        }
        Event event = form.read(phrase);
        phrase.end();
        return event;
    }

    private static Event weighed(LineWords phrase) throws WrongLine {
        String eater = phrase.eater();
        if (phrase.isUnitAhead("lb") || phrase.isUnitAhead("lbs")) {
            BigDecimal lb = phrase.decimal(LB);
            phrase.word("lb");
            return new Event.Weighed(
                    eater,
                    LineWords.plain(
                            lb.multiply(BigDecimal.valueOf(Mass.KG_PER_LB)).round(new MathContext(6))));
        }
        if (!phrase.isUnitAhead("kg")) {
            Written number = phrase.word("a weight with its unit, such as 74.2 kg or 163.5 lb");
            throw phrase.wrong(
                    number, number.quoted() + " is no body weight", "a number and its unit: 74.2 kg or 163.5 lb");
        }
        BigDecimal kg = phrase.decimal(KG);
        phrase.word("kg");
        return new Event.Weighed(eater, kg);
    }

    /** bought [COUNT x] WEIGHT FOOD [for PRICE] [until DAY] */
    private static Event bought(LineWords phrase) throws WrongLine {
        boolean single = phrase.isWeightAhead();
        int count = single ? 1 : phrase.count(PACKS);
        if (!single) {
            phrase.need("x", "x between the number of packs and their weight: 4 x 283 g");
        }
        BigDecimal grams = phrase.grams();
        String food = phrase.food();
        Optional<BigDecimal> price = phrase.has("for") ? Optional.of(phrase.decimal(PRICE)) : Optional.empty();
        return new Event.Bought(count, grams, food, price, until(phrase));
    }

    /** cooked DISH [from WEIGHT FOOD, WEIGHT FOOD] */
    private static Event cooked(LineWords phrase) throws WrongLine {
        String dish = phrase.dish();
        List<Weight> foods = new ArrayList<>();
        if (phrase.has("from")) {
            do {
                foods.add(weight(phrase));
            } while (phrase.has(","));
        }
        return new Event.Cooked(dish, foods);
    }

    /** filled COUNT DISH for EATER in fridge|freezer until DAY[, ENERGY kcal[, PROTEIN g protein]] */
    private static Event filled(LineWords phrase) throws WrongLine {
        int count = phrase.count(COUNT);
        String dish = phrase.dish();
        phrase.need("for", "for and the eater: 4 lentil_ragu for lifter-gaining");
        String eater = phrase.eater();
        phrase.need("in", "in fridge or in freezer");
        Written place = phrase.word("fridge or freezer");
        if (!place.text().equals("fridge") && !place.text().equals("freezer")) {
            throw phrase.wrong(place, place.quoted() + " is no place for containers", "fridge or freezer");
        }
        phrase.need("until", "until and the last day on which they may be eaten");
        LocalDate until = phrase.date();
        return new Event.Filled(
                new Boxes(count, dish, eater),
                place.text().equals("fridge") ? Place.FRIDGE : Place.FREEZER,
                until,
                holds(phrase));
    }

    private static Holds holds(LineWords phrase) throws WrongLine {
        if (!phrase.has(",")) {
            return Holds.UNKNOWN;
        }
        BigDecimal kcal = kcal(phrase, KCAL);
        if (!phrase.has(",")) {
            return new Holds(Optional.of(kcal), Optional.empty());
        }
        BigDecimal protein = phrase.decimal(PROTEIN);
        phrase.need("g", "g protein");
        phrase.need("protein", "g protein");
        return new Holds(Optional.of(kcal), Optional.of(protein));
    }

    /** ate EATER [COUNT] DISH [of EATER] | WEIGHT FOOD | out | nothing else | not logged */
    private static Event ate(LineWords phrase) throws WrongLine {
        String eater = phrase.eater();
        if (phrase.has("nothing")) {
            phrase.need("else", "nothing else");
            return new Event.NothingElse(eater);
        }
        if (phrase.has("not")) {
            phrase.need("logged", "not logged");
            return new Event.NotLogged(eater);
        }
        if (phrase.has("out")) {
            phrase.has(",");
            return new Event.AteOut(eater, kcal(phrase, KCAL));
        }
        if (phrase.isWeightAhead()) {
            Weight food = weight(phrase);
            return new Event.AteFood(eater, food, kcalBehind(phrase));
        }
        int count = phrase.isNumberAhead() ? phrase.count(COUNT) : 1;
        String dish = phrase.dish();
        String owner = phrase.has("of") ? phrase.eater() : eater;
        return new Event.AteBoxes(eater, new Boxes(count, dish, owner), kcalBehind(phrase));
    }

    /** gave|threw away COUNT DISH of EATER | WEIGHT FOOD */
    private static Event gone(boolean thrown, LineWords phrase) throws WrongLine {
        phrase.need("away", "away");
        if (phrase.isWeightAhead()) {
            return new Event.FoodGone(thrown, weight(phrase));
        }
        return new Event.BoxesGone(thrown, boxesOf(phrase));
    }

    /** thawed|froze [COUNT] DISH of EATER [until DAY] */
    private static Event moved(Place to, LineWords phrase) throws WrongLine {
        return new Event.Moved(boxesOf(phrase), to, until(phrase));
    }

    /** [COUNT] DISH of EATER */
    private static Boxes boxesOf(LineWords phrase) throws WrongLine {
        int count = phrase.isNumberAhead() ? phrase.count(COUNT) : 1;
        String dish = phrase.dish();
        phrase.need("of", "of and the eater whose container it was");
        return new Boxes(count, dish, phrase.eater());
    }

    private static Event counted(LineWords phrase) throws WrongLine {
        Weight food = weight(phrase);
        return new Event.Counted(food, until(phrase));
    }

    /** creatine EATER [stopped] */
    private static Event creatine(LineWords phrase) throws WrongLine {
        return new Event.Marked(phrase.eater(), phrase.has("stopped") ? Mark.CREATINE_STOPPED : Mark.CREATINE);
    }

    private static Weight weight(LineWords phrase) throws WrongLine {
        BigDecimal grams = phrase.grams();
        return new Weight(phrase.food(), grams);
    }

    private static Optional<LocalDate> until(LineWords phrase) throws WrongLine {
        return phrase.has("until") ? Optional.of(phrase.date()) : Optional.empty();
    }

    private static Optional<BigDecimal> kcalBehind(LineWords phrase) throws WrongLine {
        return phrase.has(",") ? Optional.of(kcal(phrase, KCAL)) : Optional.empty();
    }

    private static BigDecimal kcal(LineWords phrase, NumberRange range) throws WrongLine {
        BigDecimal kcal = phrase.decimal(range);
        phrase.need("kcal", "kcal behind the energy");
        return kcal;
    }
}
