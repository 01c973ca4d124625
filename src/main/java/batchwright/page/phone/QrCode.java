package batchwright.page.phone;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004), for a page and for a terminal. */
final class QrCode {
    /** Light modules around it, as the standard asks for. */
    private static final int QUIET_ZONE = 4;

    private final BitMatrix dark;

    /** @throws IllegalArgumentException when the text is too long for one */
    QrCode(String text) {
        try {
            dark = new QRCodeWriter()
                    .encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, QUIET_ZONE));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("text must fit into a code.", tooLong);
        }
    }

    /** Modules on a side, the quiet zone included. */
    int size() {
        return dark.getWidth();
    }

    /** A path of an SVG picture, a unit for each module. */
    String path() {
        var path = new StringBuilder();
        for (int y = 0; y < dark.getHeight(); y++) {
            for (int x = 0; x < dark.getWidth(); x++) {
                if (dark.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }

    /** Two modules above each other in a character; light on the dark ground of a terminal. */
    String blocks() {
        var text = new StringBuilder();
        for (int y = 0; y < dark.getHeight(); y += 2) {
            for (int x = 0; x < dark.getWidth(); x++) {
                boolean upper = !dark.get(x, y);
                boolean lower = y + 1 < dark.getHeight() && !dark.get(x, y + 1);
                text.append(upper ? (lower ? '\u2588' : '\u2580') : (lower ? '\u2584' : ' '));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
