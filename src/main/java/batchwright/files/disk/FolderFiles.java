package batchwright.files.disk;

import batchwright.text.SourceFile;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

/** Files in a folder on the disk. Read only: nothing is ever written. */
public final class FolderFiles implements DataFiles {
    private final Path root;

    /** @param root the folder that holds foods/ and profiles/; empty for the current folder */
    public FolderFiles(Path root) {
        this.root = root.normalize();
    }

    /** A path may also be absolute. The file is shown to the user under the root's own name. */
    @Override
    public Found<SourceFile> read(String path) {
        return at(path).then(file -> file.bytes().then(bytes -> Decoder.decode(file.shown(), bytes)));
    }

    @Override
    public Found<List<Entry>> list(String folder) {
        return at(folder)
                .then(OnDisk::entries)
                .then(all -> new Found.There<>(all.stream()
                        .map(entry -> entry(folder, entry))
                        .filter(entry -> !entry.name().startsWith("."))
                        .sorted(Comparator.comparing(Entry::path))
                        .toList()));
    }

    /** Where it cannot be told what it is, reading it will say why. */
    private static Entry entry(String folder, Path path) {
        boolean isFolder = new OnDisk(path, shown(path))
                .attributes()
                .match(() -> false, attributes -> attributes.isDirectory(), unreadable -> false);
        return new Entry(folder + "/" + path.getFileName(), isFolder);
    }

    /** Whether there is a folder at a path; a file or anything else counts as found, too. */
    public Found<Boolean> isFolder(String path) {
        return at(path).then(OnDisk::attributes).then(attributes -> new Found.There<>(attributes.isDirectory()));
    }

    private Found<OnDisk> at(String path) {
        try {
            Path file = root.resolve(path);
            return new Found.There<>(new OnDisk(file, shown(file)));
        } catch (InvalidPathException notAPath) {
            return new Found.Absent<>();
        }
    }

    /** Where a path such as profiles/me.yaml is on the disk. */
    public Path path(String path) {
        return root.resolve(path);
    }

    @Override
    public String shown(String path) {
        return shown(root.resolve(path));
    }

    private static String shown(Path file) {
        return file.normalize().toString().replace('\\', '/');
    }
}
