package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HtmlTest {
    @Test
    void text_stays_text() {
        var html = new Html().element("p", "<b>\"Tom\" & 'Jo'</b>");

        assertThat(html).hasToString("<p>&lt;b&gt;&quot;Tom&quot; &amp; &#39;Jo&#39;&lt;/b&gt;</p>");
    }

    @Test
    void values_of_attributes_cannot_end_themselves() {
        var html = new Html().empty("img", "alt", "\" onload=\"x");

        assertThat(html).hasToString("<img alt=\"&quot; onload=&quot;x\">");
    }

    @Test
    void what_html_forbids_becomes_a_question_mark_and_emoji_stay() {
        var html = new Html().text("a\u0000b\uD800c\uFFFEd\uD83C\uDF72");

        assertThat(html).hasToString("a?b?c?d\uD83C\uDF72");
    }

    @Test
    void an_element_left_open_is_a_fault() {
        var html = new Html().open("p");

        assertThatThrownBy(html::toString).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void a_style_sheet_cannot_end_its_element() {
        var html = new Html();

        assertThatThrownBy(() -> html.style("</style>")).isInstanceOf(IllegalArgumentException.class);
    }
}
