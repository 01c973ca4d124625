package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.explain.cost.Insight;
import batchwright.food.Equipment;
import batchwright.food.Nutrient;
import batchwright.plan.Batch;
import batchwright.plan.Clash;
import batchwright.plan.Clashes;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.Remedy;
import batchwright.quantity.Currency;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The report as a file. What a browser makes of it is in {@link ReportInBrowserTest}. */
class HtmlReportTest {
    private static PlanAnswer answer;
    private static PlanAnswer odd;

    @BeforeAll
    static void plans(@TempDir Path files, @TempDir Path oddFiles) throws Exception {
        answer = Reports.twoEaters(files);
        odd = Reports.oddNames(oddFiles);
    }

    private static String report(PlanAnswer of) {
        return HtmlReport.of(of, Reports.STYLE);
    }

    @Test
    void it_needs_nothing_from_elsewhere_and_runs_its_own_script_only() {
        String html = report(answer).replace("http://www.w3.org/2000/svg", "");

        assertThat(html)
                .doesNotContainPattern(
                        "(?i)https?:|//[a-z]|<script[^>]|<link|<img|<iframe|@import|url\\(|\\son[a-z]+=");
        assertThat(Pattern.compile("href=\"([^\"]*)\"").matcher(html).results().map(m -> m.group(1)))
                .isNotEmpty()
                .allMatch(href -> html.contains("id=\"" + href.substring(1) + "\""));
    }

    @Test
    void dishes_and_their_containers_are_named_on_the_first_screen() {
        String head = report(answer).replaceFirst("(?s)</header>.*", "");

        answer.plan()
                .orElseThrow()
                .batches()
                .forEach(batch -> assertThat(head)
                        .contains("<bdi>" + batch.containers() + " × "
                                + batch.dish().name()));
    }

    @Test
    void the_same_answer_gives_the_same_bytes() {
        assertThat(report(answer)).isEqualTo(report(answer));
    }

    /** The Nu checker, the one behind the W3C's. */
    @Test
    void it_is_valid_html(@TempDir Path none) throws Exception {
        for (String html : List.of(report(answer), report(odd), report(Reports.noPlan(none)))) {
            assertThat(complaints(html)).isEmpty();
        }
        assertThat(complaints("<!DOCTYPE html><title>t</title><p id=a>one<p id=a>two"))
                .contains("Duplicate ID");
    }

