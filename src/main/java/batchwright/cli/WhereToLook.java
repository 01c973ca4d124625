package batchwright.cli;

import batchwright.answer.Fault;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The commands that show or make what messages mention. */
final class WhereToLook {
    /** Words of a message, to the command that is printed below it. */
    static final Map<String, String> COMMANDS = commands();

    private WhereToLook() {}

    private static Map<String, String> commands() {
        var commands = new LinkedHashMap<String, String>();
        commands.put("list of activities", "Activities: needs --activities");
        commands.put("commas and without blanks", "Dishes: plan EATER --cook DISH,DISH");
        commands.put("container of a dish by itself", "One container: dishes DISH --kcal 700");
        commands.put("force it to be replaced", "To replace it all the same: --force");
        commands.put("starter files", "Starter files: init DIR, then add --data DIR");
        commands.put("search for its words", "Search: foods WORDS");
        commands.put("say that you are sure", "To write it all the same: --sure");
        commands.put("keep a plan when you make one", "To keep a plan: plan EATER --keep");
        return commands;
    }

    /** Each line once, in the order of the commands. */
    static List<String> below(List<Fault> faults) {
        return COMMANDS.entrySet().stream()
                .filter(entry ->
                        faults.stream().anyMatch(fault -> (fault.wrong() + fault.cure()).contains(entry.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }
}
