package cyclepacket.safety;

import cyclepacket.course.Course;
import cyclepacket.finding.Finding;
import cyclepacket.finding.FindingText;
import cyclepacket.intake.Intake;
import cyclepacket.intake.PlanReader;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.PlanFiles;
import cyclepacket.supply.SupplyPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** A copy of the demo's files with a few words changed, read and checked as the program does it. */
final class EditedDemo {
    private static final Path DEMO = Path.of("plans");

    /** What the rules are asked about; a run that changes nothing but the rules reads and computes each case once. */
    private static final Map<Path, EditedDemo> LAID = new ConcurrentHashMap<>();

    private final Intake intake;
    private Optional<Computed> computed = Optional.empty();

    /** Everything that the rules see. */
    private record Computed(PlanFiles files, Course course, CycleLedger ledger, SupplyPlan supply) {}

    private EditedDemo(Path plan) throws IOException {
        intake = PlanReader.read(plan);
    }

    /** The demo as it is. */
    static EditedDemo unchanged(String plan) throws IOException {
        return new EditedDemo(DEMO.resolve(plan));
    }

    /** The demo with the changes of a case folder, laid out below {@code target}. */
    static EditedDemo lay(Path folder, Path target) throws IOException {
        EditedDemo before = LAID.get(folder);
        if (before != null) {
            return before;
        }
        EditedDemo laid = layAnew(folder, target);
        LAID.put(folder, laid);
        return laid;
    }

    private static EditedDemo layAnew(Path folder, Path target) throws IOException {
        copy(DEMO, target);
        if (Files.isDirectory(folder.resolve("medicines"))) {
            copy(folder.resolve("medicines"), target.resolve("medicines"));
        }
        Edits edits = Edits.read(folder.resolve("edits.txt"));
        edits.applyTo(target);
        return new EditedDemo(target.resolve(edits.plan()));
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(from)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Path target = to.resolve(from.relativize(file).toString());
            Files.createDirectories(target.getParent());
            Files.write(target, Files.readAllBytes(file));
        }
    }

    /** The records; an edit that the reader itself refuses is a mistake of the case. */
    PlanFiles files() {
        return intake.files()
                .value()
                .orElseThrow(() -> new AssertionError("the reader refuses it: "
                        + FindingText.print(intake.files().findings())));
    }

    private Computed computed() {
        if (computed.isEmpty()) {
            PlanFiles files = files();
            Course course = Course.of(files);
            CycleLedger ledger = CycleLedger.of(files, course);
            computed = Optional.of(new Computed(files, course, ledger, SupplyPlan.of(files, ledger)));
        }
        return computed.orElseThrow();
    }

    List<Finding> findings() {
        Computed plan = computed();
        return located(SafetyCheck.of(plan.files(), plan.course(), plan.ledger(), plan.supply()));
    }

    /** What some of the rules say. */
    List<Finding> findings(Predicate<Rule> some) {
        Computed plan = computed();
        ComputedPlan all = new ComputedPlan(plan.files(), plan.course(), plan.ledger(), plan.supply());
        return located(SafetyCheck.rules()
                .filter(some)
                .flatMap(rule -> rule.findings(all).stream())
                .toList());
    }

    private List<Finding> located(List<Finding> findings) {
        return Finding.sorted(findings.stream()
                .map(finding -> finding.locatedBy(intake.places()))
                .toList());
    }
}
