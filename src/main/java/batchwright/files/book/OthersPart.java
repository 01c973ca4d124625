package batchwright.files.book;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is left of a line when one eater goes. Who ate a container of theirs keeps its energy, as eaten out; where its energy is not said the
 * day is not logged in full. Of a container that they had from somebody else it stays known that it is gone.
 */
public final class OthersPart {
    /** A line, or one that undoes it. */
    private static final String BEGINS = "^(\\S+ (?:undo \\S+ )?)";

    private static final String KCAL = "(?:, ([0-9.]+) kcal)?$";

    private final EaterNamed named;
    private final Pattern ateTheirs;
    private final Pattern theyAte;

    /** @param eater who goes */
    public OthersPart(String eater) {
        String id = Pattern.quote(eater);
        this.named = new EaterNamed(eater);
        this.ateTheirs = Pattern.compile(BEGINS + "ate (\\S+) (?:[0-9]+ )?\\S+ of " + id + KCAL);
        this.theyAte = Pattern.compile(BEGINS + "ate " + id + " (?:([0-9]+) )?(\\S+) of ([a-z0-9-]+)" + KCAL);
    }

    /** Empty when all of the line is about the eater. */
    public Optional<String> of(String line) {
        if (!named.in(line)) {
            return Optional.of(line);
        }
        String says = line.substring(0, LineWords.noteIn(line)).strip().replaceAll("\\s+", " ");
        if (!says.isEmpty() && !named.in(says)) {
            return Optional.of(says);
        }
        Matcher theirs = ateTheirs.matcher(says);
        if (theirs.matches() && !theirs.group(2).isEmpty() && !named.in("ate " + theirs.group(2))) {
            String eaten = theirs.group(3) == null ? "not logged" : "out " + theirs.group(3) + " kcal";
            return Optional.of(theirs.group(1) + "ate " + theirs.group(2) + " " + eaten);
        }
        Matcher they = theyAte.matcher(says);
        if (they.matches() && !named.in("of " + they.group(4))) {
            String count = they.group(2) == null ? "1" : they.group(2);
            return Optional.of(they.group(1) + "gave away " + count + " " + they.group(3) + " of " + they.group(4));
        }
        return Optional.empty();
    }
}
