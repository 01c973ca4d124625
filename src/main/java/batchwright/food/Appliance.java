package batchwright.food;

import java.util.Locale;

/** What a step occupies besides the cook. */
public enum Appliance {
    BURNER,
    OVEN,
    SLOW_COOKER,
    RICE_COOKER,
    PRESSURE_COOKER,
    AIR_FRYER,
    MICROWAVE;

    /** Whether those who have it use it rather than a burner: it saves the burner, and a pressure cooker time. */
    boolean isPreferred() {
        return this == RICE_COOKER || this == PRESSURE_COOKER;
    }

    /** In files: slow_cooker. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** For people: slow cooker. */
    public String label() {
        return id().replace('_', ' ');
    }
}
