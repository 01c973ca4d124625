package batchwright.app;

import batchwright.write.CannotWrite;
import batchwright.write.Guard;
import batchwright.write.Output;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The files that a command writes beside its answer: tried out before the work, written after it. */
public final class OutputFiles {
    private final Guard guard;
    private final Map<String, Output> files = new LinkedHashMap<>();

    /**
     * @param kitchen the folder that holds the foods/ and profiles/ which are read
     * @param replacesAny whether the user said that other files may be replaced
     */
    public OutputFiles(Path kitchen, boolean replacesAny) {
        this.guard = new Guard(Optional.of(kitchen), replacesAny);
    }

    /**
     * Looks at a file that is to be written, and tries whether it can be.
     *
     * @param name as the user gave it
     * @param isOurs whether the program made a file that begins like this
     * @throws Refused when it cannot be written or must not be, or holds something else already in this command
     */
    public void add(String name, Path file, Predicate<String> isOurs) {
        var output = new Output(file, isOurs, guard);
        try {
            output.tryOut();
            for (Output other : files.values()) {
                if (output.isSameAs(other)) {
                    throw Refused.because("\"" + name + "\" is named for two things", "Name a file for each.");
                }
            }
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
        files.put(name, output);
    }

    /** Whether a file of this name is there, from before or since. */
    public boolean isThere(String name) {
        return file(name).isThere();
    }

    /** @throws Refused when it could not be written; then it is as it was */
    public void write(String name, String text) {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The same, of a file that is no text.
     *
     * @throws Refused when it could not be written; then it is as it was
     */
    public void write(String name, byte[] content) {
        try {
            file(name).write(content);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private Output file(String name) {
        return Optional.ofNullable(files.get(name))
                .orElseThrow(() -> new IllegalArgumentException("name (" + name + ") must have been added."));
    }
}
