package batchwright.app.roster;

import batchwright.answer.roster.Client;
import batchwright.app.Refused;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Found;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Where a list of clients comes from: a file, a folder of profiles, or a stream. */
public final class RosterList {
    private static final String ENDING = ".yaml";

    private RosterList() {}

    /** What is not UTF-8 becomes a question mark in a box, and the line shows it. */
    public static BufferedReader of(InputStream stream) {
        return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
    }

    /**
     * A file of lines, or one client for each profile of a folder.
     *
     * @param name as the user gave it
     * @throws Refused when there is no such thing
     */
    public static BufferedReader of(Path here, String name) {
        Path path = here.resolve(name);
        if (Files.isDirectory(path)) {
            return new BufferedReader(new StringReader(profiles(here, name)));
        }
        if (!Files.exists(path)) {
            throw Refused.because("there is no \"" + name + "\"", "Name a list of clients, or a folder of profiles.");
        }
        try {
            return of(Files.newInputStream(path));
        } catch (IOException why) {
            throw Refused.because("\"" + name + "\" cannot be read", "Is it a file that you may read?");
        }
    }

    private static String profiles(Path here, String folder) {
        Found<List<DataFiles.Entry>> found = new FolderFiles(here).list(folder);
        String lines = found
                .match(List::<DataFiles.Entry>of, entries -> entries, problem -> {
                    throw Refused.by(List.of(problem));
                })
                .stream()
                .filter(entry -> !entry.isFolder() && entry.name().endsWith(ENDING))
                .map(entry -> quoted(entry.name().substring(0, entry.name().length() - ENDING.length())) + ","
                        + quoted(entry.path()))
                .collect(Collectors.joining("\n"));
        if (lines.isEmpty()) {
            throw Refused.because(
                    "there is no profile in \"" + folder + "\"", "Name a folder with one .yaml file for each client.");
        }
        return Client.ID + "," + Client.PROFILE + "\n" + lines + "\n";
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
