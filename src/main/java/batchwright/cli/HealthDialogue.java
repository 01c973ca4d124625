package batchwright.cli;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.person.HealthGroup;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Asks for all groups of questions of health at once; single questions follow only for those in which something applies. */
final class HealthDialogue {
    private static final Set<String> NONE = Set.of("none", "no", "0");

    private final Asking asking;
    private final ProfileAnswers answers;

    HealthDialogue(Asking asking, ProfileAnswers answers) {
        this.asking = asking;
        this.answers = answers;
    }

    /** False when the user wants to go back. */
    boolean isAnswered(ProfileQuestion question) {
        List<HealthGroup> groups = answers.openGroups();
        asking.gap();
        for (int g = 0; g < groups.size(); g++) {
            asking.item(g + 1, groups.get(g).words());
        }
        while (true) {
            String answer =
                    asking.ask(question.asks() + " Enter leaves it open, and then no loss of weight is planned.");
            if (answer.equals("back")) {
                return false;
            }
            if (answer.isEmpty()) {
                answers.leaveOpen(question.key());
                return true;
            }
            if (NONE.contains(answer)) {
                put(groups, Set.of());
                return true;
            }
            Set<Integer> numbers = numbers(answer, groups.size());
            if (!numbers.isEmpty()) {
                put(groups, numbers);
                return true;
            }
            asking.say("Enter numbers from 1 to " + groups.size() + " with blanks between, or none.");
        }
    }

    private void put(List<HealthGroup> groups, Set<Integer> applying) {
        for (int g = 0; g < groups.size(); g++) {
            answers.put(ProfileQuestion.healthKey(groups.get(g).key()), applying.contains(g + 1) ? "yes" : "no");
        }
    }

    /** Empty when it is no list of them. */
    private static Set<Integer> numbers(String answer, int most) {
        if (!answer.matches("[0-9]{1,2}([ ,]+[0-9]{1,2})*")) {
            return Set.of();
        }
        Set<Integer> numbers =
                Arrays.stream(answer.split("[ ,]+")).map(Integer::valueOf).collect(Collectors.toSet());
        return numbers.stream().allMatch(number -> number >= 1 && number <= most) ? numbers : Set.of();
    }
}
