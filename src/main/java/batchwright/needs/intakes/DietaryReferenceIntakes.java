package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import batchwright.needs.evidence.Citation;
import batchwright.person.Body;
import batchwright.person.Sex;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Recommended amounts and upper levels by sex and age, of the United States and Canada: the table beside this class, which names
 * the source of each row. For adults from 19 years; about younger people it says nothing.
 */
final class DietaryReferenceIntakes {
    private static final String TABLE = "dietary_reference_intakes.csv";
    /** Where the columns of the table begin [years]. "Over 70" begins with the 71st birthday: ages are counted in whole years. */
    private static final int[] FROM_YEARS = {19, 31, 51, 71};

    private static final List<Row> ROWS = read();

    private record Row(
            Nutrient nutrient, Kind kind, Optional<Sex> sex, List<BigDecimal> amounts, Counts counts, Citation source) {
        boolean isFor(Nutrient other, Sex body) {
            return nutrient == other && sex.map(s -> s == body).orElse(true);
        }
    }

    private DietaryReferenceIntakes() {}

    static Optional<Recommended> recommended(Nutrient nutrient, Body body) {
        return row(nutrient, body, List.of(Kind.RDA, Kind.AI))
                .flatMap(row -> amount(row, body).map(amount -> new Recommended(row.kind(), amount, row.source())));
    }

    static Optional<Ceiling> limit(Nutrient nutrient, Body body) {
        return row(nutrient, body, List.of(Kind.UL, Kind.CDRR))
                .flatMap(row ->
                        amount(row, body).map(amount -> new Ceiling(row.kind(), amount, row.counts(), row.source())));
    }

    private static Optional<Row> row(Nutrient nutrient, Body body, List<Kind> kinds) {
        return ROWS.stream()
                .filter(row -> row.isFor(nutrient, body.sex()) && kinds.contains(row.kind()))
                .findFirst();
    }

    private static Optional<BigDecimal> amount(Row row, Body body) {
        int column = -1;
        while (column + 1 < FROM_YEARS.length && body.ageYears() >= FROM_YEARS[column + 1]) {
            column++;
        }
        return column < 0 ? Optional.empty() : Optional.of(row.amounts().get(column));
    }

    private static List<Row> read() {
        try (InputStream in = DietaryReferenceIntakes.class.getResourceAsStream(TABLE)) {
            if (in == null) {
                throw new IllegalStateException(TABLE + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(DietaryReferenceIntakes::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(String line) {
        List<String> cells = List.of(line.split(",", 5 + FROM_YEARS.length)); // commas of the source are its own
        String sex = cells.get(2);
        return new Row(
                nutrient(cells.get(0)),
                Kind.valueOf(cells.get(1)),
                sex.equals("both") ? Optional.empty() : Optional.of(Sex.valueOf(sex.toUpperCase(Locale.ROOT))),
                cells.subList(3, 3 + FROM_YEARS.length).stream()
                        .map(BigDecimal::new)
                        .toList(),
                Counts.valueOf(cells.get(3 + FROM_YEARS.length).toUpperCase(Locale.ROOT)),
                new Citation(cells.get(4 + FROM_YEARS.length)));
    }

    private static Nutrient nutrient(String tagname) {
        return Nutrient.ofFoods().stream()
                .filter(n -> n.tagname().equals(tagname))
                .findFirst()
                .orElseThrow();
    }
}
