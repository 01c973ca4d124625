package batchwright.person;

import batchwright.quantity.Length;
import java.util.Optional;

/**
 * Girths of a body, from which body fat can be estimated.
 *
 * @param neck below the larynx; always less than the waist
 * @param waist of men at the navel, of women where it is narrowest
 * @param hips where they are widest; there for women
 */
public record Tape(Length neck, Length waist, Optional<Length> hips) {
    public Tape {
        if (neck.cm() >= waist.cm()) {
            throw new IllegalArgumentException("neck (" + neck + ") must be less than waist (" + waist + ").");
        }
    }
}
