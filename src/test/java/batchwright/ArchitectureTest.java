package batchwright;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows between packages, and which library is used where. */
class ArchitectureTest {
    private static final int MOST_COMPONENTS = 7;
    private static final String ROOT = "batchwright";
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    /** What each package may use of the others. */
    private static final Map<String, Set<String>> MAY_USE = mayUse();

    private static Map<String, Set<String>> mayUse() {
        var may = new TreeMap<String, Set<String>>();
        may.put("quantity", Set.of());
        may.put("text", Set.of());
        may.put("write", Set.of());
        may.put("food", Set.of("quantity", "text"));
        may.put("reference", Set.of("quantity", "text", "food"));
        may.put("person", Set.of("quantity", "text", "food"));
        may.put("limit", Set.of("food"));
        may.put("needs", Set.of("quantity", "text", "food", "person", "limit"));
        may.put("book", Set.of("text", "food"));
        may.put("files", Set.of("quantity", "text", "food", "person", "book"));
        may.put("plan", Set.of("quantity", "food", "person", "limit"));
        may.put("solve", Set.of("quantity", "food", "person", "limit", "plan"));
        may.put("schedule", Set.of("quantity", "food", "person", "plan"));
        may.put("audit", Set.of("quantity", "food", "person", "limit", "plan"));
        may.put("explain", Set.of("quantity", "food", "person", "limit", "plan", "audit"));
        may.put(
                "answer",
                Set.of(
                        "quantity",
                        "text",
                        "food",
                        "reference",
                        "person",
                        "limit",
                        "needs",
                        "book",
                        "plan",
                        "schedule",
                        "audit",
                        "explain"));
        may.put(
                "report",
                Set.of(
                        "quantity",
                        "text",
                        "food",
                        "reference",
                        "person",
                        "limit",
                        "needs",
                        "book",
                        "plan",
                        "schedule",
                        "audit",
                        "explain",
                        "answer"));
        may.put(
                "app",
                Set.of(
                        "quantity",
                        "text",
                        "food",
                        "reference",
                        "person",
                        "limit",
                        "needs",
                        "files",
                        "write",
                        "book",
                        "plan",
                        "solve",
                        "schedule",
                        "audit",
                        "explain",
                        "answer",
                        "report"));
        may.put(
                "cli",
                Set.of(
                        "quantity",
                        "text",
                        "food",
                        "reference",
                        "person",
                        "needs",
                        "plan",
                        "audit",
                        "answer",
                        "report",
                        "app",
                        "page"));
        may.put(
                "page",
                Set.of(
                        "quantity",
                        "text",
                        "food",
                        "person",
                        "limit",
                        "needs",
                        "book",
                        "plan",
                        "answer",
                        "report",
                        "app"));
        return may;
    }

    static List<String> packages() {
        return List.copyOf(MAY_USE.keySet());
    }

