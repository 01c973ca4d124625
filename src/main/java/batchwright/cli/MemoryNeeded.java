package batchwright.cli;

import batchwright.answer.Fault;
import java.util.Optional;

/** What is said when Java was given too little memory: that is no fault of the program, and the user can cure it. */
final class MemoryNeeded {
    private static final long MEGABYTE = 1024 * 1024;
    private static final long LEAST_MB = 1024;
    private static final int TIMES = 4;

    private MemoryNeeded() {}

    /** Empty when something else went wrong. */
    static Optional<Fault> by(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof OutOfMemoryError) {
                return Optional.of(heap(Runtime.getRuntime().maxMemory() / MEGABYTE));
            }
            if (cause instanceof StackOverflowError) {
                return Optional.of(fault("as deep as this goes, it needs a larger stack", "-Xss16m"));
            }
        }
        return Optional.empty();
    }

    private static Fault heap(long megabytes) {
        long more = Math.max(LEAST_MB, megabytes * TIMES);
        return fault("this needs more memory than the " + megabytes + " MB that Java was given", "-Xmx" + more + "m");
    }

    private static Fault fault(String wrong, String option) {
        return Fault.of(
                wrong,
                "Give it more, java " + option + " -jar target/batchwright.jar COMMAND, or ask for less: fewer days,"
                        + " eaters or dishes, smaller files.");
    }
}
