package batchwright.needs;

/** Where a number comes from, short enough to print beside it. */
public record Citation(String text) {
    @Override
    public String toString() {
        return text;
    }
}
