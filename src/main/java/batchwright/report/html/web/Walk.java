package batchwright.report.html.web;

import java.util.List;

/**
 * In which order one walks through the sections of a shop. Common practice of supermarkets, nothing published: fresh fruit and vegetables by
 * the door, dry goods in the middle, what must stay cold last, so that it stays cold.
 */
final class Walk {
    private static final List<String> SECTIONS = List.of(
            "vegetable",
            "fruit",
            "starchy_vegetable",
            "grain",
            "legume",
            "nut_seed",
            "dried_fruit",
            "sauce",
            "fat_oil",
            "sweet",
            "other",
            "protein_powder",
            "egg",
            "dairy",
            "meat",
            "fish");

    private Walk() {}

    /** Sections that are not known come before those that stay cold. */
    static int place(String section) {
        int at = SECTIONS.indexOf(section);
        return at < 0 ? SECTIONS.indexOf("egg") : at;
    }
}
