package batchwright.report.labels;

import java.util.Locale;

/** A paragraph of a label; it may take several lines of type. */
public record LabelLine(Role role, String text) {
    /** Three sizes of type: who and when are read from afar, the dish at the open fridge, the rest in the hand. */
    public enum Role {
        WHO(true),
        WHEN(true),
        TITLE(true),
        THAW(true),
        STRONG(true),
        PLAIN(false);

        private final boolean bold;

        Role(boolean bold) {
            this.bold = bold;
        }

        public boolean bold() {
            return bold;
        }

        /** As the style sheet calls it. */
        public String look() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
