package batchwright.needs.total;

import batchwright.needs.evidence.Estimate;
import batchwright.person.Body;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Total energy by published equations that need no resting energy, to be held beside resting energy x PAL. */
public final class SecondOpinions {
    private SecondOpinions() {}

    /** NASEM 2023 first, then the IOM 2005 equation for this body mass index; empty outside PAL 1.0 to under 2.5. */
    public static List<Estimate> of(Body body, double pal) {
        Optional<Estimate> iom = body.bmi() < IomOverweight2005.LEAST_BMI
                ? IomEer2005.total(body, pal)
                : IomOverweight2005.total(body, pal);
        return Stream.of(NasemEer2023.total(body, pal), iom)
                .flatMap(Optional::stream)
                .toList();
    }
}
