package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.files.book.BookReader;
import batchwright.files.book.EaterNamed;
import batchwright.files.book.OthersPart;
import batchwright.files.disk.FolderFiles;
import batchwright.files.value.Problems;
import batchwright.files.value.Sources;
import batchwright.text.SourceFile;
import batchwright.write.AppendedFile;
import batchwright.write.CannotWrite;
import batchwright.write.UserFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything that is kept about one eater: the profile, the lines of the book that name them, and the plans that were kept for them. It
 * can be copied out, and taken away for good: the one thing that ever takes lines out of the book.
 */
public final class OneEatersLines {
    private final Workspace workspace;
    private final FolderFiles folder;
    private final String eater;
    private final EaterNamed named;

    /** @throws Refused when there is no kitchen of the user's own */
    public OneEatersLines(Workspace workspace, String eater) {
        this.workspace = workspace;
        this.folder = workspace
                .source()
                .folder()
                .map(FolderFiles::new)
                .orElseThrow(() ->
                        Refused.because("there is no kitchen of your own here", "Name the folder that holds it."));
        this.eater = eater;
        this.named = new EaterNamed(eater);
    }

    private String profile() {
        return "profiles/" + eater + ".yaml";
    }

    /** The profile and the lines, as they are written. */
    public String export() {
        Optional<SourceFile> profile = find(profile());
        List<String> lines = lines();
        refuseNobody(profile.isPresent() || !lines.isEmpty());
        var out = new StringBuilder();
        profile.ifPresent(
                file -> out.append("# ").append(file.path()).append('\n').append(text(file.lines())));
        out.append("# ").append(folder.shown(BookReader.PATH)).append('\n').append(text(lines));
        return out.toString();
    }

    /**
     * Takes all of it away.
     *
     * @param sure otherwise it is only said what would go
     * @return what was taken away
     * @throws Refused when the user is not sure, or something cannot be taken away
     */
    public List<String> remove(boolean sure) {
        boolean profile = find(profile()).isPresent();
        int lines = lines().size();
        List<String> plans = plans();
        refuseNobody(profile || lines > 0 || !plans.isEmpty());
        List<String> going = new ArrayList<>();
        if (profile) {
            going.add(folder.shown(profile()));
        }
        going.add("%s of %s".formatted(lines == 1 ? "1 line" : lines + " lines", folder.shown(BookReader.PATH)));
        plans.forEach(path -> going.add(folder.shown(path)));
        if (!sure) {
            throw Refused.because(
                    "this would go for good: " + String.join(", ", going),
                    "Nothing was taken away. Copy it out first; then say that you are sure.");
        }
        try {
            new AppendedFile(folder.path(BookReader.PATH), BookReader.HEAD, BookReader.TORN)
                    .takeOut(new OthersPart(eater)::of);
            for (String path : plans) {
                UserFile.takeAway(folder.path(path));
            }
            UserFile.takeAway(folder.path(profile()));
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
        return going;
    }

    private void refuseNobody(boolean known) {
        if (!known) {
            throw Refused.because(
                    "nothing is kept about an eater called \"" + eater + "\"", "Name the short name of an eater.");
        }
    }

    private Optional<SourceFile> find(String path) {
        var problems = new Problems();
        Optional<SourceFile> file = new Sources(folder, problems).find(path);
        if (problems.errors() > 0) {
            throw Refused.by(problems.list());
        }
        return file;
    }

    private List<String> lines() {
        return find(BookReader.PATH).map(SourceFile::lines).orElse(List.of()).stream()
                .filter(named::in)
                .toList();
    }

    /** Those that name the eater, whoever else they are for. */
    private List<String> plans() {
        String quoted = "\"eater\" : \"" + eater + "\"";
        return workspace.value(workspace.source().keptPlans()).stream()
                .filter(file -> file.lines().stream().anyMatch(line -> line.contains(quoted)))
                .map(file -> BookReader.PLANS + "/"
                        + file.path().substring(file.path().lastIndexOf('/') + 1))
                .toList();
    }

    private static String text(List<String> lines) {
        return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    }
}
