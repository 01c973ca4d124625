package batchwright.files.book;

/** A line that is not understood; what is wrong with it is among the problems. The rest of it is not looked at. */
final class WrongLine extends Exception {
    private static final long serialVersionUID = 1L;

    WrongLine() {
        super("see the problems", null, false, false);
    }
}
