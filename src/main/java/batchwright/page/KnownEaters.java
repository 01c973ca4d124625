package batchwright.page;

import batchwright.app.Eaters;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import java.util.List;
import java.util.Optional;

/** The eaters that have a profile. What a request names is looked up here and goes nowhere before. */
public final class KnownEaters {
    private final Workspace workspace;

    public KnownEaters(Workspace workspace) {
        this.workspace = workspace;
    }

    public List<String> ids() {
        return Eaters.ids(workspace);
    }

    /** @throws Refused when there is no such eater */
    public String id(String asked) {
        return ids().stream()
                .filter(asked::equals)
                .findFirst()
                .orElseThrow(() -> Refused.because("there is no such eater", "Choose one of those that are shown."));
    }

    /** How the profile calls an eater; the short name where it cannot be read. */
    public String name(String id, Kitchen kitchen) {
        return new Eaters(workspace, kitchen).nameOf(id);
    }

    /** As the profile says; empty when it cannot be read. */
    public Optional<Eater> eater(String id, Kitchen kitchen) {
        return new Eaters(workspace, kitchen).readable(id);
    }
}
