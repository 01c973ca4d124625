package batchwright.food.origin;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Origins as the files write them, blanks between: {@code milk lactose by_product?}; {@code none}; an empty text is not known. */
public final class OriginList {
    /** Plants, salt, water. */
    public static final String NONE = "none";

    private static final String DOUBT = "?";

    private OriginList() {}

    /** Every word that may stand there, without its question mark. */
    public static List<String> words() {
        return Stream.concat(Stream.of(NONE), Stream.of(Origin.values()).map(Origin::id))
                .toList();
    }

    /** Empty when a word is no origin, or {@code none} stands beside others. */
    public static Optional<Origins> of(String text) {
        List<String> written = Stream.of(text.split("\\s+", -1))
                .filter(word -> !word.isEmpty())
                .toList();
        if (written.isEmpty()) {
            return Optional.of(Origins.UNKNOWN);
        }
        if (written.equals(List.of(NONE))) {
            return Optional.of(Origins.NONE);
        }
        var certain = EnumSet.noneOf(Origin.class);
        var doubtful = EnumSet.noneOf(Origin.class);
        for (String word : written) {
            Optional<Origin> origin = Origin.byId(plain(word));
            if (origin.isEmpty()) {
                return Optional.empty();
            }
            (word.endsWith(DOUBT) ? doubtful : certain).add(origin.get());
        }
        doubtful.removeAll(certain);
        return Optional.of(Origins.of(certain, doubtful));
    }

    /** A word without its question mark. */
    public static String plain(String word) {
        return word.endsWith(DOUBT) ? word.substring(0, word.length() - 1) : word;
    }

    public static String written(Origins origins) {
        if (!origins.known()) {
            return "";
        }
        String all = Stream.concat(
                        origins.certain().stream().map(Origin::id),
                        origins.doubtful().stream().map(origin -> origin.id() + DOUBT))
                .collect(Collectors.joining(" "));
        return all.isEmpty() ? NONE : all;
    }
}
