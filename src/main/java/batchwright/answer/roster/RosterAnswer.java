package batchwright.answer.roster;

import batchwright.answer.Fault;
import batchwright.answer.PlanAnswer;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the clients of one pot are answered.
 *
 * @param clients at least one
 * @param answer unless something is wrong with a line
 * @param weighed by the own id of a client, for those whose weighings are in the book
 * @param faults what is wrong, if there is no answer
 * @param cutShort whether the run was ended meanwhile: then there is no answer yet
 */
public record RosterAnswer(
        List<Client> clients,
        Optional<PlanAnswer> answer,
        Map<String, LastWeighed> weighed,
        List<Fault> faults,
        boolean cutShort) {
    public RosterAnswer {
        clients = List.copyOf(clients);
        weighed = Map.copyOf(weighed);
        faults = List.copyOf(faults);
    }

    public static RosterAnswer of(List<Client> clients, PlanAnswer answer, Map<String, LastWeighed> weighed) {
        return new RosterAnswer(clients, Optional.of(answer), weighed, List.of(), false);
    }

    public static RosterAnswer wrong(List<Client> clients, List<Fault> faults) {
        return new RosterAnswer(clients, Optional.empty(), Map.of(), faults, false);
    }

    public static RosterAnswer cut(List<Client> clients) {
        return new RosterAnswer(clients, Optional.empty(), Map.of(), List.of(), true);
    }
}
