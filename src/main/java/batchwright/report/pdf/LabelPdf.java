package batchwright.report.pdf;

import batchwright.answer.PotLabels;
import batchwright.report.export.WholePlan;
import batchwright.report.labels.FilledSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.labels.LabelledSession;
import batchwright.report.labels.SetLabel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * The labels of a plan as a PDF (ISO 32000-1), sheet after sheet, those of all cooking sessions.
 *
 * @param lacking letters of names that could not be shown
 */
public record LabelPdf(byte[] content, int sheets, Set<String> lacking) {
    private static final String MAKER = "Batchwright";
    /** Any number will do: it is always the same, so that the same labels give the same bytes. */
    private static final long ID = 1;

    /** Whether a file with this beginning is such a PDF. */
    public static boolean isIn(String beginning) {
        return beginning.startsWith("%PDF-") && beginning.contains("/" + MAKER);
    }

    public static LabelPdf of(WholePlan plan, LabelStyle style) {
        return of(
                plan.forWhom(),
                plan.whole().kitchen().cookingDay(),
                style,
                face -> plan.plan().sessions().stream()
                        .flatMap(session -> SetLabel.of(session, style, face).stream())
                        .toList());
    }

    /** Of a session that was kept. */
    public static LabelPdf of(LabelledSession session, LabelStyle style) {
        return of(session.title(), session.cookingDay(), style, face -> SetLabel.of(session, style, face));
    }

    /** Of a pot as it came out. */
    public static LabelPdf of(PotLabels pot, LabelStyle style) {
        return of(pot.batch().dish().name(), pot.cookingDay(), style, face -> SetLabel.of(pot, style, face));
    }

    private static LabelPdf of(
            String whose, LocalDate cooked, LabelStyle style, Function<LiberationSans, List<SetLabel>> set) {
        try (var pdf = new PDDocument()) {
            describe(pdf, whose, cooked);
            var face = new LiberationSans(pdf);
            List<SetLabel> labels = set.apply(face);
            List<FilledSheet> sheets = FilledSheet.of(labels, style);
            var page = new SheetPage(pdf, style.sheet(), face);
            for (FilledSheet sheet : sheets) {
                page.add(sheet);
            }
            var bytes = new ByteArrayOutputStream();
            pdf.save(bytes, CompressParameters.NO_COMPRESSION);
            return new LabelPdf(bytes.toByteArray(), sheets.size(), face.lacking());
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
    }

    private static void describe(PDDocument pdf, String whose, LocalDate cooked) {
        pdf.setDocumentId(ID);
        pdf.getDocumentInformation().setTitle("Labels, " + whose);
        pdf.getDocumentInformation().setProducer(MAKER);
        PDDocumentCatalog catalog = pdf.getDocumentCatalog();
        catalog.setLanguage("en");
        var seen = new PDViewerPreferences(new COSDictionary());
        seen.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        catalog.setViewerPreferences(seen);
        mark(catalog.getCOSObject(), cooked);
    }

    /** Marks the file as ours. It stands in the catalog, which is written first (ISO 32000-1, 14.5: page-piece dictionary). */
    private static void mark(COSDictionary catalog, LocalDate cooked) {
        var data = new COSDictionary();
        data.setString(COSName.LAST_MODIFIED, "D:" + cooked.toString().replace("-", ""));
        data.setName(COSName.getPDFName("Private"), "Labels");
        var pieces = new COSDictionary();
        pieces.setItem(COSName.getPDFName(MAKER), data);
        data.setDirect(true);
        pieces.setDirect(true);
        catalog.setItem(COSName.getPDFName("PieceInfo"), pieces);
    }
}
