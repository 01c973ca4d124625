package batchwright.app.roster;

import batchwright.answer.roster.Client;
import batchwright.app.OutputFiles;
import batchwright.app.Refused;
import batchwright.report.roster.AnsweredJson;
import batchwright.report.roster.RosterJson;
import batchwright.write.CannotWrite;
import batchwright.write.GrowingFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Predicate;

/** The file that the answers of a roster are added to, and what it holds from an earlier run. */
public final class RosterFile implements AutoCloseable {
    private final GrowingFile file;
    private final Predicate<Client> answered;

    private RosterFile(GrowingFile file, Predicate<Client> answered) {
        this.file = file;
        this.answered = answered;
    }

    /**
     * Opens the file.
     *
     * @param name as the user gave it
     * @param goOn whether what it holds stays, and those answered in it are not asked again
     * @throws Refused when it cannot be written or must not be
     */
    public static RosterFile open(String name, Path path, boolean goOn, OutputFiles files) {
        files.add(name, path, beginning -> beginning.startsWith(RosterJson.MARK));
        try {
            Predicate<Client> answered = goOn && Files.exists(path) ? answeredIn(path)::has : client -> false;
            return new RosterFile(GrowingFile.open(path, !goOn), answered);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        } catch (IOException why) {
            throw Refused.because("\"" + name + "\" cannot be read", "Is it a file that you may read?");
        }
    }

    private static AnsweredJson answeredIn(Path path) throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
            return AnsweredJson.in(lines);
        }
    }

    /** Whether a client was answered in an earlier run. */
    public boolean isAnswered(Client client) {
        return answered.test(client);
    }

    /** @throws Refused when they cannot be added whole */
    public void add(String lines) {
        try {
            file.add(lines);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException why) {
            throw Refused.because("the answers may not be on the disk", "Is the disk full, or was it taken away?");
        }
    }
}
