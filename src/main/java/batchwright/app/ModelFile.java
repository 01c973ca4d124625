package batchwright.app;

import batchwright.plan.PlanRequest;
import batchwright.solve.whole.WholeModel;
import java.nio.file.Path;
import java.util.function.Function;

/** The model of a plan as files for other solvers: MPS, and beside it the table of names. */
public final class ModelFile {
    private static final String ENDING = ".mps";

    private final String mps;
    private final String names;

    /** @throws Refused when the name does not show the format */
    public ModelFile(String mps) {
        if (!mps.endsWith(ENDING)) {
            throw Refused.because(
                    "the file of the model, " + mps + ", does not end in " + ENDING,
                    "Solvers tell the format by it: plan.mps.");
        }
        this.mps = mps;
        this.names = mps.substring(0, mps.length() - ENDING.length()) + ".names.csv";
    }

    public String name() {
        return mps;
    }

    /** @throws Refused when one of the two cannot be written or must not be */
    public void addTo(OutputFiles files, Function<String, Path> place) {
        files.add(mps, place.apply(mps), WholeModel::isIn);
        files.add(names, place.apply(names), WholeModel::isNamesIn);
    }

    /**
     * Writes the model of what was asked.
     *
     * @return what was written, a line for people
     * @throws Refused when a file could not be written
     */
    public String write(PlanRequest request, OutputFiles files) {
        WholeModel whole = WholeModel.of(request);
        files.write(names, whole.names());
        files.write(mps, whole.mps());
        return "note: the model, " + whole.model().columns().size() + " columns and "
                + whole.model().rowCount() + " rows, is in " + mps + ", what they mean in " + names + "\n";
    }
}
