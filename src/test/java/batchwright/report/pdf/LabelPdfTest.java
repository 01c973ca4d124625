package batchwright.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.answer.PlanAnswer;
import batchwright.app.WriteStarterFiles;
import batchwright.plan.Batch;
import batchwright.report.export.WholePlan;
import batchwright.report.html.PaintedBoxes;
import batchwright.report.html.Reports;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The sheets as a printer gets them, measured. */
class LabelPdfTest {
    private static final double MM = 0.5;
    private static final double MM_PER_POINT = 25.4 / 72;

    /** A box from the fridge and one from the freezer, for an eater with a long name. */
    private static WholePlan plan;

    @BeforeAll
    static void makePlan(@TempDir Path folder) throws IOException {
        plan = planFor(folder, "Konstantina Papadopoulou-Öztürk, holding", "");
    }

    private static WholePlan planFor(Path folder, String eater, String dish) throws IOException {
        new WriteStarterFiles().into(folder);
        Reports.replace(
                folder.resolve("profiles/parent-holding.yaml"), "(?m)^name: .*$", "name: " + Reports.yaml(eater));
        if (!dish.isEmpty()) {
            Reports.replace(
                    folder.resolve("foods/dishes/ginger_pork_rice.yaml"),
                    "(?m)^name: .*$",
                    "name: " + Reports.yaml(dish));
        }
        PlanAnswer answer = Reports.plan(folder, List.of("parent-holding"), List.of("ginger_pork_rice"), 4);
        return WholePlan.of(answer).orElseThrow();
    }

    private static int containers() {
        return plan.plan().first().batches().stream()
                .mapToInt(Batch::containers)
                .sum();
    }

    private static LabelPdf of(LabelSheet sheet, int startAt) {
        return LabelPdf.of(plan, new LabelStyle(sheet, LabelRounding.US, startAt));
    }

    private static String text(LabelPdf pdf) throws IOException {
        var text = new StringBuilder();
        for (PrintedText.Run run : PrintedText.of(pdf.content())) {
            text.append(run.text()).append('\n');
        }
        return text.toString();
    }

    /** Each box lies where the sheet has a label, from the first free one on; and nothing is printed outside of the boxes. */
    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void labels_lie_on_paper_where_the_sheet_has_them(LabelSheet sheet) throws IOException {
        int startAt = sheet.labels() - 2;
        LabelPdf made = of(sheet, startAt);
        try (PDDocument pdf = Loader.loadPDF(made.content())) {
            int pages = (startAt - 1 + containers() + sheet.labels() - 1) / sheet.labels();
            assertThat(pdf.getNumberOfPages()).isEqualTo(pages).isEqualTo(made.sheets());
            int place = startAt - 1;
            for (int p = 0; p < pages; p++) {
                assertThat(pdf.getPage(p).getMediaBox().getWidth() * MM_PER_POINT)
                        .isCloseTo(sheet.paper().widthMm().doubleValue(), within(0.01));
                assertThat(pdf.getPage(p).getMediaBox().getHeight() * MM_PER_POINT)
                        .isCloseTo(sheet.paper().heightMm().doubleValue(), within(0.01));
                for (Rectangle2D box : PaintedBoxes.of(pdf.getPage(p))) {
                    assertThat(box.getX()).isCloseTo(left(sheet, place % sheet.labels()), within(MM));
                    assertThat(box.getY()).isCloseTo(top(sheet, place % sheet.labels()), within(MM));
                    assertThat(box.getWidth()).isCloseTo(sheet.labelWidthMm().doubleValue(), within(MM));
                    assertThat(box.getHeight()).isCloseTo(sheet.labelHeightMm().doubleValue(), within(MM));
                    place++;
                }
            }
            assertThat(place).isEqualTo(startAt - 1 + containers());
        }
        for (PrintedText.Run run : PrintedText.of(made.content())) {
            assertThat(inside(run.ink(), sheet)).as(run.text()).hasSize(1);
        }
    }

    private static double left(LabelSheet sheet, int place) {
        return sheet.leftMm(place % sheet.columns()).doubleValue();
    }

    private static double top(LabelSheet sheet, int place) {
        return sheet.topMm(place / sheet.columns()).doubleValue();
    }

    /** The labels that a line of type lies in, at least 1 mm from their edges and 4 mm from those of the paper (common practice). */
    private static List<Rectangle2D> inside(Rectangle2D ink, LabelSheet sheet) {
        var printable = new Rectangle2D.Double(
                4,
                4,
                sheet.paper().widthMm().doubleValue() - 8,
                sheet.paper().heightMm().doubleValue() - 8);
        return IntStream.range(0, sheet.labels())
                .mapToObj(place -> (Rectangle2D) new Rectangle2D.Double(
                        left(sheet, place) + 1,
                        top(sheet, place) + 1,
                        sheet.labelWidthMm().doubleValue() - 2,
                        sheet.labelHeightMm().doubleValue() - 2))
                .filter(label -> printable.contains(ink) && label.contains(ink))
                .toList();
    }