    @ParameterizedTest
    @MethodSource("packages")
    void arrows_between_packages_point_up_only(String name) {
        List<String> forbidden = new ArrayList<>();
        for (String other : MAY_USE.keySet()) {
            if (!other.equals(name) && !MAY_USE.getOrDefault(name, Set.of()).contains(other)) {
                forbidden.add(ROOT + "." + other + "..");
            }
        }
        noClasses()
                .that()
                .resideInAPackage(ROOT + "." + name + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden.toArray(new String[0]))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void every_package_has_its_arrows_named() {
        var found = new TreeSet<String>();
        CLASSES.forEach(
                c -> found.add(c.getPackageName().replace(ROOT + ".", "").split("\\.", 2)[0]));

        assertThat(MAY_USE.keySet()).containsAll(found);
    }

    @Test
    void there_are_no_cycles() {
        slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(CLASSES);
        for (String folder : List.of("needs", "files", "report")) {
            slices().matching(ROOT + "." + folder + ".(*)..")
                    .should()
                    .beFreeOfCycles()
                    .check(CLASSES);
        }
    }

    /** A stranger finds a class by its name alone. */
    @Test
    void no_two_classes_have_the_same_name() {
        var names = new TreeMap<String, TreeSet<String>>();
        CLASSES.stream()
                .filter(c -> c.isTopLevelClass() && !c.getSimpleName().equals("package-info"))
                .forEach(c -> names.computeIfAbsent(c.getSimpleName(), n -> new TreeSet<>())
                        .add(c.getName()));

        assertThat(names.values()).allSatisfy(same -> assertThat(same).hasSize(1));
    }

    /** A folder that holds more is about more than one thing. */
    @Test
    void no_folder_has_more_than_forty_files() {
        var files = new TreeMap<String, TreeSet<String>>();
        CLASSES.stream()
                .filter(c -> c.isTopLevelClass() && !c.getSimpleName().equals("package-info"))
                .forEach(c -> files.computeIfAbsent(c.getPackageName(), n -> new TreeSet<>())
                        .add(c.getSimpleName()));

        assertThat(files)
                .allSatisfy((folder, classes) -> assertThat(classes).as(folder).hasSizeLessThanOrEqualTo(40));
    }

    @ParameterizedTest
    @CsvSource({
        "org.ojalgo, solve",
        "picocli, cli",
        "com.fasterxml.jackson, report",
        "gg.jte, report",
        "io.javalin, page",
        "org.eclipse.jetty, page",
        "com.google.zxing, page",
        "org.apache.pdfbox, report.pdf",
        "org.apache.fontbox, report.pdf",
        "org.snakeyaml, files",
        "org.apache.commons.math3, needs"
    })
    void each_library_is_used_in_one_package(String library, String home) {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "." + home + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .check(CLASSES);
    }

    @Test
    void only_the_command_line_writes_to_the_console_and_ends_the_process() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + ".cli..")
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(CLASSES);
    }

    /** Who asks {@code Files.exists} takes what may not be looked at for what is not there; and a pipe has to be told from a file. */
    @Test
    void one_class_opens_files_of_the_user() {
        noClasses()
                .that()
                .resideInAPackage(ROOT + ".files..")
                .and()
                .haveSimpleNameNotContaining("OnDisk")
                .and()
                .haveSimpleNameNotContaining("StarterFiles")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.nio.file.Files")
                .check(CLASSES);
        noClasses()
                .that()
                .haveSimpleName("Workspace")
                .or()
                .haveSimpleName("Eaters")
                .or()
                .haveSimpleName("CheckFiles")
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.nio.file.Files")
                .check(CLASSES);
    }

    /** So that each file is written whole or not at all, and never over one that somebody else made. */
    @Test
    void only_the_write_layer_changes_files() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + ".write..")
                .should()
                .callMethodWhere(target(owner(assignableTo(Files.class)))
                        .and(target(nameMatching(
                                "write.*|create.*|copy|move|delete.*|set.*|newBufferedWriter|newOutputStream"))))
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.FileWriter")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.io.RandomAccessFile")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.nio.channels.FileChannel")
                .check(CLASSES);
    }

    /** What was found is said the same in a terminal, in JSON and on a page; only doors know options and commands. */
    @Test
    void nothing_below_a_door_knows_an_option_or_a_command() throws IOException {
        Pattern words = Pattern.compile("\"[^\"]*(?<![\\w-])--[a-z][a-z-]+|\"[^\"]*\\bthe command\\b"
                + "|\"[^\"]*\\b(needs|plan|dishes|foods|snack|check|init) (with )?(--|[A-Z]{3,}\\b)");
        List<String> found = new ArrayList<>();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java/batchwright"))) {
            for (Path source :
                    sources.filter(p -> p.toString().endsWith(".java")).toList()) {
                String path = source.toString().replace('\\', '/');
                if (!path.contains("/cli/") && !path.contains("/report/")) {
                    words.matcher(Files.readString(source)).results().forEach(m -> found.add(path + ": " + m.group()));
                }
            }
        }

        assertThat(found).isEmpty();
    }

    /** Nobody counts positions: what has more belongs to values of its own. The list only gets shorter. */
    @Test
    void a_record_has_at_most_seven_components() {
        Set<String> larger = new TreeSet<>();
        CLASSES.stream()
                .filter(type -> type.isRecord() && type.reflect().getRecordComponents().length > MOST_COMPONENTS)
                .forEach(type -> larger.add(type.getSimpleName()));

        assertThat(larger).containsExactly("Dish", "Eater", "Food", "Kitchen", "Pack");
    }

    @Test
    void nothing_reaches_for_the_network() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net.http..")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.net.Socket")
                .check(CLASSES);
    }
}
