package batchwright.needs.weighing;

import java.time.LocalDate;

/** A weighing that is not used. */
public record UnusedWeighing(LocalDate date, double weightKg, Why why) {
    /** Why not. */
    public enum Why {
        /** Further off than a body changes in that time. */
        MISTYPED("more than 5 % off, as by a typing error or another scale"),
        /** Further off than these weighings usually are. */
        ODD("further off than your weighings usually are"),
        ILL("ill that day"),
        TRAVEL("travelling that day");

        private final String says;

        Why(String says) {
            this.says = says;
        }

        public String says() {
            return says;
        }
    }
}
