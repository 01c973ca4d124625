package batchwright.files.disk;

import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;

/** Why a file or folder that is there cannot be read. The words are ours: those of the system depend on its language. */
enum Obstacle {
    DENIED("permission to read this is denied", "expected a file that you may read, in folders that you may enter"),
    FOLDER_DENIED("permission to read this folder is denied", "expected a folder that you may list and enter"),
    IS_FOLDER("this is a folder", "expected a text file"),
    IS_FILE("this is a file", "expected a folder"),
    INSIDE_FILE("a part of this path is a file", "expected folders only before the last name"),
    IS_NO_FILE("this is no file but a pipe, a socket or a device", "expected a text file"),
    LINK_TO_NOTHING("this link leads nowhere", "expected a link to something that is there; is a disk missing?"),
    LINK_IN_CIRCLE("this link cannot be followed: it leads in a circle", "expected a link to something that is there"),
    BROKEN("this cannot be read: the disk or the network reports a fault", "expected a file that can be opened"),
    TOO_LARGE(
            "the file is larger than %s MB".formatted(Decoder.MOST_BYTES / Decoder.MEGABYTE),
            "expected a file edited by hand"),
    TOO_MANY(
            "more than %s files are in this folder".formatted(OnDisk.MOST_ENTRIES),
            "expected a folder of files edited by hand");

    private final String wrong;
    private final String expected;

    Obstacle(String wrong, String expected) {
        this.wrong = wrong;
        this.expected = expected;
    }

    /** @param path as shown to the user */
    <T> Found<T> at(String path) {
        return new Found.Unreadable<>(Problem.error(Span.whole(new SourceFile(path, List.of())), wrong, expected));
    }
}
