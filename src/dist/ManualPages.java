import batchwright.cli.CommandLines;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Run by the build: writes manual pages (AsciiDoc) and the completion of a shell, both made from the commands. */
public final class ManualPages {
    private ManualPages() {}

    /** @param args the folder for the pages, and the file of the completion */
    public static void main(String[] args) throws Exception {
        CommandLine line = CommandLines.described();
        var pages = new File(args[0]);
        Files.createDirectories(pages.toPath());
        int code = ManPageGenerator.generateManPage(pages, null, new boolean[0], false, line.getCommandSpec());
        if (code != 0) {
            throw new IllegalStateException("the manual pages were not written: " + code);
        }
        Files.writeString(Path.of(args[1]), AutoComplete.bash("batchwright", line));
    }
}
