package batchwright.cli.serve;

import batchwright.cli.Batchwright;
import batchwright.cli.Given;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** serve */
@Command(
        name = "serve",
        header = "The whole job as a page in your browser, on this computer.",
        customSynopsis = "serve [--port N] [OPTIONS]",
        description = {
            "Prints the address to open. The page works with the same files and the",
            "same book as the commands; both can be used in turn. Nothing leaves this",
            "computer, and nobody else gets in. Ctrl-C ends it."
        },
        footer = {"  java -jar target/batchwright.jar serve", "  java -jar target/batchwright.jar serve --data my-kitchen"})
public final class ServeCommand implements Callable<Integer> {
    private static final int MOST_PORT = 65_535;

    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8437",
            description = "Where the page is reached, 1024 to 65535, or 0 for any that is free; default ${DEFAULT-VALUE}.")
    private String port = "";

    @Override
    public Integer call() throws InterruptedException {
        OpenPage.untilEnded(new Given("--port", port).whole(0, MOST_PORT, "ports"), program);
        return 0;
    }
}
