package batchwright.report.html.part;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/**
 * From a view to HTML, by a template below {@code src/main/jte}. The build has turned templates into classes; nothing is compiled here.
 * Whatever a view holds comes out as text, in an attribute as its value: names come from files, and nothing in them is markup.
 */
public final class Templates {
    private static final String PACKAGE = "batchwright.report.html.template";
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, Templates.class.getClassLoader(), PACKAGE);

    private Templates() {}

    /** @param template by its file's name, without the ending; its only parameter without a default is the view */
    public static String render(String template, Object view) {
        var out = new StringOutput();
        ENGINE.render(template + ".jte", view, out);
        return allowed(out.toString().strip() + "\n");
    }

    /** What HTML forbids even as a reference becomes a question mark. */
    private static String allowed(String html) {
        var out = new StringBuilder(html.length());
        html.codePoints().forEach(c -> out.appendCodePoint(isAllowed(c) ? c : '?'));
        return out.toString();
    }

    /** No control but the end of a line, no lone surrogate, and no point that is no character. */
    private static boolean isAllowed(int c) {
        return (c == '\n' || !Character.isISOControl(c))
                && Character.getType(c) != Character.SURROGATE
                && (c & 0xFFFE) != 0xFFFE
                && !(c >= 0xFDD0 && c <= 0xFDEF);
    }
}
