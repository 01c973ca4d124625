package batchwright.report.html;

/** A picture with its heading and its meaning in one sentence above it. */
public final class Figure {
    private Figure() {}

    /** To be closed by the caller. */
    static void open(Html html, String look, String heading, String says) {
        html.open("figure", "class", look).open("figcaption");
        html.element("h4", heading).element("p", says).close().line();
    }

    /** The figures of the picture as a table, folded away where there is no room for both. */
    static void table(Html html, Table table) {
        html.open("details").element("summary", "The same as a table");
        table.write(html);
        html.close().line();
    }
}
