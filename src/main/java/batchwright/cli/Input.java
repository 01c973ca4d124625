package batchwright.cli;

import java.util.Optional;

/** Somebody at the keyboard. */
interface Input {
    /** The next line that was typed; empty when there will be no more. */
    Optional<String> line();
}
