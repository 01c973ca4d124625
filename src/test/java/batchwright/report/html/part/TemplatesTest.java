package batchwright.report.html.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.report.html.NoPlanPage;
import batchwright.report.html.chart.Svg;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is in a view comes out as text, in each place where a template puts it. The references are those of the HTML standard (WHATWG, 13.1.2.3
 * Attributes and 13.1.4 Character references): in text &amp; and &lt; must be written as such, in a quoted value the quotation mark too.
 */
class TemplatesTest {
    private static final Path SOURCES = Path.of("src/main/jte");
    private static final String HOSTILE = "</title></td></svg><script>alert(1)</script>\" onload=\"x' & y";
    private static final String AS_TEXT =
            "&lt;/title&gt;&lt;/td&gt;&lt;/svg&gt;&lt;script&gt;alert(1)&lt;/script&gt;\" onload=\"x' &amp; y";

    private static String page(Document document) {
        return Templates.render(
                "noplan", new NoPlanPage(document, "1 day", "none", Optional.empty(), List.of(), List.of(), List.of()));
    }

    @Test
    void text_stays_text() {
        String html = Templates.render(
                "table", new Table(HOSTILE).words(HOSTILE).numbers("n").row(HOSTILE, HOSTILE));

        assertThat(html)
                .contains("<caption>" + AS_TEXT + "</caption>", "<th scope=\"col\" class=\"w\">" + AS_TEXT + "</th>")
                .contains("<bdi>" + AS_TEXT + "</bdi></th><td class=\"n\">" + AS_TEXT + "</td>");
    }

    @Test
    void values_of_attributes_cannot_end_themselves() {
        String html = Templates.render("svg", new Svg(10, HOSTILE));

        assertThat(Pattern.compile("aria-label=\"([^\"]*)\"")
                        .matcher(html)
                        .results()
                        .map(m -> m.group(1)))
                .singleElement()
                .asString()
                .endsWith("&#34; onload=&#34;x&#39; &amp; y")
                .doesNotContain("<");
    }

    @Test
    void text_in_a_picture_stays_text() {
        var svg = new Svg(10, "says");
        svg.text(0, 0, Svg.Anchor.START, "value", HOSTILE);

        assertThat(Templates.render("svg", svg)).contains("class=\"value\">" + AS_TEXT + "</text>");
    }

    @Test
    void a_link_leads_nowhere_else() {
        var way = new WayThrough("Pages", "", List.of(new WayThrough.Link(HOSTILE, "x\" href=\"javascript:alert(1)")));

        assertThat(Templates.render("way", way))
                .contains("<a href=\"#x&#34; href=&#34;javascript:alert(1)\">" + AS_TEXT + "</a>");
    }

    @Test
    void a_title_cannot_end_itself() {
        String html = page(new Document(HOSTILE, "p { color: red }"));

        assertThat(html).startsWith("<!DOCTYPE html>\n").contains("<title>" + AS_TEXT + "</title>");
    }

    @Test
    void a_style_sheet_stands_unchanged_and_cannot_end_its_element() {
        assertThat(page(new Document("t", "a > b { content: \"&\" }")))
                .contains("<style>a > b { content: \"&\" }</style>");
        assertThatThrownBy(() -> new Document("t", "</style>")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Document("t", "", "'</script>'")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_html_forbids_becomes_a_question_mark_and_emoji_stay() {
        assertThat(Templates.render("tiles", List.of(new Tile("a\u0000b\uD800c\uFFFEd\r\uD83C\uDF72", "1", ""))))
                .contains("<dt>a?b?c?d?\uD83C\uDF72</dt>");
    }

    /** Names are escaped wherever they stand, because nothing but the style sheet is written as it is; and a page runs nothing. */
    @Test
    void only_the_style_sheet_is_written_as_it_is() throws IOException {
        var sources = new TreeMap<String, String>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                sources.put(SOURCES.relativize(file).toString(), Files.readString(file));
            }
        }

        assertThat(sources).hasSizeGreaterThan(20);
        assertThat(sources.entrySet().stream()
                        .flatMap(file -> Pattern.compile("\\$unsafe\\{[^}]*}|\\$(raw|safe)\\{")
                                .matcher(file.getValue())
                                .results()
                                .map(m -> file.getKey() + ": " + m.group()))
                        .toList())
                .containsExactly("layout.jte: $unsafe{document.css()}", "layout.jte: $unsafe{document.script()}");
        assertThat(String.join("\n", sources.values()))
                .doesNotContainPattern(
                        "(?i)<script>(?!\\$unsafe\\{document\\.script)|<script(?! src=\"/look/)[^>]|<style>(?!\\$unsafe\\{document\\.css)|\\sstyle=|\\son[a-z]+=|<iframe|<base");
    }
}
