package batchwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** How a command ended; scripts rely on these numbers. */
enum ExitCode {
    DONE(0, "done; plan, containers: proven cheapest"),
    OUR_FAULT(1, "a fault of this program"),
    NOT_RIGHT(2, "the command line or a file is not right, or memory is too little"),
    NO_PLAN(3, "no plan meets the rules, no container is as asked, or a caution stops planning"),
    NOT_PROVEN(4, "time ended: plan not proven cheapest, or none found"),
    INTERRUPTED(130, "interrupted with Ctrl-C");

    private final int code;
    private final String meaning;

    ExitCode(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    int code() {
        return code;
    }

    static Map<String, String> meanings() {
        var meanings = new LinkedHashMap<String, String>();
        for (ExitCode exit : values()) {
            meanings.put(Integer.toString(exit.code), exit.meaning);
        }
        return meanings;
    }
}
