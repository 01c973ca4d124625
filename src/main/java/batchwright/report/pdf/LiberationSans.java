package batchwright.report.pdf;

import batchwright.report.labels.LabelLook;
import batchwright.report.labels.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Liberation Sans (SIL Open Font License 1.1), which comes with PDFBox: Latin with all accents, Greek, Cyrillic and Hebrew letters. Those that
 * a PDF uses travel in it. A letter that it lacks stands without its accents, or else as a question mark.
 */
final class LiberationSans implements Typeface {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String LACKING = "?";

    private final PDFont font;
    private final CmapLookup glyphs;
    private final double baseline;
    private final Set<String> lacking = new TreeSet<>();

    LiberationSans(PDDocument pdf) {
        try (InputStream in = Objects.requireNonNull(PDDocument.class.getResourceAsStream(FILE), FILE)) {
            TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            double em = file.getUnitsPerEm();
            double up = file.getHorizontalHeader().getAscender() / em;
            double down = -file.getHorizontalHeader().getDescender() / em;
            baseline = up + (LabelLook.LINE - up - down) / 2;
            glyphs = file.getUnicodeCmapLookup();
            font = PDType0Font.load(pdf, file, true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    PDFont font() {
        return font;
    }

    /** From the top of a line to the foot of its letters (em). */
    double baseline() {
        return baseline;
    }

    /** Letters of names that were asked for and are not there. */
    Set<String> lacking() {
        return Set.copyOf(lacking);
    }

    @Override
    public double ems(String text, boolean bold) {
        try {
            return font.getStringWidth(inFont(text)) / 1000;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public boolean shows(String name) {
        return inFont(name).codePoints().anyMatch(Character::isLetterOrDigit);
    }

    /** A line as its letters follow each other on paper from left to right. */
    String shown(String line) {
        return inReadingOrder(inFont(line));
    }

    private String inFont(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .mapToObj(this::inFont)
                .collect(Collectors.joining());
    }

    private String inFont(int letter) {
        if (Character.isISOControl(letter)) {
            return " ";
        }
        String asIs = Character.toString(letter);
        if (glyphs.getGlyphId(letter) != 0) {
            return asIs;
        }
        int type = Character.getType(letter);
        if (type == Character.FORMAT || type == Character.NON_SPACING_MARK) {
            return "";
        }
        int bare = Normalizer.normalize(asIs, Normalizer.Form.NFKD).codePointAt(0);
        if (bare != letter && glyphs.getGlyphId(bare) != 0) {
            return Character.toString(bare);
        }
        lacking.add(asIs);
        return LACKING;
    }

    /** Letters from right to left are turned around; those here are not joined, so that is all (Unicode Standard Annex 9). */
    private static String inReadingOrder(String line) {
        if (!Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        var bidi = new Bidi(line, Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        String[] runs = new String[bidi.getRunCount()];
        for (int i = 0; i < runs.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] =
                    levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        return String.join("", runs);
    }
}
