package batchwright.needs.safety;

import batchwright.person.Body;
import batchwright.person.Sex;

/** What suffers in a body that has too little fat or energy, in words. */
public final class Harms {
    private Harms() {}

    /** Such as after "this harms". */
    public static String of(Body body) {
        return body.sex() == Sex.FEMALE ? "hormones, bones and the menstrual cycle" : "hormones and bones";
    }
}