    private static String complaints(String html) throws Exception {
        var checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        return checker.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)))
                .strip();
    }

    @Test
    void names_come_out_as_text() {
        String html = report(odd);

        assertThat(html).doesNotContain("<b>\"R\"", "<script>alert", "alert(1)</script>");
        assertThat(html)
                .contains("<bdi>Eater &lt;b&gt;\"R\" &amp; 'friends'&lt;/b&gt; &lt;script&gt;alert(1)")
                .contains("<bdi>Dish &lt;b&gt;")
                .contains("Food &lt;b&gt;")
                .contains("שלום עולם \uD83C\uDF72");
    }

    @Test
    void the_answer_stands_first() {
        Plan plan = answer.plan().orElseThrow();
        String top = report(answer).replaceAll("(?s).*<body>|</header>.*", "").replaceAll("<[^>]*>", " ");

        assertThat(top.replaceAll("\\s+", " "))
                .contains("2 days for Desk worker, cutting and Parent, holding")
                .contains(Show.money(plan.cost(), Currency.USD), "under the budget of 90.00", "Proven cheapest")
                .contains("kcal a day (target", "g protein (at least")
                .contains(
                        "About "
                                + ScheduleWords.duration(Schedule.of(plan.batches(), Equipment.USUAL)
                                        .minutes()),
                        "of it hands on");
    }

    /** Read back from the tables: every column of things adds up to its total, and the total is the audited one, rounded. */
    @Test
    void printed_totals_are_sums_of_what_is_printed() {
        String html = report(answer);
        Matcher days = Pattern.compile("(?s)<table><caption>(Days? .*?)</caption>.*?</table>")
                .matcher(html);
        int tables = 0;
        while (days.find()) {
            int[] sum = new int[6];
            Matcher row =
                    Pattern.compile("(?s)<tr class=\"(row|total)\">(.*?)</tr>").matcher(days.group());
            while (row.find()) {
                List<Integer> cells = Pattern.compile("<td class=\"n\">(?:≥\u00a0)?(\\d+)</td>")
                        .matcher(row.group(2))
                        .results()
                        .map(m -> Integer.valueOf(m.group(1)))
                        .toList();
                assertThat(cells).hasSize(sum.length);
                for (int i = 0; i < sum.length; i++) {
                    if (row.group(1).equals("total")) {
                        assertThat(cells.get(i)).isEqualTo(sum[i]);
                    } else {
                        sum[i] += cells.get(i);
                    }
                }
            }
            tables++;
        }
        // Of each eater one or two: days that are alike share a table, and equally cheap plans may have unlike days.
        assertThat(tables).isBetween(2, 4);
        Plan plan = answer.plan().orElseThrow();
        for (EaterDays eater : plan.eaters()) {
            String kcal = Show.whole(plan.first()
                    .totals(eater.seat().eater(), eater.days().get(0))
                    .get(Nutrient.ENERGY));
            assertThat(html).contains("<th scope=\"row\"><bdi>total</bdi></th><td class=\"n\">" + kcal + "</td>");
        }
    }

    @ParameterizedTest
    @EnumSource(LabelRounding.class)
    void there_is_a_label_for_each_container_and_it_says_all(LabelRounding rounding) {
        String html = HtmlReport.of(answer, new ReportStyle(new LabelStyle(LabelSheet.A4_3X8, rounding)));
        List<String> labels = Pattern.compile("(?s)<div class=\"label .*?</div>")
                .matcher(html)
                .results()
                .map(m -> m.group().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " "))
                .toList();

        assertThat(labels).hasSize(10).doesNotHaveDuplicates();
        assertThat(labels)
                .allMatch(l -> l.matches(".*\\d of \\d, cooked Wed 25 Nov\\..*"))
                .allMatch(l -> l.matches(".*\\b(eat )?by [A-Z][a-z]{2} \\d+ Nov.*"))
                .allMatch(l -> l.contains("Allergens: ") && l.matches(".*\\d.g\\b.*") && l.matches(".*4.°C.*"))
                .allMatch(l -> l.matches(".*[Rr]eheat.*74 .?C.*|.*74.°C.*"))
                .allMatch(l -> l.contains("kcal") && l.contains("protein"));
        assertThat(html).contains(rounding.rules().says());
    }

    /** The strings of a style sheet come from names. */
    @Test
    void a_name_cannot_end_the_head_of_a_sheet() {
        assertThat(SheetHead.quoted("A \"b\" </style>\\ é"))
                .isEqualTo("\"A \\22 b\\22  \\3c \\2f style\\3e \\5c  \\e9 \"");
    }

    /** An eating disorder: no plan, and no figure of body or needs, only the way to help. */
    @Test
    void figures_that_must_be_hidden_are_hidden(@TempDir Path files) throws Exception {
        new WriteStarterFiles().into(files);
        Reports.replace(files.resolve("profiles/parent-holding.yaml"), "  eating: no", "  eating_disorder: yes");
        PlanAnswer hidden = Reports.plan(files, List.of("parent-holding"), List.of("lentil_ragu"), 2);
        String body = report(hidden).replaceAll("(?s).*<body>", "").replaceAll("<[^>]*>", " ");

        assertThat(hidden.needs().get(0).hidesFigures()).isTrue();
        assertThat(body).contains("A caution stops it.");
        assertThat(body).doesNotContainPattern("kcal|\\bkg\\b|protein|\\d{3,}");
    }

    /** One file: every link leads to a page of its session, days are counted through, and each container has its label. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void several_sessions_have_their_pages_in_one_file(boolean shopOnce, @TempDir Path files) throws Exception {
        PlanAnswer sessions = Reports.sessions(files, shopOnce);
        String html = HtmlReport.of(sessions, Reports.STYLE);
        int containers = sessions.plan().orElseThrow().batches().stream()
                .mapToInt(Batch::containers)
                .sum();

        assertThat(complaints(html)).isEmpty();
        assertThat(Pattern.compile("href=\"#([^\"]*)\"").matcher(html).results().map(m -> m.group(1)))
                .contains("plan-1", "shop-1", "cook-1", "labels-1", "plan-2", "shop-2", "cook-2", "labels-2")
                .allMatch(id -> html.contains("id=\"" + id + "\""));
        assertThat(html)
                .contains(
                        "2 sessions",
                        Show.money(sessions.plan().orElseThrow().cost(), Currency.USD),
                        "<caption>Day 1</caption>")
                .contains("<caption>Day 2</caption>", "Thu · by Sun 29 Nov", "cooked Thu 26 Nov.");
        assertThat(Pattern.compile("<div class=\"label ").matcher(html).results())
                .hasSize(containers);
        assertThat(html.contains("Shopping list, before day 1")).isEqualTo(shopOnce);
        assertThat(html.contains("Shopping list, session 2")).isNotEqualTo(shopOnce);
    }

    /** One list for all: read back from it, what is bought costs what the sessions cost. */
    @Test
    void one_list_for_all_sessions_holds_all_that_is_bought(@TempDir Path files) {
        PlanAnswer sessions = Reports.sessions(files, true);
        int sum = Pattern.compile("<span class=\"money\">(\\d+)\\.(\\d\\d)</span>")
                .matcher(HtmlReport.of(sessions, Reports.STYLE))
                .results()
                .mapToInt(m -> Integer.parseInt(m.group(1) + m.group(2)))
                .sum();

        assertThat(sum).isEqualTo((int) sessions.plan().orElseThrow().cost().minor());
    }

    /** The evening before and what falls away have numbers too, so those of the cooking page are not 1, 2, 3. */
    @Test
    void steps_have_the_numbers_that_the_order_of_work_names(@TempDir Path files) {
        new WriteStarterFiles().into(files);
        PlanAnswer tagine =
                Reports.plan(files, List.of("lifter-gaining"), List.of("chickpea_tagine", "turkey_chili"), 2);
        Schedule schedule = Schedule.of(tagine.plan().orElseThrow().batches(), Equipment.USUAL);
        List<Integer> numbers = Pattern.compile("<li value=\"(\\d+)\">")
                .matcher(report(tagine))
                .results()
                .map(m -> Integer.valueOf(m.group(1)))
                .toList();

        assertThat(numbers).startsWith(2).hasSizeGreaterThan(6);
        assertThat(numbers)
                .containsExactlyInAnyOrderElementsOf(schedule.steps().stream()
                        .flatMap(s -> s.number().stream().boxed())
                        .toList());
    }

    @Test
    void without_a_plan_it_says_why(@TempDir Path files) {
        String html = report(Reports.noPlan(files));

        assertThat(html).contains("No plan keeps every rule within 1.00 USD", "raise the budget to");
    }

    /** Rules that are known to clash stand apart from those that perhaps do, and a rule without a cure says so, as on a terminal. */
    @Test
    void without_a_plan_it_says_what_is_known_of_each_rule(@TempDir Path files) {
        PlanAnswer none = Reports.noPlan(files);
        String html = report(new PlanAnswer(
                none.asked(),
                none.status(),
                none.proof(),
                none.found(),
                Clashes.of(List.of(
                        new Clash(
                                "budget",
                                "at most 1.00 USD",
                                "raise the budget to 9.00 USD",
                                Optional.of(new Remedy.PlanDays(2)),
                                true),
                        new Clash("fibre", "at least 25 g", "", Optional.empty(), true),
                        new Clash("fat", "at least 40 g", "", Optional.empty(), false))),
                none.stuck(),
                Insight.NONE));

        assertThat(html)
                .contains("changing one of them as shown makes a plan possible:")
                .contains("<strong>Budget</strong>: at most 1.00 USD. Cure: raise the budget to 9.00 USD.")
                .contains("<code>--days 2</code>")
                .contains("at least 25 g. Changing this rule alone is not enough.")
                .contains("Perhaps also, not known: at least 40 g.")
                .doesNotContain("Fat</strong>", "Time ended");
    }
}
