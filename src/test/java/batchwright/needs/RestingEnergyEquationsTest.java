package batchwright.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.person.Body;
import batchwright.person.Sex;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The equations against each other, and what all of them promise. */
class RestingEnergyEquationsTest {
    static Stream<RestingEnergyEquation> all() {
        return RestingEnergyEquations.all().stream();
    }

    private static List<Body> grid() {
        List<Body> grid = new ArrayList<>();
        for (Sex sex : Sex.values()) {
            for (double metres = 1.55; metres < 1.96; metres += 0.10) {
                for (double bmi = 19; bmi <= 35; bmi += 2) {
                    for (double years = 19; years <= 79; years += 5) {
                        grid.add(TestEater.body(
                                sex, bmi * metres * metres, metres * 100, years, sex == Sex.MALE ? 18.0 : 27.0));
                    }
                }
            }
        }
        return grid;
    }

    @ParameterizedTest
    @MethodSource("all")
    void stays_near_mifflin_on_a_grid_of_adults(RestingEnergyEquation equation) {
        double least = 9, most = 0; String l = "", m = "";
        for (Body body : grid()) {
            if (equation.perDay(body).isEmpty()) continue;
            double r = equation.perDay(body).orElseThrow().kcal() / new MifflinStJeor1990().perDay(body).orElseThrow().kcal();
            String w = body.sex() + " " + body.height().cm() + " bmi " + body.bmi() + " " + body.ageYears();
            if (r < least) { least = r; l = w; }
            if (r > most) { most = r; m = w; }
        }
        System.out.println("RATIO " + equation.name() + " " + least + " " + l + " / " + most + " " + m);
    }
}
