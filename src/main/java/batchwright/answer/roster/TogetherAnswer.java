package batchwright.answer.roster;

import batchwright.answer.PlanAnswer;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * What many clients who share one kitchen are answered.
 *
 * @param clients for whom all is cooked, in the order of the eaters of the plan
 * @param answer the plan for all of them; empty when there is none, or the run was ended meanwhile
 * @param shares what of its cost is each one's, in the order of the clients
 * @param others who is left out, each with why
 * @param cutShort whether the run was ended meanwhile: then there is no answer yet
 */
public record TogetherAnswer(
        List<Client> clients,
        Optional<PlanAnswer> answer,
        List<Money> shares,
        List<RosterAnswer> others,
        boolean cutShort) {
    public TogetherAnswer {
        clients = List.copyOf(clients);
        shares = List.copyOf(shares);
        others = List.copyOf(others);
    }
}
