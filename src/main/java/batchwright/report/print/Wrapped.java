package batchwright.report.print;

/** Text in lines of the terminal's width, for what stands on no page. */
public final class Wrapped {
    private Wrapped() {}

    /** Each line with its end. */
    public static String lines(String text) {
        return new Page().paragraph(text).toString();
    }
}
