package batchwright.book;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.book.BookReader;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import java.util.List;
import java.util.Optional;

/** Books for tests, from lines. */
public final class BookOf {
    private BookOf() {}

    public static Book lines(String... lines) {
        var problems = new Problems();
        Book book = BookReader.read(Optional.of(new SourceFile("book.txt", List.of(lines))), problems);
        assertThat(problems.list()).isEmpty();
        return book;
    }
}
