package batchwright.food;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a kitchen throws away of a food as bought. */
public enum TakenOff {
    BONE,
    SKIN,
    SHELL,
    PEEL,
    STONE,
    LIQUID,
    SEEDS,
    CORE,
    STEM,
    LEAVES,
    TRIMMINGS;

    /** As written in the files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<TakenOff> byId(String id) {
        return Stream.of(values()).filter(part -> part.id().equals(id)).findFirst();
    }

    /** Whether shops sell the same food with it and without it, and cooks leave it on or take it off. */
    public boolean isByChoice() {
        return switch (this) {
            case BONE, SKIN, SHELL, PEEL, STONE, LIQUID -> true;
            case SEEDS, CORE, STEM, LEAVES, TRIMMINGS -> false;
        };
    }
}
