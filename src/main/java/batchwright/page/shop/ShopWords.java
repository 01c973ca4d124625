package batchwright.page.shop;

import batchwright.app.Refused;
import java.util.stream.Collectors;

/** Why something was refused, in sentences. */
final class ShopWords {
    private ShopWords() {}

    static String sentences(Refused refused) {
        return refused.faults().stream()
                .map(fault -> Character.toUpperCase(fault.wrong().charAt(0)) + fault.wrong().substring(1) + ". " + fault.cure())
                .collect(Collectors.joining(" "));
    }
}
