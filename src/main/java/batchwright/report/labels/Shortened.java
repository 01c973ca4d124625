package batchwright.report.labels;

/** A name cut to what there is room for. */
public final class Shortened {
    private Shortened() {}

    /** @param most characters (code points, so that no emoji is cut in two), the closing mark included */
    public static String to(int most, String name) {
        if (name.codePointCount(0, name.length()) <= most) {
            return name;
        }
        return name.substring(0, name.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
    }
}
