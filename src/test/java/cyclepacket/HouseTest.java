package cyclepacket;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The floors and arrows of DEVELOPERS.md: an arrow points down only, and each outside library is seen by one package. */
class HouseTest {
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("cyclepacket");

    private static final String SUMS = "quantity plan course ledger supply";

    private static final Map<String, String> MAY_USE = new TreeMap<>(Map.ofEntries(
            Map.entry("quantity", ""),
            Map.entry("finding", ""),
            Map.entry("plan", "quantity"),
            Map.entry("course", "plan quantity"),
            Map.entry("ledger", "course plan quantity"),
            Map.entry("supply", "ledger course plan quantity"),
            Map.entry("safety", SUMS + " finding"),
            Map.entry("wording", "finding"),
            Map.entry("intake", "plan quantity finding"),
            Map.entry("page", SUMS + " safety wording finding"),
            Map.entry("pdf", "finding"),
            Map.entry("exchange", SUMS + " finding"),
            Map.entry("packet", SUMS + " finding safety wording intake page pdf exchange"),
            Map.entry("cli", "packet finding")));

    private static final Map<String, String> SEEN_BY = Map.of(
            "org.snakeyaml..", "intake",
            "com.networknt..", "intake",
            "tools.jackson..", "intake exchange",
            "biweekly..", "exchange",
            "freemarker..", "page",
            "com.openhtmltopdf..", "pdf",
            "org.apache..", "pdf",
            "com.ibm.icu..", "page",
            "picocli..", "cli");

    @TestFactory
    Stream<DynamicTest> pointsArrowsDownOnly() {
        return MAY_USE.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    TreeSet<String> forbidden = new TreeSet<>(MAY_USE.keySet());
                    forbidden.remove(entry.getKey());
                    forbidden.removeAll(List.of(entry.getValue().split(" ")));
                    noClasses()
                            .that()
                            .resideInAPackage("cyclepacket." + entry.getKey())
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(forbidden.stream()
                                    .map(name -> "cyclepacket." + name)
                                    .toArray(String[]::new))
                            .check(CODE);
                }));
    }

    @TestFactory
    Stream<DynamicTest> showsEachLibraryToOnePackage() {
        return SEEN_BY.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
                    String[] seers = Stream.of(entry.getValue().split(" "))
                            .map(name -> "cyclepacket." + name)
                            .toArray(String[]::new);
                    noClasses()
                            .that()
                            .resideOutsideOfPackages(seers)
                            .should()
                            .dependOnClassesThat()
                            .resideInAPackage(entry.getKey())
                            .check(CODE);
                }));
    }

    @Test
    void keepsFilesNetworkAndClockOutOfTheComputation() {
        String[] pure = Stream.of((SUMS + " finding safety wording").split(" "))
                .map(name -> "cyclepacket." + name)
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAnyPackage(pure)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io", "java.nio..", "java.net..")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(java.time.Clock.class)
                .check(CODE);
    }

    @Test
    void readsTheClockAndPrintsInCliAlone() {
        ArchRule rule = noClasses()
                .that()
                .resideOutsideOfPackage("cyclepacket.cli")
                .should()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err");
        rule.check(CODE);
    }

    @Test
    void keepsBinaryFloatingPointOutOfTheComputation() {
        String[] pure = Stream.of((SUMS + " safety").split(" "))
                .map(name -> "cyclepacket." + name)
                .toArray(String[]::new);
        com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields()
                .that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(pure)
                .should()
                .haveRawType(double.class)
                .orShould()
                .haveRawType(float.class)
                .check(CODE);
        com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(pure)
                .should()
                .haveRawReturnType(double.class)
                .orShould()
                .haveRawReturnType(float.class)
                .check(CODE);
    }
}
