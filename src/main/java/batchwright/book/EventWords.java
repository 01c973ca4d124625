package batchwright.book;

import batchwright.book.Event.Boxes;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** An event as a line of the book. Reading the line gives the event again. */
public final class EventWords {
    private EventWords() {}

    public static String line(LocalDate day, Event event) {
        return day + " " + of(event);
    }

    /** A line that undoes another. */
    public static String undo(LocalDate day, Entry entry) {
        return day + " undo " + line(entry.day(), entry.event());
    }

    /** Without its day. */
    public static String of(Event event) {
        if (event instanceof Event.Weighed weighed) {
            return "weighed %s %s kg".formatted(weighed.eater(), plain(weighed.kg()));
        } else if (event instanceof Event.Marked marked) {
            return marked(marked);
        } else if (event instanceof Event.Adopted adopted) {
            return "adopted %s %s kcal".formatted(adopted.eater(), plain(adopted.kcal()));
        }
        return ofEating(event).orElseGet(() -> ofKitchen(event));
    }

    private static Optional<String> ofEating(Event event) {
        if (event instanceof Event.AteBoxes ate) {
            String owner = ate.boxes().eater().equals(ate.eater())
                    ? ""
                    : " of " + ate.boxes().eater();
            return Optional.of("ate %s %s %s%s%s"
                    .formatted(ate.eater(), ate.boxes().count(), ate.boxes().dish(), owner, kcal(ate.kcal())));
        } else if (event instanceof Event.AteFood ate) {
            return Optional.of("ate %s %s%s".formatted(ate.eater(), weight(ate.food()), kcal(ate.kcal())));
        } else if (event instanceof Event.AteOut ate) {
            return Optional.of("ate %s out %s kcal".formatted(ate.eater(), plain(ate.kcal())));
        } else if (event instanceof Event.NothingElse all) {
            return Optional.of("ate %s nothing else".formatted(all.eater()));
        } else if (event instanceof Event.NotLogged not) {
            return Optional.of("ate %s not logged".formatted(not.eater()));
        }
        return Optional.empty();
    }

    private static String ofKitchen(Event event) {
        if (event instanceof Event.Bought bought) {
            String packs = bought.count() == 1 ? "" : bought.count() + " x ";
            String price = bought.price().map(p -> " for " + plain(p)).orElse("");
            return "bought %s%s g %s%s%s"
                    .formatted(packs, plain(bought.grams()), bought.food(), price, until(bought.useBy()));
        } else if (event instanceof Event.Cooked cooked) {
            String from = cooked.foods().stream().map(EventWords::weight).collect(Collectors.joining(", "));
            return "cooked " + cooked.dish() + (from.isEmpty() ? "" : " from " + from);
        } else if (event instanceof Event.Filled filled) {
            return filled(filled);
        } else if (event instanceof Event.BoxesGone gone) {
            Boxes boxes = gone.boxes();
            return "%s away %s %s of %s"
                    .formatted(gone.thrown() ? "threw" : "gave", boxes.count(), boxes.dish(), boxes.eater());
        } else if (event instanceof Event.Moved moved) {
            Boxes boxes = moved.boxes();
            return "%s %s %s of %s%s"
                    .formatted(
                            moved.to() == Place.FREEZER ? "froze" : "thawed",
                            boxes.count(),
                            boxes.dish(),
                            boxes.eater(),
                            until(moved.until()));
        } else if (event instanceof Event.FoodGone gone) {
            return "%s away %s".formatted(gone.thrown() ? "threw" : "gave", weight(gone.food()));
        } else if (event instanceof Event.Counted counted) {
            return "counted " + weight(counted.food()) + until(counted.useBy());
        }
        throw new IllegalArgumentException("event (" + event + ") must be one that the book knows.");
    }

    private static String marked(Event.Marked marked) {
        return marked.mark() == Event.Mark.CREATINE_STOPPED
                ? "creatine " + marked.eater() + " stopped"
                : marked.mark().name().toLowerCase(Locale.ROOT) + " " + marked.eater();
    }

    private static String filled(Event.Filled filled) {
        Boxes boxes = filled.boxes();
        String protein = filled.each()
                .proteinG()
                .map(g -> ", " + plain(g) + " g protein")
                .orElse("");
        return "filled %s %s for %s in %s until %s%s"
                .formatted(
                        boxes.count(),
                        boxes.dish(),
                        boxes.eater(),
                        filled.place().word(),
                        filled.until(),
                        filled.each()
                                .kcal()
                                .map(k -> kcal(Optional.of(k)) + protein)
                                .orElse(""));
    }

    private static String weight(Weight weight) {
        return plain(weight.grams()) + " g " + weight.food();
    }

    private static String until(Optional<LocalDate> day) {
        return day.map(d -> " until " + d).orElse("");
    }

    private static String kcal(Optional<BigDecimal> kcal) {
        return kcal.map(k -> ", " + plain(k) + " kcal").orElse("");
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
