package batchwright.cli;

import batchwright.app.Refused;
import batchwright.app.WriteStarterFiles;
import batchwright.report.files.InitAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** init DIR */
@Command(
        name = "init",
        header = "Write the starter files into a folder, to be edited.",
        customSynopsis = "init DIR [OPTIONS]",
        description = "Never overwrites: when one of the files is there already and differs, nothing is written.",
        footer = {
            "  java -jar target/batchwright.jar init my-kitchen",
            "  java -jar target/batchwright.jar init . --json"
        })
final class InitCommand implements Callable<Integer> {
    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "DIR",
            description = "The folder; it is made when it is not there.")
    private List<String> folders = new ArrayList<>();

    @Override
    public Integer call() {
        if (folders.size() != 1) {
            throw Refused.because(
                    folders.isEmpty() ? "no folder is named" : "more than one folder is named",
                    "Name one folder: init my-kitchen.");
        }
        String folder = folders.get(0);
        List<String> written = new WriteStarterFiles().into(program.folder(folder));
        return program.answer(program.json ? InitAnswer.json(folder, written) : InitAnswer.text(folder, written));
    }
}
