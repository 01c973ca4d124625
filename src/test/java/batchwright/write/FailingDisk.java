package batchwright.write;

import java.io.IOException;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.CopyOption;
import java.nio.file.FileSystem;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;
import org.apache.lucene.tests.mockfile.FilterFileChannel;
import org.apache.lucene.tests.mockfile.FilterFileSystemProvider;

/** A file system on which one of the steps that change something fails, and perhaps every one after it. */
final class FailingDisk extends FilterFileSystemProvider {
    /** How a step fails. */
    enum Fault {
        /** Once; nothing is done, or half of what was to be written. */
        ONCE,
        /** Once; it is done, and still an error is told, as by a disk in the network. */
        ONCE_THOUGH_DONE,
        /** So do all steps after it. */
        FOR_GOOD
    }

    private final Fault fault;
    private final int failsAt;
    private int steps;
    private String failed = "";

    /** @param failsAt which step fails, from 1 on */
    FailingDisk(FileSystem disk, Fault fault, int failsAt) {
        super("failing://", disk);
        this.fault = fault;
        this.failsAt = failsAt;
    }

    Path root() {
        return getFileSystem(URI.create("failing:///")).getPath("/kitchen");
    }

    /** The first step that failed; empty when none did, as there were fewer. */
    String failed() {
        return failed;
    }

    @FunctionalInterface
    private interface Action {
        void run() throws IOException;
    }

    private void step(String name, Action action, Action half) throws IOException {
        steps++;
        boolean fails = steps == failsAt || (fault == Fault.FOR_GOOD && steps > failsAt);
        if (!fails) {
            action.run();
            return;
        }
        failed = failed.isEmpty() ? name : failed;
        if (fault == Fault.ONCE_THOUGH_DONE) {
            action.run();
        } else {
            half.run();
        }
        throw new IOException("No space left on device");
    }

    private void step(String name, Action action) throws IOException {
        step(name, action, () -> {});
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        if (!options.contains(StandardOpenOption.WRITE)) {
            return super.newFileChannel(path, options, attributes);
        }
        FileChannel[] opened = new FileChannel[1];
        step("create", () -> opened[0] = new FailingChannel(super.newFileChannel(path, options, attributes)), () -> {});
        return opened[0];
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        step("create folder", () -> super.createDirectory(folder, attributes));
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        step("move", () -> super.move(from, to, options));
    }

    @Override
    public void createLink(Path link, Path existing) throws IOException {
        step("link", () -> super.createLink(link, existing));
    }

    @Override
    public void delete(Path path) throws IOException {
        step("delete", () -> super.delete(path));
    }

    @Override
    public boolean deleteIfExists(Path path) throws IOException {
        boolean[] there = new boolean[1];
        step("delete", () -> there[0] = super.deleteIfExists(path));
        return there[0];
    }

    private final class FailingChannel extends FilterFileChannel {
        FailingChannel(FileChannel channel) {
            super(channel);
        }

        @Override
        public int write(ByteBuffer octets) throws IOException {
            int before = octets.position();
            step("write", () -> super.write(octets), () -> {
                ByteBuffer half = octets.duplicate();
                half.limit(before + octets.remaining() / 2);
                super.write(half);
            });
            return octets.position() - before;
        }

        @Override
        public void force(boolean all) throws IOException {
            step("force", () -> super.force(all));
        }
    }
}
