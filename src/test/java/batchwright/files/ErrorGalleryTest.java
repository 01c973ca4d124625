package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.Golden;
import batchwright.text.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every message has an example: a folder with the broken files, laid over the small workspace {@code _base}; and
 * expected.txt, the message. A file named in without.txt is taken away. The page docs/errors.md is made of them.
 */
class ErrorGalleryTest {
    private static final String EXPECTED = "expected.txt";
    private static final String WITHOUT = "without.txt";

    static List<String> cases() throws IOException {
        try (Stream<Path> folders = Files.list(FilesInMemory.GALLERY)) {
            return folders.map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.startsWith("_"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void the_workspace_below_the_examples_is_right() {
        assertThat(FilesInMemory.base().problems()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void the_message_is_the_one_approved(String name) throws IOException {
        Golden.check(FilesInMemory.GALLERY.resolve(name).resolve(EXPECTED), message(name));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void the_message_is_for_a_cook(String name) throws IOException {
        assertThat(message(name))
                .isNotEmpty()
                .doesNotContainIgnoringCase("exception", "invalid", "illegal", "null", "please", "java", "oops");
    }

    @Test
    void the_page_of_errors_is_up_to_date() throws IOException {
        var page = new StringBuilder("""
                # Messages about files

                What the program says about a mistake in a file: the place, what is wrong, your own line with the place marked,
                what was expected and, for a misspelt name, the nearest one. An error stops the program, a warning does not. One
                run names the problems of all files, at most ten of each file.

                This page is made from the examples in src/test/resources/errors: each is a test.
                """);
        for (String name : cases()) {
            page.append("\n## ").append(title(name)).append("\n\n```\n");
            page.append(message(name)).append("```\n");
        }
        Golden.check(Path.of("docs/errors.md"), page.toString());
    }

    private static String title(String name) {
        String words = name.replace('_', ' ');
        int first = words.indexOf(' ');
        return Character.toUpperCase(words.charAt(0)) + words.substring(1, first) + ":" + words.substring(first);
    }

    private static String message(String name) throws IOException {
        Path folder = FilesInMemory.GALLERY.resolve(name);
        var files = FilesInMemory.base().withFolder(folder).without(EXPECTED);
        if (Files.exists(folder.resolve(WITHOUT))) {
            Files.readAllLines(folder.resolve(WITHOUT)).forEach(files::without);
        }
        return files.problems().stream().map(Problem::render).collect(Collectors.joining("\n"));
    }
}
