package batchwright.files.profile;

import batchwright.files.page.Yaml;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.person.Compendium2011;
import batchwright.person.Diary;
import batchwright.person.ListedActivity;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The hours of a day or a week, a line for each activity: {@code desk_work: 7 h 30 min}. They have to fill it: nothing is guessed. */
final class DiaryReader {
    private final Map<String, ListedActivity> known = Compendium2011.activities();
    private final Problems problems;
    private final Once once;

    DiaryReader(Problems problems) {
        this.problems = problems;
        this.once = new Once(problems);
    }

    Optional<Diary> read(Yaml.Group group) {
        int before = problems.errors();
        List<Diary.Entry> entries = new ArrayList<>();
        group.entries().forEach(line -> entry(line).ifPresent(entries::add));
        if (problems.errors() > before) {
            return Optional.empty();
        }
        Span place = group.entries().isEmpty()
                ? group.at()
                : group.entries().get(0).key().at();
        return isFull(entries, place)
                ? Optional.of(new Diary(entries)).filter(d -> isLivable(d, place))
                : Optional.empty();
    }

    private Optional<Diary.Entry> entry(Yaml.Entry line) {
        Written id = line.key();
        ListedActivity activity = known.get(id.text());
        if (activity == null) {
            problems.unknown(
                    id,
                    "there is no activity called " + id.quoted(),
                    "expected one of the list of activities",
                    known.keySet());
            return Optional.empty();
        }
        if (!once.isNew("the activity " + id.text(), id)) {
            return Optional.empty();
        }
        if (!(line.value() instanceof Yaml.Text text)) {
            problems.error(line.value().at(), id.text() + " is a list or a group", "expected " + HoursGrammar.EXAMPLE);
            return Optional.empty();
        }
        return HoursGrammar.read(text.written(), problems).map(minutes -> new Diary.Entry(activity, minutes));
    }

    private boolean isFull(List<Diary.Entry> entries, Span place) {
        int minutes = entries.stream().mapToInt(Diary.Entry::minutes).sum();
        if (minutes == Diary.MINUTES_A_DAY || minutes == Diary.MINUTES_A_WEEK) {
            return true;
        }
        problems.error(
                place,
                "the diary holds " + HoursGrammar.written(minutes) + ": " + difference(minutes),
                "expected every hour of a day (24 h) or of a week (168 h), sleeping and sitting too");
        return false;
    }

    /** Whoever writes more than two days means a week. */
    private static String difference(int minutes) {
        boolean week = minutes > 2 * Diary.MINUTES_A_DAY;
        int off = minutes - (week ? Diary.MINUTES_A_WEEK : Diary.MINUTES_A_DAY);
        String span = week ? "a week" : "a day";
        String time = HoursGrammar.written(Math.abs(off));
        return off < 0 ? time + " of " + span + " are missing" : time + " too many for " + span;
    }

    private boolean isLivable(Diary diary, Span place) {
        var pal = BigDecimal.valueOf(diary.pal());
        if (ActivityGrammar.PAL.holds(pal)) {
            return true;
        }
        problems.error(
                place,
                "the diary comes to a PAL of " + pal.toPlainString() + ", which is not from 1.0 to 2.5",
                "expected hours as you live them: count only the time you really move, and the time you are up");
        return false;
    }
}
