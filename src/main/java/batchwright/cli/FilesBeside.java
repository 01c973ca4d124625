package batchwright.cli;

import batchwright.app.ModelFile;
import batchwright.app.OutputFiles;
import batchwright.app.Refused;
import batchwright.plan.PlanRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * The files that a command writes beside its answer, and what is said of them. They are tried out before the work; they are written
 * after the answer, so one that fails costs no more than itself.
 */
public final class FilesBeside {
    private final OutputFiles files;
    private final Function<String, Path> place;
    private final Consumer<String> say;
    private boolean failed;

    /**
     * @param place where a name stands for
     * @param say takes lines that do not mix with the answer
     */
    FilesBeside(OutputFiles files, Function<String, Path> place, Consumer<String> say) {
        this.files = files;
        this.place = place;
        this.say = say;
    }

    /**
     * Tries out a file before the work.
     *
     * @param isOurs whether a file with this beginning is one that the program made
     * @throws Refused when it cannot be written or must not be
     */
    void add(String name, Predicate<String> isOurs) {
        files.add(name, place.apply(name), isOurs);
    }

    /** The same, for both files of a model. */
    void add(ModelFile model) {
        model.addTo(files, place);
    }

    /** @param remark what to say behind its name; may be empty */
    void write(String name, String text, String remark) {
        write(name, text.getBytes(StandardCharsets.UTF_8), remark);
    }

    /** The same, of a file that is no text. */
    void write(String name, byte[] content, String remark) {
        tell(() -> {
            files.write(name, content);
            return "Wrote " + name + remark + "\n";
        });
    }

    void write(ModelFile model, PlanRequest request) {
        tell(() -> model.write(request, files));
    }

    /** Whether a file of this name is there already. */
    boolean isThere(String name) {
        return files.isThere(name);
    }

    /** An earlier file stays, and would be taken for a current one: so it is mentioned. */
    void leaveOut(String name) {
        say.accept("No plan: " + name + " is not written"
                + (files.isThere(name) ? "; the one that is there is older" : "") + "\n");
    }

    /** How the command ends now that its files were written, or were not. */
    ExitCode exit(ExitCode exit) {
        return failed ? exit.notWritten() : exit;
    }

    /** The same by its number. */
    public int exit(int code) {
        return exit(ExitCode.of(code)).code();
    }

    private void tell(Supplier<String> write) {
        try {
            say.accept(write.get());
        } catch (Refused notWritten) {
            failed = true;
            notWritten.faults().forEach(fault -> say.accept(fault.text()));
        }
    }
}
