package batchwright.page.guard;

/** Thrown when a request is turned away. */
public final class NotLetIn extends RuntimeException {
    private final int status;
    private final String cure;

    /**
     * @param status of HTTP
     * @param cure what a person who meant well can do
     */
    public NotLetIn(int status, String wrong, String cure) {
        super(wrong, null, false, false);
        this.status = status;
        this.cure = cure;
    }

    public int status() {
        return status;
    }

    public String cure() {
        return cure;
    }
}
