package batchwright.report.labels;

/** What layout has to know about the letters that a label is set in. */
public interface Typeface {
    /** Width of a text, as a multiple of the height of the type (em). */
    double ems(String text, boolean bold);

    /** Whether at least one letter or figure of a name can be shown. */
    boolean shows(String name);

    /**
     * The letters of whatever browser prints a page, estimated: half as wide as high on average, bold a little more. A sans
     * serif such as Arial has about 0.48 and 0.52 in English text.
     */
    Typeface ESTIMATED = new Typeface() {
        @Override
        public double ems(String text, boolean bold) {
            return text.codePointCount(0, text.length()) * (bold ? 0.55 : 0.5);
        }

        @Override
        public boolean shows(String name) {
            return true;
        }
    };
}
