package batchwright.cli;

import batchwright.app.CheckFiles;
import batchwright.report.files.CheckJson;
import batchwright.report.files.ProblemCount;
import batchwright.text.Problem;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
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

    @Override
    public Integer call() {
        List<Problem> problems = CheckFiles.answer(program.workspace());
        problems.forEach(problem -> program.complain(problem.render()));
        program.complain(ProblemCount.of(problems).text());
        ExitCode exit = problems.stream().anyMatch(Problem::isError) ? ExitCode.NOT_RIGHT : ExitCode.DONE;
        return program.answer(program.json ? CheckJson.of(problems) : "", exit);
    }
}
