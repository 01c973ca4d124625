package batchwright.report.html.web;

import batchwright.answer.AtHome;
import batchwright.answer.Today;
import batchwright.answer.Today.DayByBook;
import batchwright.answer.Today.Due;
import batchwright.answer.Today.ForEater;
import batchwright.book.BoxesLeft;
import batchwright.book.Event.Place;
import batchwright.book.EventWords;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.MeasureName;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A day before the fridge: what to eat first, with one tap for it; what else is due; what was written down lately, which can be undone.
 *
 * @param day in words
 * @param eaters with what is theirs
 * @param typed what was typed and could not be written yet
 */
public record FridgePage(
        Frame frame,
        String day,
        List<AtTable> eaters,
        List<ToDo> due,
        List<String> notes,
        List<Written> written,
        Typed typed) {
    /**
     * Somebody with what is planned and what is there.
     *
     * @param name as the profile says it
     * @param planned what of the day is still to be eaten; empty when nothing is
     * @param soFar energy of what was eaten; may be empty
     * @param closed whether this was all for the day
     */
    public record AtTable(
            String id,
            String name,
            List<String> planned,
            String soFar,
            boolean closed,
            List<Box> boxes,
            List<String> tomorrow) {
        /** Whether the plan can be written down in one tap. */
        public boolean mayEatAsPlanned() {
            return !planned.isEmpty() && soFar.isEmpty() && !closed;
        }
    }

    /**
     * Containers that are alike.
     *
     * @param where the place and the last day
     * @param past whether it is past its last day
     */
    public record Box(String dish, String name, int count, String where, boolean past, String holds) {}

    /**
     * Something to do today.
     *
     * @param words for the book once it is done; empty when nothing is written for it
     */
    public record ToDo(String what, String says, String words) {}

    /** A line of the book. */
    public record Written(int line, String says) {}

    /**
     * @param unsure whether it was doubted, so that the user may say that it is right
     */
    public record Typed(String eater, String field, String words, boolean unsure) {
        public static final Typed NOTHING = new Typed("", "", "", false);

        /** Whether something that was tapped can be said again, for sure. */
        public boolean isTappedUnsure() {
            return unsure
                    && List.of("planned", "all", "eaten", "thrown", "done").contains(field);
        }

        /** What a field of an eater held. */
        public String in(String ofEater, String ofField) {
            return eater.equals(ofEater) && field.equals(ofField) ? words : "";
        }

        public boolean isUnsure(String ofEater, String ofField) {
            return unsure && eater.equals(ofEater) && field.equals(ofField);
        }
    }

    /**
     * @param name of an eater by its short name
     */
    public static FridgePage of(
            Frame frame, Today today, AtHome home, Kitchen kitchen, Function<String, String> name, Typed typed) {
        return new Making(today, kitchen, name, frame.units()).page(frame, home, typed);
    }

    private record Making(Today today, Kitchen kitchen, Function<String, String> name, PageUnits units) {
        FridgePage page(Frame frame, AtHome home, Typed typed) {
            return new FridgePage(
                    frame,
                    head(),
                    today.eaters().stream().map(this::atTable).toList(),
                    due(),
                    notes(),
                    home.lastLines().stream()
                            .sorted(Comparator.comparing(entry -> -entry.line()))
                            .limit(5)
                            .map(entry -> new Written(
                                    entry.line(), Dates.shortly(entry.day()) + ": " + EventWords.of(entry.event())))
                            .toList(),
                    typed);
        }

        /** What does not fit together, and boxes that are planned and not there. */
        private List<String> notes() {
            List<String> notes = new ArrayList<>();
            for (ForEater eater : today.eaters()) {
                Stream.of(eater.today(), eater.tomorrow())
                        .flatMap(Optional::stream)
                        .flatMap(day -> day.lacking().stream())
                        .forEach(each -> notes.add("Planned, but not there for %s: %s × %s, %s."
                                .formatted(
                                        name.apply(eater.eater()), each.count(), dish(each.dish()), date(each.day()))));
            }
            notes.addAll(today.notes());
            return notes;
        }

        private String head() {
            String day = Dates.inFull(today.day());
            return today.plan()
                    .map(plan -> "%s, day %s of %s of the plan of %s"
                            .formatted(day, plan.number(), plan.days(), Dates.shortly(plan.cookingDay())))
                    .orElse(day + "; no plan was kept for this day");
        }

        private AtTable atTable(ForEater eater) {
            return new AtTable(
                    eater.eater(),
                    name.apply(eater.eater()),
                    eater.today().map(this::planned).orElse(List.of()),
                    eater.eaten().anything() ? units.energy(eater.eaten().kcal()) : "",
                    eater.eaten().closed(),
                    today.boxes().stream()
                            .filter(lot -> lot.boxes().eater().equals(eater.eater()))
                            .map(this::box)
                            .toList(),
                    eater.tomorrow().map(this::planned).orElse(List.of()));
        }

        private List<String> planned(DayByBook day) {
            List<String> things = new ArrayList<>();
            day.boxes().forEach(box -> things.add(box(box, day.planned().eater())));
            day.snacks().forEach(snack -> things.add(snack(snack)));
            return things;
        }

        private String box(PlannedBox box, String eater) {
            String whose = box.of(eater).equals(eater) ? "" : " of " + box.of(eater);
            return box.count() + " × " + dish(box.dish()) + whose + (box.frozen() ? " (from the freezer)" : "");
        }

        private String snack(PlannedSnack snack) {
            return "%s %s (%s g)"
                    .formatted(
                            MeasureName.counted(snack.count(), snack.measure()),
                            food(snack.food()),
                            Show.plainText(snack.grams(), 1));
        }

        private Box box(BoxesLeft.Lot lot) {
            boolean past = lot.until().isBefore(today.day());
            return new Box(
                    lot.boxes().dish(),
                    dish(lot.boxes().dish()),
                    lot.count(),
                    (lot.place() == Place.FRIDGE ? "fridge" : "freezer")
                            + (past ? ", past its last day, " : ", until ")
                            + date(lot.until()),
                    past,
                    lot.each().kcal().map(kcal -> units.energy(kcal) + " each").orElse(""));
        }

        private String date(LocalDate date) {
            return date.equals(today.day()) ? "today" : Dates.shortly(date);
        }

        private List<ToDo> due() {
            List<ToDo> all = new ArrayList<>();
            today.due().forEach(due -> all.add(toDo(due)));
            today.useUp()
                    .forEach(spoils -> all.add(new ToDo(
                            spoils.useBy().isBefore(today.day()) ? "Past its date, not to be trusted" : "Use up",
                            "%s g %s, %s"
                                    .formatted(
                                            Show.whole(spoils.food().grams()),
                                            food(spoils.food().food()),
                                            date(spoils.useBy())),
                            "")));
            return all;
        }

        private ToDo toDo(Due due) {
            String several = due.count() + " × " + dish(due.what());
            return switch (due.kind()) {
                case COOK -> new ToDo("Cook", dish(due.what()), "cooked " + due.what() + " as planned");
                case FREEZE -> new ToDo("Freeze", several, "filled " + due.what() + " as planned");
                case THAW -> new ToDo("Into the fridge tonight", several, words("thawed", due));
                case PAST -> new ToDo("Throw away, past its last day", several, words("threw away", due));
            };
        }

        /** Of containers, as a line of the book. */
        private static String words(String done, Due due) {
            return due.eater()
                    .map(eater -> done + " " + due.count() + " " + due.what() + " of " + eater)
                    .orElse("");
        }

        private String dish(String id) {
            return kitchen.dish(id).map(d -> d.name()).orElse(id);
        }

        private String food(String id) {
            return Optional.ofNullable(kitchen.foods().get(id)).map(Food::name).orElse(id);
        }
    }
}
