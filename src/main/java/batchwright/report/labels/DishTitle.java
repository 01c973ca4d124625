package batchwright.report.labels;

import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.plan.Portion;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a box is called: the dish by its name, less what is left out of this box. A piece of the name ("with egg noodles") goes when it
 * names a part that is left out, or a food of it that nothing else in the box has. Where the name begins with such a piece there is no
 * dish of that name in the box, and the parts in it are listed.
 */
final class DishTitle {
    private static final Pattern JOINT = Pattern.compile(", | and | with ");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}-]{3,}");
    private static final Set<String> NO_NAMES = Set.of("and", "with", "the", "for");

    private DishTitle() {}

    /** @param portions of each part of the dish */
    static String of(Dish dish, List<Portion> portions) {
        String name = dish.name();
        Set<String> absent = absent(portions);
        List<Piece> pieces = pieces(name);
        if (absent.isEmpty() || pieces.stream().noneMatch(piece -> piece.names(absent))) {
            return name;
        }
        return pieces.get(0).names(absent) ? parts(portions) : joined(pieces, absent);
    }

    /** Whether a text speaks of something that is left out. */
    static boolean namesWhatIsLeftOut(String text, List<Portion> portions) {
        return words(text).stream().anyMatch(absent(portions)::contains);
    }

    private static Set<String> absent(List<Portion> portions) {
        Set<String> absent = words(portions.stream().filter(p -> p.rawGrams() == 0));
        absent.removeAll(words(inside(portions)));
        return absent;
    }

    /** @param joint what stands before it; empty for the first */
    private record Piece(String joint, String text) {
        boolean names(Set<String> absent) {
            return words(text).stream().anyMatch(absent::contains);
        }
    }

    private static List<Piece> pieces(String name) {
        List<Piece> pieces = new ArrayList<>();
        int from = 0;
        String joint = "";
        for (MatchResult next : JOINT.matcher(name).results().toList()) {
            pieces.add(new Piece(joint, name.substring(from, next.start())));
            joint = next.group();
            from = next.end();
        }
        pieces.add(new Piece(joint, name.substring(from)));
        return pieces;
    }

    /** A list keeps its "with" before its first piece and its "and" before its last. */
    private static String joined(List<Piece> pieces, Set<String> absent) {
        StringBuilder title = new StringBuilder();
        String missed = "";
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean opens = piece.joint().equals(" with ");
            if (piece.names(absent)) {
                missed = opens || missed.isEmpty() ? piece.joint() : missed;
                continue;
            }
            boolean last = pieces.subList(i + 1, pieces.size()).stream().allMatch(p -> p.names(absent));
            String joint = missed.equals(" with ") ? missed : piece.joint();
            title.append(joint.equals(", ") && last ? " and " : joint).append(piece.text());
            missed = "";
        }
        return title.toString();
    }

    private static String parts(List<Portion> portions) {
        return Show.capital(inside(portions).map(p -> p.part().name()).collect(Collectors.joining(", ")));
    }

    private static Stream<Portion> inside(List<Portion> portions) {
        return portions.stream().filter(p -> p.rawGrams() > 0);
    }

    private static Set<String> words(Stream<Portion> portions) {
        Set<String> words = new HashSet<>();
        portions.map(Portion::part).forEach(part -> words.addAll(words(part)));
        return words;
    }

    /** What follows a comma in the name of a food says how it is, not what. */
    private static Set<String> words(Part part) {
        Set<String> words = words(part.name());
        part.mix().forEach(i -> words.addAll(words(i.food().name().split(",", 2)[0])));
        return words;
    }

    private static Set<String> words(String text) {
        return WORD.matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .filter(word -> !NO_NAMES.contains(word))
                .map(DishTitle::one)
                .collect(Collectors.toCollection(HashSet::new));
    }

    /** One of them: potatoes, potato. */
    private static String one(String word) {
        return word.replaceFirst("(?<=o)es$|(?<![su])s$", "").replaceFirst("ies?$", "y");
    }
}
