package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.answer.PlanAnswer;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a browser makes of the report: on a phone, for a reader who cannot see, on paper. */
class ReportInBrowserTest {
    private static final int PHONE = 320;

    private static PlanAnswer answer;
    private static PlanAnswer odd;

    private static @Nullable Browser browser;

    @BeforeAll
    static void start(@TempDir Path files, @TempDir Path oddFiles, @TempDir Path pages) throws Exception {
        browser = Browser.start(pages);
        answer = Reports.twoEaters(files);
        odd = Reports.oddNames(oddFiles);
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Browser open(PlanAnswer of, int width, boolean dark) throws IOException {
        Browser open = Objects.requireNonNull(browser).open(HtmlReport.of(of, Reports.STYLE), width, dark);
        open.run("document.querySelectorAll('details').forEach(d => d.open = true); return 1");
        return open;
    }

    /** WCAG 2.2 AA, as far as axe-core can tell. */
    @ParameterizedTest
    @CsvSource({"1280, false", "1280, true", "390, false"})
    void axe_finds_nothing(int width, boolean dark) throws IOException {
        assertThat(violations(open(answer, width, dark))).isEmpty();
    }

    private List<?> violations(Browser open) throws IOException {
        try (InputStream axe = Objects.requireNonNull(getClass().getResourceAsStream("/axe.min.js"))) {
            open.run(new String(axe.readAllBytes(), StandardCharsets.UTF_8) + "; return 1");
        }
        Object found = open.runLater("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})"
                + ".then(r => done({passed: r.passes.length, violations: r.violations.map(v => v.id + ': '"
                + " + v.nodes.map(n => n.html).slice(0, 3).join(' '))}));");

        Map<?, ?> map = (Map<?, ?>) found;
        assertThat((Long) map.get("passed")).isGreaterThan(20);
        return (List<?>) Objects.requireNonNull(map.get("violations"));
    }

    @Test
    void several_sessions_are_as_good(@TempDir Path files) throws IOException {
        Browser open = Objects.requireNonNull(browser)
                .open(HtmlReport.of(Reports.sessions(files, true), Reports.STYLE), PHONE, false);

        assertThat(violations(open)).isEmpty();
        assertThat((Long) open.run("return document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(PHONE);
    }

    @Test
    void nothing_is_wider_than_a_small_phone() throws IOException {
        for (PlanAnswer plan : List.of(answer, odd)) {
            Object width = open(plan, PHONE, false).run("return document.documentElement.scrollWidth");

            assertThat((Long) width).isLessThanOrEqualTo(PHONE);
        }
    }

    @Test
    void names_run_no_script() throws IOException {
        Browser open = open(odd, PHONE, false);

        assertThat(open.run("return document.scripts.length")).isEqualTo(1L);
        assertThat(open.run("return [...document.querySelectorAll('bdi')].filter(b => b.children.length).length"))
                .isEqualTo(0L);
    }

    @Test
    void the_browser_has_nothing_to_complain_of() throws IOException {
        Objects.requireNonNull(browser).complaints();
        for (PlanAnswer plan : List.of(answer, odd)) {
            Browser open = open(plan, 1280, false);

            assertThat(open.complaints()).isEmpty();
            assertThat(open.run("return document.styleSheets[0].cssRules.length > 50"))
                    .isEqualTo(true);
        }
    }

    @Test
    void ticks_count_down_and_last() throws IOException {
        Browser open = open(answer, 390, false);
        open.run("localStorage.clear(); return 1");
        open = open(answer, 390, false);
        long all = (Long) open.run("return document.querySelectorAll('.tobuy input').length");
        String left = "return document.querySelector('.left').textContent";
        assertThat(open.run(left)).isEqualTo(all + " of " + all + " left to get");

        open.run("document.querySelector('.tobuy input').click(); return 1");
        assertThat(open.run(left)).isEqualTo((all - 1) + " of " + all + " left to get");

        open = open(answer, 390, false);
        assertThat(open.run("return document.querySelector('.tobuy input').checked"))
                .isEqualTo(true);
        assertThat(open.run(left)).isEqualTo((all - 1) + " of " + all + " left to get");
        assertThat(open(odd, 390, false).run("return document.querySelectorAll('.ticks input:checked').length"))
                .isEqualTo(0L);
    }

    @Test
    void the_way_stays_in_sight() throws IOException {
        Browser open = open(answer, 390, false);
        open.run("document.getElementById('cook').scrollIntoView(); return 1");

        assertThat(open.run("return Math.round(document.querySelector('.pages > nav').getBoundingClientRect().top)"))
                .isEqualTo(0L);
        assertThat(open.run("const nav = document.querySelector('.pages > nav').getBoundingClientRect();"
                        + "return document.querySelector('#cook h2').getBoundingClientRect().top >= nav.bottom"))
                .isEqualTo(true);
    }

    /** As if a name had got past the escapes: no script, no style and no picture of its own. */
    @Test
    void markup_from_elsewhere_does_nothing() throws IOException {
        String report = HtmlReport.of(answer, Reports.STYLE);
        String hostile = report.replace(
                "<main>",
                "<main><p id='put' style='position:fixed' onclick=\"document.title='ran'\">x</p>"
                        + "<script>document.title='ran'</script><img src='x' onerror=\"document.title='ran'\">"
                        + "<style>#put { position: fixed }</style><base href='https://example.org/'>");
        assertThat(hostile).isNotEqualTo(report);
        Browser open = Objects.requireNonNull(browser).open(hostile, 1280, false);

        open.run("document.getElementById('put').click(); return 1");

        assertThat(open.run("return document.title")).asString().endsWith("Batchwright");
        assertThat(open.run("return getComputedStyle(document.getElementById('put')).position"))
                .isEqualTo("static");
        assertThat(open.run("return document.baseURI")).asString().startsWith("file:");
        assertThat(open.complaints())
                .hasSizeGreaterThanOrEqualTo(4)
                .allMatch(complaint -> complaint.contains("Content Security Policy"));
    }

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void no_label_spills(LabelSheet sheet) throws IOException {
        for (PlanAnswer plan : List.of(answer, odd)) {
            for (LabelRounding rounding : LabelRounding.values()) {
                Browser open = Objects.requireNonNull(browser)
                        .open(HtmlReport.of(plan, new ReportStyle(new LabelStyle(sheet, rounding))), 1000, false);
                open.media("print", false);
                Object spilling = open.run("return [...document.querySelectorAll('.label')].filter(l =>"
                        + " l.scrollHeight > l.clientHeight + 1 || l.scrollWidth > l.clientWidth + 1)"
                        + ".map(l => l.scrollHeight + '>' + l.clientHeight + ' ' + l.textContent)");

                assertThat((List<?>) spilling).isEmpty();
            }
        }
    }

    /** The boxes around labels, measured in the PDF, against the grid of the sheet. */
    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void labels_lie_on_paper_where_the_sheet_has_them(LabelSheet sheet) throws IOException {
        Browser open = Objects.requireNonNull(browser)
                .open(HtmlReport.of(answer, new ReportStyle(new LabelStyle(sheet, LabelRounding.US))), 1000, false);
        LabelsOnPaper.lieWhereTheSheetHasThem(open.pdf(), answer, sheet, 1);
    }

    /** A sheet that lies about in a kitchen says what it belongs to; labels have no room for that. */
    @Test
    void each_sheet_but_those_of_labels_tells_plan_and_day_and_page(@TempDir Path files) throws IOException {
        for (PlanAnswer plan : List.of(answer, odd, Reports.sessions(files, false))) {
            Browser open = Objects.requireNonNull(browser).open(HtmlReport.of(plan, Reports.STYLE), 1000, false);
            try (PDDocument pdf = Loader.loadPDF(open.pdf())) {
                int pages = pdf.getNumberOfPages();
                assertThat(pages).isGreaterThan(4);
                for (int p = 1; p <= pages; p++) {
                    String text = text(pdf, p);
                    if (text.contains("Allergens: ") && text.matches(".*\\d of \\d, cooked [A-Z].*")) {
                        assertThat(text).doesNotContain("page " + p);
                    } else {
                        assertThat(text).contains(" for ", "ooking day ", "page " + p + " of " + pages);
                    }
                }
            }
        }
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf).replaceAll("\\s+", " ");
    }

    /** Beside each picture is a sentence; its figures stand in the table below it. */
    @ParameterizedTest
    @ValueSource(strings = {"macros", "nutrients", "cost", "weight"})
    void every_figure_of_a_picture_stands_in_its_table(String look) throws IOException {
        Object pictures = open(answer, 1280, false).run("""
                return [...document.querySelectorAll('figure.%s')].map(f => ({
                  says: f.querySelector('svg').getAttribute('aria-label'), caption: f.querySelector('figcaption p').textContent,
                  values: [...f.querySelectorAll('svg text.value')].map(t => t.textContent),
                  cells: [...f.querySelectorAll('td')].map(t => t.textContent)}))""".formatted(look));

        assertThat((List<?>) pictures).hasSizeGreaterThan(0).allSatisfy(picture -> {
            Map<?, ?> map = (Map<?, ?>) picture;
            assertThat(map.get("says")).isEqualTo(map.get("caption"));
            List<String> cells = strings(map.get("cells"));
            assertThat(strings(map.get("values")))
                    .isNotEmpty()
                    .allMatch(value -> value.replace(" %", "")
                            .lines()
                            .flatMap(v -> java.util.Arrays.stream(v.split("–", -1)))
                            .allMatch(v -> cells.contains(v) || cells.contains(v + " %")));
        });
    }

    /** Lengths on the screen, turned back into kcal by the width of the band, against the table of the day. */
    @Test
    void bars_of_a_day_are_as_long_as_the_table_says() throws IOException {
        Object days = open(answer, 1280, false).run("""
                return [...document.querySelectorAll('figure.energy')].map(f => {
                  const band = f.querySelector('svg .band').width.baseVal.value;
                  const [least, most] = f.querySelector('svg').getAttribute('aria-label').match(/\\d+/g).map(Number);
                  const kcal = (most - least) / band;
                  const table = f.closest('section').querySelector('.days table');
                  const rows = [...table.querySelectorAll('tr.row')].map(r => Number(r.querySelector('td').textContent));
                  const parts = [...f.querySelectorAll('svg .part')];
                  const first = parts.filter(p => p.y.baseVal.value === parts[0].y.baseVal.value);
                  return {bar: first.reduce((s, p) => s + p.width.baseVal.value * kcal, 0), rows,
                    total: Number(table.querySelector('tr.total td').textContent),
                    values: [...f.querySelectorAll('svg text.value')].map(t => Number(t.textContent))}})""");

        assertThat((List<?>) days).hasSize(2).allSatisfy(day -> {
            Map<?, ?> map = (Map<?, ?>) day;
            double total = ((Number) Objects.requireNonNull(map.get("total"))).doubleValue();
            assertThat(((Number) Objects.requireNonNull(map.get("bar"))).doubleValue())
                    .isCloseTo(total, within(total * 0.02));
            assertThat(strings(map.get("values"))).contains(Long.toString((long) total));
        });
    }

    /** Bars on the screen, turned back into minutes by the first and last time of the axis, against the rows of the table. */
    @Test
    void bars_of_the_time_line_start_and_end_as_the_table_says() throws IOException {
        Map<?, ?> read = (Map<?, ?>) open(answer, PHONE, false).run("""
                const svg = document.querySelector('figure.timeline svg');
                const minutes = t => { const [h, m] = t.split(':').map(Number); return 60 * h + m; };
                const times = [...svg.querySelectorAll('text')].filter(t => /^\\d+:\\d\\d$/.test(t.textContent));
                const first = times[0], last = svg.querySelector('text.value');
                const at = t => t.y.baseVal[0].value;
                const unit = minutes(last.textContent) / (at(last) - at(first));
                const from = r => Math.round((r.y.baseVal.value - at(first) + 4) * unit);
                const span = r => from(r) + '-' + (from(r) + Math.round(r.height.baseVal.value * unit));
                const rows = [...document.querySelectorAll('.work table tr.row')].map(r => [...r.children].map(c => c.textContent))
                  .filter(c => c[1] !== '').map(c => ({tag: c[1], at: minutes(c[0]), done: minutes(c[4]), on: c[5],
                    hands: c[3] === '–' ? minutes(c[0]) : minutes(c[3])}));
                const places = row => row.on ? row.on.split('+').length : row.done > row.hands ? 1 : 0;
                return {
                  hands: [...svg.querySelectorAll('rect.hands')].map(span).sort(),
                  handsRows: rows.filter(r => r.hands > r.at).map(r => r.at + '-' + r.hands).sort(),
                  bars: [...svg.querySelectorAll('rect.part:not(.hands)')].map(r => r.nextElementSibling.textContent + ' ' + span(r)).sort(),
                  barRows: rows.flatMap(r => Array(places(r)).fill(r.tag + ' ' + r.at + '-' + r.done)).sort(),
                  named: [...svg.querySelectorAll('text.tag')].map(t => t.textContent),
                  rows: rows.map(r => r.tag)}""");

        assertThat(strings(read.get("handsRows"))).hasSizeGreaterThan(8);
        assertThat(strings(read.get("hands"))).isEqualTo(strings(read.get("handsRows")));
        assertThat(strings(read.get("barRows"))).hasSizeGreaterThan(6);
        assertThat(strings(read.get("bars"))).isEqualTo(strings(read.get("barRows")));
        assertThat(strings(read.get("named"))).isEqualTo(strings(read.get("rows")));
    }

    /** Bars of cost are as long as their money. */
    @Test
    void bars_of_cost_are_in_proportion() throws IOException {
        Object ratios = open(answer, 1280, false).run("""
                const f = document.querySelector('figure.cost');
                const money = [...f.querySelectorAll('tr.row')].map(r => Number(r.querySelector('td').textContent));
                return [...f.querySelectorAll('svg .part')].map((p, i) => p.width.baseVal.value / money[i]);""");
        List<Double> all =
                ((List<?>) ratios).stream().map(r -> ((Number) r).doubleValue()).toList();

        assertThat(all).hasSizeGreaterThan(3).allMatch(r -> Math.abs(r / all.get(0) - 1) < 0.02);
    }

    private static List<String> strings(@Nullable Object list) {
        return ((List<?>) Objects.requireNonNull(list))
                .stream().map(String::valueOf).toList();
    }
}
