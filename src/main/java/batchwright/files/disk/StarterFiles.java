package batchwright.files.disk;

import batchwright.text.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The starter files that travel with the program: inside its jar, or in the build folder while it is being developed. */
public final class StarterFiles implements DataFiles {
    private static final String ROOT = "starter/";

    @Override
    public Found<SourceFile> read(String path) {
        return bytes(path).map(bytes -> Decoder.decode(path, bytes)).orElseGet(Found.Absent::new);
    }

    /** The file unchanged, for writing it out; empty when there is none. */
    public Optional<byte[]> bytes(String path) {
        try (InputStream in = StarterFiles.class.getClassLoader().getResourceAsStream(ROOT + path)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Found<List<Entry>> list(String folder) {
        String prefix = folder + "/";
        return new Found.There<>(paths().stream()
                .filter(path -> path.startsWith(prefix))
                .map(path -> entry(path, path.indexOf('/', prefix.length())))
                .distinct()
                .sorted(Comparator.comparing(Entry::path))
                .toList());
    }

    /** @param end of the name of a folder in the path, or less than 0 when it is a file */
    private static Entry entry(String path, int end) {
        return end < 0 ? new Entry(path, false) : new Entry(path.substring(0, end), true);
    }

    /** Paths of all starter files, in alphabetical order. */
    public List<String> paths() {
        URL marker = StarterFiles.class.getClassLoader().getResource(ROOT + "foods/catalogue.csv");
        if (marker == null) {
            return List.of();
        }
        try {
            URLConnection connection = marker.openConnection();
            return connection instanceof JarURLConnection jar ? inJar(jar) : inFolder(marker);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> inJar(JarURLConnection connection) throws IOException {
        connection.setUseCaches(false);
        try (JarFile jar = connection.getJarFile()) {
            return jar.stream()
                    .filter(entry -> !entry.isDirectory() && entry.getName().startsWith(ROOT))
                    .map(entry -> entry.getName().substring(ROOT.length()))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> inFolder(URL catalogue) throws IOException {
        Path root = Path.of(java.net.URI.create(catalogue.toString()))
                .resolve("../..")
                .normalize();
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
