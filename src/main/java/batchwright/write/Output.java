package batchwright.write;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A file that a command writes beside its answer. It is judged by what is really there, links followed, once before the work and
 * again when it is written; a file is replaced only when this program made it.
 */
public final class Output {
    /** Where a file says who made it: among so many first bytes. */
    private static final int BEGINNING = 1 << 16;

    private static final Set<PosixFilePermission> WRITE =
            Set.of(PosixFilePermission.OWNER_WRITE, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);

    private final Path named;
    private final Predicate<String> isOurs;
    private final Guard guard;

    /** @param real what the name stands for; its folder is there */
    private record Place(Path real, boolean there) {}

    /**
     * @param named as the user named it
     * @param isOurs whether a file with this beginning is one that the program made
     */
    public Output(Path named, Predicate<String> isOurs, Guard guard) {
        this.named = named;
        this.isOurs = isOurs;
        this.guard = guard;
    }

    /**
     * Finds out before the work what would come to light only after it. Leaves nothing behind.
     *
     * @throws CannotWrite when the file cannot be written or must not be
     */
    public void tryOut() throws CannotWrite {
        Path folder = look().real().getParent();
        try {
            if (folder != null) {
                WholeFile.tryOut(folder);
            }
        } catch (IOException why) {
            throw CannotWrite.because(named.toString(), why);
        }
    }

    /**
     * Writes the file, whole or not at all.
     *
     * @throws CannotWrite when that is not possible; then the file is as it was
     */
    public void write(String text) throws CannotWrite {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The same, of a file that is no text.
     *
     * @throws CannotWrite when that is not possible; then the file is as it was
     */
    public void write(byte[] content) throws CannotWrite {
        try {
            Place place = look();
            if (place.there() || !isCreated(place.real(), content)) {
                WholeFile.replace(look().real(), content);
            }
        } catch (IOException why) {
            throw CannotWrite.because(named.toString(), why);
        }
    }

    private static boolean isCreated(Path file, byte[] content) throws IOException {
        try {
            WholeFile.create(file, content);
            return true;
        } catch (FileAlreadyExistsException sinceThen) {
            return false;
        }
    }

    /** Whether a file is there, whoever made it. */
    public boolean isThere() {
        return Files.exists(named);
    }

    /** Whether both are one file, under whatever names. */
    public boolean isSameAs(Output other) throws CannotWrite {
        Place mine = look();
        Place its = other.look();
        return mine.real().equals(its.real()) || (mine.there() && its.there() && isSame(mine.real(), its.real()));
    }

    private Place look() throws CannotWrite {
        Place place = place();
        guard.check(named, place.real());
        if (place.there()) {
            checkReplaceable(place.real());
        }
        return place;
    }

    private Place place() throws CannotWrite {
        if (Files.isDirectory(named)) {
            throw new CannotWrite("\"" + named + "\" is a folder", "Name a file in it.");
        }
        try {
            if (Files.exists(named)) {
                if (!Files.isRegularFile(named)) {
                    throw new CannotWrite(
                            "\"" + named + "\" is no ordinary file",
                            "Name a file in a folder. The answer itself goes to standard output.");
                }
                return new Place(named.toRealPath(), true);
            }
            if (Files.exists(named, LinkOption.NOFOLLOW_LINKS)) {
                throw new CannotWrite(
                        "\"" + named + "\" is a link to something that is not there",
                        "Name the file itself, or take the link away.");
            }
            Path folder = named.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new CannotWrite(
                        "\"" + named + "\" cannot be written: there is no such folder",
                        "Name a file in a folder that is there and may be written to.");
            }
            return new Place(folder.toRealPath().resolve(named.getFileName()), false);
        } catch (IOException why) {
            throw CannotWrite.because(named.toString(), why);
        }
    }

    private void checkReplaceable(Path real) throws CannotWrite {
        if (isWhereAnswersGo(real)) {
            throw new CannotWrite(
                    "\"" + named + "\" is where the answer or the messages of this command go", "Name another file.");
        }
        if (isProtected(real)) {
            throw new CannotWrite(
                    "\"" + named + "\" is protected against writing",
                    "Name another file, or allow it to be written first.");
        }
        if (!guard.replacesAny() && !isOurs(real)) {
            throw new CannotWrite(
                    "\"" + named + "\" is there already, and not made by this program",
                    "Nothing was written to it. Name another file, or force it to be replaced.");
        }
    }

    private static boolean isWhereAnswersGo(Path real) {
        return real.getFileSystem().equals(FileSystems.getDefault())
                && List.of("/dev/stdout", "/dev/stderr").stream()
                        .map(Path::of)
                        .anyMatch(stream -> Files.isRegularFile(stream) && isSame(stream, real));
    }

    /** A name in a folder can be given away whatever is said of the file; what is said of it counts all the same. */
    private static boolean isProtected(Path real) {
        if (!Files.isWritable(real)) {
            return true;
        }
        try {
            var posix = Files.getFileAttributeView(real, PosixFileAttributeView.class);
            return posix != null
                    && posix.readAttributes().permissions().stream().noneMatch(WRITE::contains);
        } catch (IOException unknown) {
            return false;
        }
    }

    /** An empty file holds nothing that could be lost. */
    private boolean isOurs(Path real) {
        try (InputStream in = Files.newInputStream(real)) {
            byte[] beginning = in.readNBytes(BEGINNING);
            return beginning.length == 0 || isOurs.test(new String(beginning, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException gone) {
            return false;
        }
    }
}
