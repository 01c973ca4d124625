package batchwright.cli;

import batchwright.answer.PlanAnswer;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.proof.ProofOfPlan;
import batchwright.report.export.ProofFile;
import batchwright.report.export.ProofLines;
import batchwright.report.files.ProofCheckText;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** --proof FILE */
final class ProofOption {
    @Option(
            names = "--proof",
            paramLabel = "FILE",
            description =
                    "Also write a proof of what every plan costs at least; check --proof FILE checks it without trusting the"
                            + " search. Takes up to --seconds more.")
    private @Nullable String file;

    /** A proof is of one cooking session. */
    void refuseSessions() {
        if (file != null) {
            throw Refused.because("--proof goes with one cooking session", "Leave out --cooks or --proof.");
        }
    }

    /** @throws Refused when the file cannot be written or must not be */
    void check(FilesBeside files) {
        if (file != null) {
            files.add(file, ProofLines::isIn);
        }
    }

    /** @param stop asked now and then whether somebody wants the end */
    void write(FilesBeside files, Workspace workspace, PlanQuestion question, PlanAnswer answer, BooleanSupplier stop) {
        if (file == null) {
            return;
        }
        if (answer.plan().isEmpty()) {
            files.leaveOut(file);
            return;
        }
        ProofFile proof = ProofOfPlan.of(workspace.quietly(), question, answer, stop);
        files.write(
                file,
                ProofLines.of(proof),
                ": " + ProofCheckText.claim(proof, answer.kitchen().currency()));
    }
}
