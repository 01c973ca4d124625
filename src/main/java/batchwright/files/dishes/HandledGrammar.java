package batchwright.files.dishes;

import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Handled;
import batchwright.food.Ingredient;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a step handles: {@code onion}, {@code 1/2 sesame_oil in vegetables}, a part of the dish, or a staple. */
final class HandledGrammar {
    private static final Pattern SHARE = Pattern.compile("([1-9])/([2-9]) (.+)");
    private static final String IN = " in ";

    private final List<Part> parts;
    private final boolean all;
    private final List<Staple> staples;
    private final Problems problems;

    /**
     * @param parts those that could be read
     * @param all whether these are all of the dish; if not, a name may be that of another
     */
    HandledGrammar(List<Part> parts, boolean all, List<Staple> staples, Problems problems) {
        this.parts = parts;
        this.all = all;
        this.staples = staples;
        this.problems = problems;
    }

    Optional<Handled> read(Written written) {
        Matcher shared = SHARE.matcher(written.text());
        boolean isShare = shared.matches();
        BigDecimal share = isShare
                ? new BigDecimal(shared.group(1)).divide(new BigDecimal(shared.group(2)), MathContext.DECIMAL64)
                : BigDecimal.ONE;
        String name = isShare ? shared.group(3) : written.text();
        Optional<Handled> found = share.compareTo(BigDecimal.ONE) > 0 ? Optional.empty() : find(name, share);
        if (found.isEmpty() && all) {
            problems.unknown(
                    new Written(name, written.at()),
                    "this dish has no " + written.quoted(),
                    "expected one of " + String.join(", ", names())
                            + "; where a food is in several parts: onion in sauce; of some of it: 1/2 onion",
                    names());
        }
        return found;
    }

    private Optional<Handled> find(String name, BigDecimal share) {
        int in = name.lastIndexOf(IN);
        Optional<String> part = in < 0 ? Optional.empty() : Optional.of(name.substring(in + IN.length()));
        String food = in < 0 ? name : name.substring(0, in);
        Optional<Handled> ofFood = parts.stream()
                .filter(p -> part.filter(wanted -> !wanted.equals(p.name())).isEmpty())
                .flatMap(p -> p.mix().stream())
                .map(Ingredient::food)
                .filter(f -> f.id().equals(food))
                .findFirst()
                .map(f -> new Handled.OfFood(f, part, share));
        Optional<Handled> ofPart = parts.stream()
                .filter(p -> p.name().equals(name) && share.compareTo(BigDecimal.ONE) == 0)
                .findFirst()
                .map(p -> new Handled.OfPart(p.name()));
        Optional<Handled> ofStaple = staples.stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .map(s -> new Handled.OfStaple(s, share));
        return ofFood.or(() -> ofPart).or(() -> ofStaple);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        parts.stream()
                .flatMap(p -> p.mix().stream())
                .map(Ingredient::food)
                .map(Food::id)
                .forEach(names::add);
        parts.stream().map(Part::name).forEach(names::add);
        staples.stream().map(Staple::name).forEach(names::add);
        return names.stream().distinct().toList();
    }
}