    /**
     * Small print has an x-height of 1.2 mm, as Regulation (EU) 1169/2011 article 13(2) asks. Who and when are read from a metre: capitals
     * of 16 minutes of arc, 4.65 mm, on sheets that have the room; from 0.7 m, 3.26 mm, on the smallest (ISO 9241-3, read in a secondary
     * source).
     */
    @ParameterizedTest
    @CsvSource({"A4_2X7, 4.65", "A4_2X4, 4.65", "LETTER_2X5, 4.65", "A4_3X8, 3.26", "LETTER_3X10, 3.26"})
    void letters_are_large_enough(LabelSheet sheet, double capitals) throws IOException {
        List<PrintedText.Run> runs = PrintedText.of(of(sheet, 1).content());

        assertThat(runs).hasSizeGreaterThan(containers() * 5).allMatch(run -> run.xHeightMm() >= 1.2);
        assertThat(runs.stream().filter(run -> run.text().contains("by ")))
                .hasSizeGreaterThanOrEqualTo(containers())
                .allMatch(run -> run.capitalsMm() >= capitals);
        assertThat(runs.stream().filter(run -> run.text().startsWith("Konstantina")))
                .hasSize(containers())
                .allMatch(run -> run.capitalsMm() >= capitals);
        assertThat(runs.stream().mapToDouble(PrintedText.Run::xHeightMm).distinct())
                .hasSizeGreaterThanOrEqualTo(3);
    }

    /** A box of 735 g with 380 g of loose rice takes more than 750 ml: two evenings before Saturday. */
    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void a_label_says_what_is_in_the_box_until_when_and_how_it_is_kept(LabelSheet sheet) throws IOException {
        String text = text(of(sheet, 1)).replace('\u00a0', ' ').replaceAll("\\s+", " ");

        assertThat(text)
                .contains("Konstantina", "Sat 28 Nov", "Allergens: ", "4 °C", " g", " kcal", " protein")
                .contains("−18 °C")
                .containsPattern("74 .?C \\(165 .?F\\)")
                .containsPattern("([Tt]haw( from)?|to the fridge in the evening of) Thu( 26( Nov)?)?")
                .containsPattern("1 of \\d, cooked Wed 25 Nov");
    }

    @Test
    void the_same_labels_are_the_same_bytes() {
        assertThat(of(LabelSheet.A4_2X7, 1).content())
                .isEqualTo(of(LabelSheet.A4_2X7, 1).content());
    }

    @Test
    void the_file_is_known_as_ours_and_others_are_not() {
        String made = new String(of(LabelSheet.A4_3X8, 1).content(), StandardCharsets.UTF_8);

        assertThat(LabelPdf.isIn(made.substring(0, 2000))).isTrue();
        assertThat(LabelPdf.isIn("%PDF-1.4\n1 0 obj\n<<\n/Type /Catalog")).isFalse();
        assertThat(LabelPdf.isIn("Batchwright")).isFalse();
    }

    /** Turkish, Greek, Polish, Cyrillic and Hebrew are in the font; Chinese, Arabic and emoji are not. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ağaç Işık Çoşğun | Ağaç Işık Çoşğun | false",
                "Ελένη Παπαδοπούλου | Ελένη Παπαδοπούλου | false",
                "Łucja Żółć | Łucja Żółć | false",
                "Ольга Щукина | Ольга Щукина | false",
                "王小明 | Eater 1 | true",
                "ليلى | Eater 1 | true",
                "Ana 王 \uD83C\uDF72 | Ana ? ? | true",
            })
    void names_in_other_letters(String name, String shown, boolean lacking, @TempDir Path folder) throws IOException {
        WholePlan other = planFor(folder, name, "");
        LabelPdf made = LabelPdf.of(other, new LabelStyle(LabelSheet.A4_2X7, LabelRounding.EU));

        assertThat(text(made)).contains(shown + "\n");
        assertThat(made.lacking().isEmpty()).isNotEqualTo(lacking);
    }

    /** On paper the letters of Hebrew words follow from right to left; read back they are in logical order again. */
    @Test
    void a_name_from_right_to_left_and_a_dish_that_cannot_be_shown(@TempDir Path folder) throws IOException {
        WholePlan other = planFor(folder, "שלום", "姜汁豬肉飯");
        LabelPdf made = LabelPdf.of(other, new LabelStyle(LabelSheet.LETTER_2X5, LabelRounding.US));

        assertThat(text(made)).contains("םולש\n", "ginger_pork_rice\n");
    }
}
