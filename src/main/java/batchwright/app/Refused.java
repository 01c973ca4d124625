package batchwright.app;

import batchwright.answer.Fault;
import batchwright.text.Problem;
import java.util.List;
import java.util.stream.Stream;

/** Thrown when what was asked, or a file, has to be put right first. */
public final class Refused extends RuntimeException {
    private final transient List<Fault> faults;

    private Refused(List<Fault> faults) {
        super(faults.get(0).wrong());
        this.faults = List.copyOf(faults);
    }

    /** @param faults at least one */
    public static Refused by(Stream<Fault> faults) {
        return new Refused(faults.toList());
    }

    public static Refused because(String wrong, String cure) {
        return new Refused(List.of(Fault.of(wrong, cure)));
    }

    /** @param problems at least one error */
    public static Refused by(List<Problem> problems) {
        return new Refused(problems.stream().map(Fault::of).toList());
    }

    public List<Fault> faults() {
        return faults;
    }
}
