package batchwright.app.roster;

import batchwright.answer.roster.Client;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Clients who share their pots, or one who shares with nobody: lines that stand together. */
public final class Pots implements Iterator<List<Client>> {
    private final Iterator<Client> clients;
    private @Nullable Client ahead;

    public Pots(Iterator<Client> clients) {
        this.clients = clients;
    }

    @Override
    public boolean hasNext() {
        return ahead != null || clients.hasNext();
    }

    @Override
    public List<Client> next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        List<Client> pot = new ArrayList<>();
        Client first = ahead == null ? clients.next() : ahead;
        ahead = null;
        pot.add(first);
        Optional<String> name = first.pot();
        while (name.isPresent() && ahead == null && clients.hasNext()) {
            Client client = clients.next();
            if (client.pot().equals(name)) {
                pot.add(client);
            } else {
                ahead = client;
            }
        }
        return pot;
    }
}
