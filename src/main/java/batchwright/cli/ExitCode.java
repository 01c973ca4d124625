package batchwright.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** How a command ended; scripts rely on these numbers. */
enum ExitCode {
    DONE(0, "done; plan, containers: proven cheapest"),
    OUR_FAULT(1, "a fault of this program"),
    NOT_RIGHT(2, "the command line or a file is wrong, or there is too little memory"),
    NO_PLAN(3, "no plan meets the rules, no container can be filled as asked, or a caution stops planning"),
    NOT_PROVEN(4, "time ran out: plan not proven cheapest, or none found"),
    NOT_WRITTEN(5, "the answer, or a file beside it, could not be written"),
    INTERRUPTED(130, "interrupted with Ctrl-C");

    private final int code;
    private final String meaning;

    ExitCode(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    static ExitCode of(int code) {
        return Arrays.stream(values())
                .filter(exit -> exit.code == code)
                .findFirst()
                .orElse(OUR_FAULT);
    }

    int code() {
        return code;
    }

    /** When something could not be written: what went wrong before is said, what went well is not enough. */
    ExitCode notWritten() {
        return this == OUR_FAULT || this == NOT_RIGHT || this == INTERRUPTED ? this : NOT_WRITTEN;
    }

    static Map<String, String> meanings() {
        var meanings = new LinkedHashMap<String, String>();
        for (ExitCode exit : values()) {
            meanings.put(Integer.toString(exit.code), exit.meaning);
        }
        return meanings;
    }
}
