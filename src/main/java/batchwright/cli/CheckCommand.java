package batchwright.cli;

import batchwright.app.CheckFiles;
import batchwright.app.proof.CheckProof;
import batchwright.report.files.CheckJson;
import batchwright.report.files.ProblemCount;
import batchwright.report.files.ProofCheckText;
import batchwright.text.Problem;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** check */
@Command(
        name = "check",
        header = "Are my files right? Silent when they are.",
        customSynopsis = "check [OPTIONS]",
        footer = {"  java -jar target/batchwright.jar check", "  java -jar target/batchwright.jar check --json"})
final class CheckCommand implements Callable<Integer> {
    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Option(
            names = "--proof",
            paramLabel = "FILE",
            description =
                    "Check a proof that plan --proof wrote, from the files and in exact arithmetic, in their place.")
    private @Nullable String proof;

    @Mixin
    private LookOptions look = new LookOptions();

    @Override
    public Integer call() {
        return proof == null ? files() : proof(proof);
    }

    private int proof(String file) {
        CheckProof.Answer answer = CheckProof.of(program.workspace(), file);
        return program.answer(
                program.json
                        ? ProofCheckText.json(answer.file(), answer.verdict())
                        : ProofCheckText.of(answer.file(), answer.verdict(), answer.currency(), look.width(program)),
                answer.verdict().holds() ? ExitCode.DONE : ExitCode.NOT_RIGHT);
    }

    private int files() {
        List<Problem> problems = CheckFiles.answer(program.workspace());
        problems.forEach(problem -> program.complain(problem.render()));
        program.complain(ProblemCount.of(problems).text());
        ExitCode exit = problems.stream().anyMatch(Problem::isError) ? ExitCode.NOT_RIGHT : ExitCode.DONE;
        return program.answer(program.json ? CheckJson.of(problems) : "", exit);
    }
}
