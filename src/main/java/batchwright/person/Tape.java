package batchwright.person;

import batchwright.quantity.Length;
import java.util.Optional;

/**
 * Girths of a body, from which body fat can be estimated.
 *
 * @param neck below the larynx; always less than the waist
 * @param waist for men at the navel, for women where it is narrowest
 * @param hips where they are widest; present for women
 */
public record Tape(Length neck, Length waist, Optional<Length> hips) {
    public Tape {
        if (neck.cm() >= waist.cm()) {
            throw new IllegalArgumentException("neck (" + neck + ") must be less than waist (" + waist + ").");
        }
    }
}
