package batchwright.report.needs;

import batchwright.needs.dynamics.BodyState;
import batchwright.needs.dynamics.StartingFat;
import batchwright.needs.projection.ProjectedWeek;
import batchwright.needs.projection.Projection;
import batchwright.needs.projection.TotalBand;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;

/** A projection for scripts; part of batchwright.needs/1. */
final class ProjectionJson {
    private ProjectionJson() {}

    static ObjectNode of(Projection projection) {
        ObjectNode root = Json.object();
        root.put("weeks_asked", projection.weeksAsked());
        root.put("weeks", projection.last().week());
        projection.stops().ifPresentOrElse(why -> root.put("stopped", why.text()), () -> root.putNull("stopped"));
        root.put("intake_kcal", tenth(projection.intake().kcal()));
        TotalBand total = projection.total();
        root.putObject("total_kcal")
                .put("min", tenth(total.least().kcal()))
                .put("likely", tenth(total.likely().kcal()))
                .put("max", tenth(total.most().kcal()));
        root.set("starting_fat", startingFat(projection.fat()));
        ArrayNode path = root.putArray("path");
        projection.path().forEach(week -> week(path.addObject(), week));
        ArrayNode cautions = root.putArray("cautions");
        projection.cautions().forEach(caution -> NeedsJson.caution(cautions.addObject(), caution));
        return root;
    }

    private static ObjectNode startingFat(StartingFat fat) {
        ObjectNode node =
                Json.object().put("percent", Json.hundredth(fat.share().percent()));
        fat.estimate()
                .ifPresentOrElse(
                        estimate -> node.put("method", estimate.method())
                                .put("error_points", tenth(estimate.errorPoints()))
                                .put("source", estimate.source().text()),
                        () -> node.put("method", "measured"));
        return node;
    }

    private static void week(ObjectNode node, ProjectedWeek week) {
        node.put("week", week.week());
        node.set("likely", body(week.likely()));
        week.lightest().ifPresentOrElse(body -> node.set("lightest", body(body)), () -> node.putNull("lightest"));
        node.set("heaviest", body(week.heaviest()));
    }

    private static ObjectNode body(BodyState body) {
        return Json.object()
                .put("weight_kg", Json.hundredth(body.weightKg()))
                .put("fat_kg", Json.hundredth(body.fatKg()))
                .put("lean_kg", Json.hundredth(body.leanKg()));
    }

    private static BigDecimal tenth(double value) {
        return Json.tenth(BigDecimal.valueOf(value));
    }
}
