package batchwright.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.food.Equipment;
import batchwright.food.Nutrient;
import batchwright.plan.Serving;
import batchwright.report.html.Reports;
import batchwright.schedule.Schedule;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calendar, read back and validated by ical4j, which is not ours. */
class PlanCalendarTest {
    private static final LocalDate COOKED = Reports.TODAY;
    private static final Optional<LocalTime> UNKNOWN = Optional.empty();
    private static PlanAnswer answer;
    private static WholePlan plan;

    /** Six days of dishes that keep four: the last days come from the freezer. */
    @BeforeAll
    static void makePlan(@TempDir Path folder) {
        new WriteStarterFiles().into(folder);
        answer = Reports.plan(folder, List.of("parent-holding"), List.of("lentil_ragu", "chickpea_tagine"), 6);
        plan = WholePlan.of(answer).orElseThrow();
    }

    static Calendar read(String text) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        ValidationResult result = calendar.validate(true);
        assertThat(result.getEntries()).isEmpty();
        return calendar;
    }

    private static List<VEvent> events(String text) throws IOException, ParserException {
        return read(text).getComponents(VEvent.VEVENT);
    }

    private static List<VEvent> events(String text, String summaryFrom) throws IOException, ParserException {
        return events(text).stream()
                .filter(e -> summary(e).startsWith(summaryFrom))
                .toList();
    }

    static String summary(VEvent event) {
        return event.getSummary().getValue();
    }

    private static String description(VEvent event) {
        return event.getDescription().getValue();
    }

    private static Temporal start(VEvent event) {
        return event.getDateTimeStart().getDate();
    }

    private static Temporal end(VEvent event) {
        return event.getEndDate().orElseThrow().getDate();
    }

    private static LocalDate day(VEvent event) {
        return LocalDate.from(start(event));
    }

    @Test
    void it_is_a_calendar_and_the_same_plan_gives_the_same_bytes() throws Exception {
        String text = PlanCalendar.of(plan, UNKNOWN);

        assertThat(read(text).getComponents()).isNotEmpty();
        assertThat(PlanCalendar.of(plan, UNKNOWN)).isEqualTo(text);
        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(text).doesNotContain("DTSTAMP:20261126").contains("DTSTAMP:20261125T000000Z");
    }

    /** Otherwise {@link #read} would prove nothing. */
    @Test
    void the_validator_notices_what_is_missing() throws Exception {
        String text = PlanCalendar.of(plan, UNKNOWN).replaceFirst("UID:.*\r\n", "");

        assertThat(new CalendarBuilder()
                        .build(new StringReader(text))
                        .validate(true)
                        .getEntries())
                .isNotEmpty();
    }

    @Test
    void every_event_has_its_own_name_and_keeps_it() throws Exception {
        List<String> uids = uids(PlanCalendar.of(plan, UNKNOWN));

        assertThat(uids).doesNotHaveDuplicates();
        assertThat(uids(PlanCalendar.of(plan, Optional.of(LocalTime.NOON)))).isEqualTo(uids);
    }

    private static List<String> uids(String text) throws IOException, ParserException {
        return events(text).stream()
                .map(e -> e.getUid().orElseThrow().getValue())
                .toList();
    }

    @Test
    void cooking_takes_the_whole_day_until_its_start_is_known() throws Exception {
        VEvent open = events(PlanCalendar.of(plan, UNKNOWN), "Cook ").get(0);
        VEvent known = events(PlanCalendar.of(plan, Optional.of(LocalTime.of(23, 30))), "Cook ")
                .get(0);
        int minutes = Schedule.of(answer.plan().orElseThrow().batches(), Equipment.USUAL)
                .minutes();

        assertThat(day(open)).isEqualTo(COOKED);
        assertThat(start(open)).isEqualTo(COOKED);
        assertThat(end(open)).isEqualTo(COOKED.plusDays(1));
        LocalDateTime start = COOKED.atTime(23, 30);
        assertThat(start(known)).isEqualTo(start);
        assertThat(end(known)).isEqualTo(start.plusMinutes(minutes));
    }

    @Test
    void what_the_day_before_must_see_done_stands_there(@TempDir Path folder) throws Exception {
        new WriteStarterFiles().into(folder);
        WholePlan soaked = WholePlan.of(Reports.plan(folder, List.of("parent-holding"), List.of("chickpea_tagine"), 1))
                .orElseThrow();

        assertThat(events(PlanCalendar.of(soaked, UNKNOWN), "Get ready"))
                .singleElement()
                .satisfies(
                        e -> assertThat(start(e)).isEqualTo(COOKED.minusDays(1).atTime(20, 0)))
                .satisfies(e -> assertThat(description(e)).contains("soak"))
                .satisfies(e -> assertThat(e.getAlarms()).hasSize(1));
    }

    /** One of 750 ml or more, nearer to a litre than to half of it, two evenings before: common practice. */
    @Test
    void every_frozen_container_is_thawed_in_time() throws Exception {
        List<String> expected = new ArrayList<>();
        answer.plan()
                .orElseThrow()
                .first()
                .eaters()
                .forEach(eater -> eater.days()
                        .forEach(day -> day.servings().stream()
                                .filter(s -> s.from() == Serving.Storage.FREEZER)
                                .forEach(s -> {
                                    double ml = answer.plan()
                                            .orElseThrow()
                                            .first()
                                            .fill(s.dish(), eater.seat().eater())
                                            .perContainer()
                                            .get(Nutrient.VOLUME)
                                            .doubleValue();
                                    int evenings = ml >= 750 ? 2 : 1;
                                    expected.add(COOKED.plusDays(day.day() - 1L - evenings) + "T20:00 " + s.count()
                                            + " x " + s.dish().name());
                                })));
        List<String> found = events(PlanCalendar.of(plan, UNKNOWN), "Thaw ").stream()
                .flatMap(e -> description(e)
                        .lines()
                        .filter(line -> line.contains(" x "))
                        .map(line -> start(e) + " "
                                + line.replaceAll("[\\u2066-\\u2069]", "").replaceFirst(" for .*", "")))
                .toList();

        assertThat(expected).isNotEmpty();
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void the_last_day_in_the_fridge_is_that_of_the_dish() throws Exception {
        List<VEvent> eatBy = events(PlanCalendar.of(plan, UNKNOWN), "Eat by today: ");

        assertThat(eatBy).isNotEmpty();
        for (VEvent event : eatBy) {
            int keeps = answer.plan().orElseThrow().batches().stream()
                    .map(b -> b.dish())
                    .filter(d -> summary(event).contains(d.name()))
                    .findFirst()
                    .orElseThrow()
                    .fridgeDays();
            assertThat(day(event)).isEqualTo(COOKED.plusDays(keeps - 1L));
            assertThat(event.getAlarms()).hasSize(1);
        }
    }

    @Test
    void every_day_of_the_eater_stands_in_it() throws Exception {
        List<VEvent> eats = events(PlanCalendar.of(plan, UNKNOWN), "Parent, holding: ");

        assertThat(eats.stream().map(PlanCalendarTest::day))
                .containsExactlyElementsOf(COOKED.datesUntil(COOKED.plusDays(6)).toList());
        assertThat(eats).allMatch(e -> description(e).contains("milk"));
        assertThat(description(eats.get(0)).lines().filter(l -> l.contains("ragu") || l.contains("tagine")))
                .isNotEmpty();
    }

    @Test
    void what_spoils_at_home_is_called_to_mind(@TempDir Path folder) throws Exception {
        new WriteStarterFiles().into(folder);
        Files.writeString(
                folder.resolve("profiles/pantry.csv"), "food,grams,note,use_by\nbutternut_squash,150,,2026-11-26\n");
        WholePlan one = WholePlan.of(Reports.plan(folder, List.of("parent-holding"), List.of("lentil_ragu"), 2))
                .orElseThrow();

        assertThat(events(PlanCalendar.of(one, UNKNOWN), "Use up by today: "))
                .singleElement()
                .satisfies(e -> assertThat(summary(e)).endsWith("butternut squash"))
                .satisfies(e -> assertThat(description(e)).startsWith("150 g"))
                .satisfies(e -> assertThat(day(e)).isEqualTo(LocalDate.of(2026, 11, 26)));
    }
}
