package batchwright.app.roster;

import batchwright.answer.roster.Client;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Predicate;

/** The pots in which somebody is not answered yet. */
final class OpenPots implements Iterator<List<Client>> {
    private final Iterator<List<Client>> pots;
    private final Predicate<Client> isAnswered;
    private Optional<List<Client>> next = Optional.empty();

    OpenPots(Iterator<List<Client>> pots, Predicate<Client> isAnswered) {
        this.pots = pots;
        this.isAnswered = isAnswered;
    }

    @Override
    public boolean hasNext() {
        while (next.isEmpty() && pots.hasNext()) {
            next = Optional.of(pots.next()).filter(pot -> !pot.stream().allMatch(isAnswered));
        }
        return next.isPresent();
    }

    @Override
    public List<Client> next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        List<Client> pot = next.orElseThrow();
        next = Optional.empty();
        return pot;
    }
}
