package batchwright.text;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The valid name that somebody most likely meant. Tried in this order: one slip of the finger; the only name that has what
 * was typed among its words (oats: rolled_oats); a few slips; the only name that contains what was typed. Letter case,
 * blanks and hyphens do not count as slips. Of equally near names the first in the alphabet is the answer.
 */
public final class NearestName {
    private static final int SHORT = 3;
    private static final int SLIPS = 2;
    private static final int LETTERS_PER_SLIP = 3;

    private final String typed;
    private final List<String> names;

    private NearestName(String typed, Collection<String> names) {
        this.typed = normal(typed);
        this.names = List.copyOf(new TreeSet<>(names));
    }

    public static Optional<String> of(String typed, Collection<String> names) {
        return new NearestName(typed, names).find();
    }

    private Optional<String> find() {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return within(1)
                .or(() -> only(name -> List.of(name.split("_")).contains(typed)))
                .or(() -> within(mostSlips()))
                .or(() -> typed.length() < SHORT ? Optional.empty() : only(name -> name.contains(typed)));
    }

    private int mostSlips() {
        return typed.length() <= SHORT ? 1 : Math.max(SLIPS, typed.length() / LETTERS_PER_SLIP);
    }

    private Optional<String> within(int slips) {
        Optional<String> best = Optional.empty();
        int least = slips + 1;
        for (String name : names) {
            String other = normal(name);
            if (Math.abs(other.length() - typed.length()) < least) {
                int distance = slips(typed, other);
                if (distance < least) {
                    least = distance;
                    best = Optional.of(name);
                }
            }
        }
        return best;
    }

    private Optional<String> only(Predicate<String> test) {
        List<String> matching = names.stream().filter(n -> test.test(normal(n))).toList();
        return matching.size() == 1 ? Optional.of(matching.get(0)) : Optional.empty();
    }

    private static String normal(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    }

    /** Letters left out, put in, mistaken or swapped with their neighbour (optimal string alignment distance). */
    public static int slips(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int mistaken = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(mistaken, 1 + Math.min(last[j], row[j - 1]));
                if (swapped(a, i, b, j)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length()];
    }

    private static boolean swapped(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
