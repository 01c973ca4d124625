package batchwright.app;

import batchwright.plan.PlanRequest;
import batchwright.solve.whole.WholeModel;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;

/** The model of a plan as files for solvers from elsewhere: MPS, and beside it the table of names. Never overwrites. */
public final class ModelFile {
    private static final String ENDING = ".mps";

    private final Path mps;
    private final Path names;

    /** @throws Refused when the file cannot be written */
    public ModelFile(Path mps) {
        String name = mps.getFileName() == null ? "" : mps.getFileName().toString();
        if (!name.endsWith(ENDING)) {
            throw Refused.because(
                    "the file of the model, " + mps + ", does not end in " + ENDING,
                    "Solvers tell the format by it: --model plan.mps.");
        }
        this.mps = mps;
        this.names = mps.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".names.csv");
        refuseWhenThere(mps);
        refuseWhenThere(names);
    }

    /** What is written. */
    public List<Path> files() {
        return List.of(mps, names);
    }

    private static void refuseWhenThere(Path file) {
        if (Files.exists(file)) {
            throw Refused.because(
                    file + " is there already", "Nothing was written. Name another file, or move it away first.");
        }
    }

    /**
     * Writes the model of what is asked.
     *
     * @return what was written, a line for people
     * @throws Refused when a file cannot be written
     */
    public String write(PlanRequest request) {
        WholeModel whole = WholeModel.of(request);
        write(mps, whole.mps());
        write(names, whole.names());
        return "note: the model, " + whole.model().columns().size() + " columns and "
                + whole.model().rowCount() + " rows, is in " + mps + ", what they mean in " + names + "\n";
    }

    private static void write(Path file, String text) {
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
        } catch (IOException unwritable) {
            throw Refused.because("cannot write " + file, "Name a file in a folder that you may write to.");
        }
    }
}
