package batchwright.food.origin;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a food, or something in it, comes from. Every meat names its animal: pig and beef have words of their own because people
 * leave out only these.
 */
public enum Origin {
    LAND_MEAT("poultry or another meat"),
    BEEF("beef"),
    PIG("pig"),
    FISH("fish"),
    CRUSTACEAN("crustacean"),
    MOLLUSC("mollusc"),
    INSECT("insects"),
    BY_PRODUCT("a by-product of slaughter, such as gelatine or animal rennet"),
    MILK("milk"),
    /** More than 1 g in 100 g. */
    LACTOSE("lactose"),
    /** 0.1 to 1 g in 100 g: less is found in ripe hard cheese and lactose-free milk. */
    LITTLE_LACTOSE("a little lactose"),
    EGG("egg"),
    HONEY("honey"),
    ALCOHOL("alcohol"),
    GLUTEN_CEREAL("a cereal with gluten"),
    OATS("oats, which are free of gluten only when grown and milled apart");

    private final String label;

    Origin(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** As written in the files: land_meat. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Origin> byId(String id) {
        return Stream.of(values()).filter(origin -> origin.id().equals(id)).findFirst();
    }
}
