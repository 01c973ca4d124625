package batchwright.food;

import static java.nio.charset.StandardCharsets.UTF_8;

import batchwright.text.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Words that other kitchens have for a food, such as aubergine for eggplant, and those that the catalogue and USDA SR28 use. The
 * table is common knowledge, and a food that it lacks is found by its own name only.
 */
public final class OtherNames {
    private static final List<OtherNames> ALL = read("other_names.csv");
    private static final List<OtherNames> NEAREST = read("nearest_names.csv");

    private final List<String> other;
    private final List<String> ours;

    private OtherNames(String line) {
        String[] cells = line.split(",", 2);
        this.other = Words.of(cells[0]);
        this.ours = Words.of(cells[1]);
    }

    /**
     * The same words with other names replaced by ours, in every way there is; empty when they hold no other name.
     *
     * @param words in small letters, as {@link Words#of} gives them
     */
    public static List<List<String>> replacedIn(List<String> words) {
        return replacedIn(words, ALL);
    }

    /** The same words with foods that no table has replaced by the nearest ones; empty when they name no such food. */
    public static List<List<String>> nearestTo(List<String> words) {
        return replacedIn(words, NEAREST);
    }

    private static List<List<String>> replacedIn(List<String> words, List<OtherNames> table) {
        Set<List<String>> queries = new LinkedHashSet<>(List.of(words));
        for (OtherNames name : table) {
            for (List<String> query : List.copyOf(queries)) {
                if (name.isIn(query)) {
                    queries.add(name.replace(query));
                }
            }
        }
        queries.remove(words);
        return List.copyOf(queries);
    }

    /** The table: other names, each with those of ours that stand in its place. */
    public static Map<String, List<String>> all() {
        return ALL.stream()
                .collect(Collectors.groupingBy(
                        name -> String.join(" ", name.other),
                        Collectors.mapping(name -> String.join(" ", name.ours), Collectors.toList())));
    }

    /** Every word of every food that is lacking. */
    public static Set<String> lackingWords() {
        return words(NEAREST);
    }

    /** Every word of every other name. */
    public static Set<String> words() {
        return words(ALL);
    }

    private static Set<String> words(List<OtherNames> table) {
        return table.stream().flatMap(name -> name.other.stream()).collect(Collectors.toSet());
    }

    private boolean isIn(List<String> words) {
        for (String mine : other) {
            if (!isAmong(words, mine)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAmong(List<String> words, String wanted) {
        for (String word : words) {
            if (Words.areOne(word, wanted)) {
                return true;
            }
        }
        return false;
    }

    /** Ours stand where the first of the others stood. */
    private List<String> replace(List<String> words) {
        var replaced = new ArrayList<String>();
        boolean done = false;
        for (String word : words) {
            if (!isAmong(other, word)) {
                replaced.add(word);
            } else if (!done) {
                replaced.addAll(ours);
                done = true;
            }
        }
        return replaced;
    }

    private static List<OtherNames> read(String table) {
        try (InputStream in = OtherNames.class.getResourceAsStream(table)) {
            if (in == null) {
                throw new IllegalStateException(table + " is not inside the program.");
            }
            return new String(in.readAllBytes(), UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(OtherNames::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
