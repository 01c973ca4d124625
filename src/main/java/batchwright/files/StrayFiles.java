package batchwright.files;

import batchwright.text.NearestName;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Warns of files that are not read and whose names come near to one that is. Other files may lie where they like. */
final class StrayFiles {
    private static final String FOODS = "foods";
    private static final String DISHES = "foods/dishes";
    private static final String PROFILES = "profiles";
    private static final List<String> FOOD_TABLES = List.of("catalogue", "labels", "measures", "shop", "yields");
    private static final List<String> PROFILE_TABLES = List.of("pantry");
    private static final Pattern PAGE = Pattern.compile("[^.].*\\.(yaml|yml|yaml\\.txt)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TABLE =
            Pattern.compile("([^.]+)\\.(csv|csv\\.txt|txt|tsv|xls|xlsx|ods|numbers)", Pattern.CASE_INSENSITIVE);

    private final DataFiles files;
    private final Problems problems;

    StrayFiles(DataFiles files, Problems problems) {
        this.files = files;
        this.problems = problems;
    }

    void check() {
        files.list(FOODS).forEach(path -> tableOrDish(path));
        files.folders(FOODS).forEach(this::folder);
        pages(DISHES);
        pages(PROFILES);
        foldersForPages(DISHES);
        foldersForPages(PROFILES);
        files.list(PROFILES).forEach(path -> table(path, PROFILES, PROFILE_TABLES));
    }

    private void tableOrDish(String path) {
        if (PAGE.matcher(name(path)).matches()) {
            warn(path, "a dish here is not read", "expected it in the folder " + DISHES, Optional.empty());
        } else {
            table(path, FOODS, FOOD_TABLES);
        }
    }

    private void table(String path, String folder, List<String> known) {
        var parts = TABLE.matcher(name(path));
        if (!parts.matches() || known.stream().anyMatch(table -> path.equals(folder + "/" + table + ".csv"))) {
            return;
        }
        NearestName.of(parts.group(1), known)
                .ifPresent(table -> warn(
                        path,
                        "this file is not read",
                        "expected another name if it should be",
                        Optional.of(folder + "/" + table + ".csv")));
    }

    private void folder(String path) {
        boolean pages = files.list(path).stream()
                .anyMatch(file -> PAGE.matcher(name(file)).matches());
        if (pages
                && !path.equals(DISHES)
                && NearestName.of(name(path), List.of("dishes")).isPresent()) {
            warn(
                    path,
                    "dishes in this folder are not read",
                    "expected another name if they should be",
                    Optional.of(DISHES));
        }
    }

    private void pages(String folder) {
        for (String path : files.list(folder)) {
            var page = PAGE.matcher(name(path));
            if (page.matches() && !path.endsWith(".yaml")) {
                warn(
                        path,
                        "files ending in .%s are not read".formatted(page.group(1)),
                        "expected the ending .yaml",
                        Optional.empty());
            }
        }
    }

    /** A folder has taken the place of a page: it is easily overlooked in a list of files. */
    private void foldersForPages(String folder) {
        files.folders(folder).stream()
                .filter(path -> path.endsWith(".yaml"))
                .forEach(path -> warn(path, "this is a folder", "expected a file of this name", Optional.empty()));
    }

    private void warn(String path, String wrong, String expected, Optional<String> nearest) {
        var file = new SourceFile(files.shown(path), List.of());
        problems.add(Problem.warning(Span.whole(file), wrong, expected).near(nearest));
    }

    private static String name(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
