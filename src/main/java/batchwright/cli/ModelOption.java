package batchwright.cli;

import batchwright.app.ModelFile;
import batchwright.app.Refused;
import batchwright.plan.PlanRequest;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** --model FILE.mps */
final class ModelOption {
    @Option(
            names = "--model",
            paramLabel = "FILE.mps",
            description = "Also write the whole plan as a model for other solvers, and FILE.names.csv beside it.")
    private @Nullable String file;

    private Optional<ModelFile> model = Optional.empty();
    private Optional<PlanRequest> asked = Optional.empty();

    /** A model is of one cooking session. */
    /** @param option that it does not go with */
    void refuse(String option) {
        if (file != null) {
            throw Refused.because("--model does not go with " + option, "Leave out " + option + " or --model.");
        }
    }

    /** @throws Refused when the files cannot be written, or the name does not tell what it holds */
    void check(FilesBeside files) {
        model = Optional.ofNullable(file).map(ModelFile::new);
        model.ifPresent(files::add);
    }

    /** Told what is planned. */
    void asked(PlanRequest request) {
        asked = Optional.of(request);
    }

    /** A model of what was planned is written whatever came of it; where a caution stopped planning there is none. */
    void write(FilesBeside files) {
        model.ifPresent(
                of -> asked.ifPresentOrElse(request -> files.write(of, request), () -> files.leaveOut(of.name())));
    }
}
