package batchwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A map that names what is no longer there is worse than none. */
class MapTest {
    private static final Path MAP = Path.of("DEVELOPERS.md");
    private static final Pattern DECLARED = Pattern.compile("(?:class|record|interface|enum) (\\w+)");
    private static final Path ROOT = Path.of("src/main/java/batchwright");

    @Test
    void every_class_and_package_on_the_map_is_there() throws IOException {
        Set<String> sources = names(Path.of("src/main/java"), Path.of("src/test/java"));
        sources.add("BigDecimal");
        List<String> missing = new ArrayList<>();
        Pattern named = Pattern.compile("`([a-z]+(?:\\.[a-z]+)*)\\.([A-Z]\\w+)`|`([A-Z]\\w+(?:Test|[a-z]))`");
        named.matcher(Files.readString(MAP)).results().forEach(m -> {
            if (m.group(1) != null
                    && !Files.exists(ROOT.resolve(m.group(1).replace('.', '/')).resolve(m.group(2) + ".java"))
                    && !sources.contains(m.group(2))) {
                missing.add(m.group());
            } else if (m.group(3) != null && !sources.contains(m.group(3))) {
                missing.add(m.group());
            }
        });

        assertThat(missing).isEmpty();
    }

    @Test
    void no_line_of_the_map_is_wider_than_a_window() throws IOException {
        assertThat(Files.readAllLines(MAP)).allMatch(line -> line.length() <= 120);
    }

    /** Of files, and what is declared within them. */
    private static Set<String> names(Path... roots) throws IOException {
        var names = new TreeSet<String>();
        for (Path root : roots) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".java")).toList()) {
                    DECLARED.matcher(Files.readString(file)).results().forEach(m -> names.add(m.group(1)));
                }
            }
        }
        return names;
    }
}
