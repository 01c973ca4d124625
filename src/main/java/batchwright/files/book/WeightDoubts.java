package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.Event.Weighed;
import batchwright.person.Eater;
import batchwright.quantity.Mass;
import batchwright.text.Problem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Weighings that can hardly be right: the other unit, a point in the wrong place, kilograms in a day. Our choice of bounds. */
final class WeightDoubts {
    /** Water and food move a weight by 1-2 kg from one day to another. */
    private static final double AT_ONCE_KG = 3;

    private static final double A_DAY_KG = 0.3;
    /** A profile may be some months old. */
    private static final double FROM_PROFILE = 0.15;

    private static final double ALIKE = 0.06;
    private static final double LB_PER_KG = 1 / Mass.KG_PER_LB;

    private final Map<String, Eater> profiles;
    private final Map<String, Book.Of<Weighed>> last = new HashMap<>();
    private final List<Problem> doubts = new ArrayList<>();

    private WeightDoubts(Map<String, Eater> profiles) {
        this.profiles = profiles;
    }

    /** @param profiles by the eater's id */
    static List<Problem> of(Book book, Map<String, Eater> profiles) {
        var doubts = new WeightDoubts(profiles);
        book.all(Weighed.class).forEach(doubts::look);
        return doubts.doubts;
    }

    private void look(Book.Of<Weighed> now) {
        String eater = now.event().eater();
        double kg = now.event().kg().doubleValue();
        Optional<Book.Of<Weighed>> before = Optional.ofNullable(last.put(eater, now));
        Optional<Double> said = Optional.ofNullable(profiles.get(eater))
                .map(profile -> profile.body().weight().kg());
        Optional<String> wrong = before.isPresent()
                ? since(before.get(), now)
                : said.filter(profile -> Math.abs(kg - profile) > profile * FROM_PROFILE)
                        .map(profile -> "%s kg, and the profile says %s kg"
                                .formatted(now.event().kg(), one(profile)));
        double reference = before.map(b -> b.event().kg().doubleValue()).orElse(said.orElse(Double.NaN));
        wrong.ifPresentOrElse(
                w -> doubt(now, w, slip(kg / reference)),
                () -> before.filter(b -> b.day().equals(now.day()))
                        .ifPresent(b -> doubt(
                                now,
                                "%s was weighed before on this day".formatted(eater),
                                "the last weighing of a day counts")));
    }

    private static Optional<String> since(Book.Of<Weighed> before, Book.Of<Weighed> now) {
        LocalDate day = before.day();
        long days = ChronoUnit.DAYS.between(day, now.day());
        double moved = now.event().kg().subtract(before.event().kg()).doubleValue();
        return Math.abs(moved) <= AT_ONCE_KG + A_DAY_KG * days
                ? Optional.empty()
                : Optional.of("%s kg, and it was %s kg on %s"
                        .formatted(now.event().kg(), before.event().kg(), day));
    }

    private static String one(double kg) {
        return String.format(Locale.ROOT, "%.1f", kg);
    }

    private static String slip(double ratio) {
        if (isNear(ratio, LB_PER_KG)) {
            return "is it in pounds? then write lb";
        } else if (isNear(ratio, 1 / LB_PER_KG)) {
            return "is it in kilograms? then write kg";
        } else if (isNear(ratio, 0.1) || isNear(ratio, 10)) {
            return "is the point in the right place?";
        }
        return "is it somebody else's?";
    }

    private static boolean isNear(double ratio, double slip) {
        return Math.abs(ratio / slip - 1) < ALIKE;
    }

    private void doubt(Book.Of<Weighed> entry, String wrong, String expected) {
        doubts.add(Problem.warning(entry.entry().at(), wrong, expected));
    }
}
