package batchwright.text;

/**
 * What a user wrote in one place: a cell of a table, a value or a key of a page. Blanks around it are gone, and a blank
 * that only looks like one (no-break space) counts as one.
 */
public record Written(String text, Span at) {
    public Written {
        text = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    }

    public boolean isEmpty() {
        return text.isEmpty();
    }

    /** The text in quotes, shortened so that a message stays readable. */
    public String quoted() {
        return Excerpt.quoted(text);
    }
}
