package batchwright.cli;

import batchwright.app.ModelFile;
import batchwright.app.Refused;
import batchwright.plan.PlanRequest;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** --model FILE.mps */
final class ModelOption {
    @Option(
            names = "--model",
            paramLabel = "FILE.mps",
            description = "Also write the whole plan as a model for other solvers, and FILE.names.csv beside it.")
    private @Nullable String file;

    /** A model is of one cooking session. */
    void refuseSessions() {
        if (file != null) {
            throw Refused.because("--model goes with one cooking session", "Leave out --cooks or --model.");
        }
    }

    /** What to do with a request before it is planned. */
    Consumer<PlanRequest> writer(Batchwright program) {
        if (file == null) {
            return request -> {};
        }
        var model = new ModelFile(program.folder(file));
        model.files().forEach(path -> program.checkWritable(path.toString()));
        return request -> program.complain(model.write(request));
    }
}
