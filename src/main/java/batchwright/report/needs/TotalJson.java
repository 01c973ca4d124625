package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.total.TotalRange;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Total energy for scripts. */
final class TotalJson {
    private TotalJson() {}

    /** The first second opinion also stands alone, as it did before there were others. */
    static void put(ObjectNode root, Needs needs) {
        TotalRange range = needs.totalRange();
        root.putObject("total_range_kcal")
                .put("least", NeedsJson.tenth(range.least().kcal()))
                .put("most", NeedsJson.tenth(range.most().kcal()))
                .put("people_inside", TotalRange.COVERAGE);
        List<Estimate> opinions = needs.secondOpinions();
        if (opinions.isEmpty()) {
            root.putNull("second_opinion");
        } else {
            NeedsJson.estimate(root.putObject("second_opinion"), opinions.get(0));
        }
        ArrayNode all = root.putArray("second_opinions");
        opinions.forEach(opinion -> NeedsJson.estimate(all.addObject(), opinion));
    }
}
