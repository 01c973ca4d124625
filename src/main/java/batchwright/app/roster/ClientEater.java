package batchwright.app.roster;

import batchwright.answer.roster.Client;
import batchwright.app.Eaters;
import batchwright.app.ProfileAnswers;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.files.value.Ids;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * From a line of a roster to an eater: by the profile it names, or by the answers of a profile in the line itself.
 *
 * @param workspace where profiles are found
 * @param ofPlan columns that ask for a plan and say nothing of the body
 */
record ClientEater(Workspace workspace, Kitchen kitchen, Set<String> ofPlan) {
    private static final Set<String> OF_ROSTER = Set.of(Client.POT, Client.PROFILE, Client.NAME);

    /** @throws Refused when the line does not make an eater */
    Eater of(Client client) {
        Map<String, String> body = new LinkedHashMap<>(client.said());
        body.keySet().removeAll(OF_ROSTER);
        body.keySet().removeAll(ofPlan);
        String profile = client.said().get(Client.PROFILE);
        if (profile == null) {
            return byAnswers(client, body);
        }
        if (!body.isEmpty()) {
            throw Refused.because(
                    "the line names a profile, and also "
                            + body.keySet().stream().sorted().collect(Collectors.joining(", ")),
                    "Say it in the profile, or leave the profile out.");
        }
        return new Eaters(workspace, kitchen).asWritten(profile);
    }

    private Eater byAnswers(Client client, Map<String, String> body) {
        var answers = new ProfileAnswers(workspace);
        answers.putAll(body);
        if (!answers.missing().isEmpty()) {
            throw Refused.because(
                    "the line does not say "
                            + answers.missing().stream()
                                    .map(question -> question.key())
                                    .collect(Collectors.joining(", ")),
                    "Fill these columns, or name a profile.");
        }
        String id = Ids.isEater(client.id()) ? client.id() : "client-" + client.line();
        return answers.eater(id, client.said().getOrDefault(Client.NAME, client.id()));
    }
}
