package cyclepacket.packet;

import cyclepacket.intake.PlanReader;
import cyclepacket.intake.PlanText;
import cyclepacket.plan.Plan.Countersigned;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Lays a folder of countersigned plans for a print run: the demo's issue 3 under many plan ids, all invented. */
public final class BatchPlans {
    /** @param args the project's folder, a folder to make, how many */
    public static void main(String[] args) throws IOException {
        Path plans = Path.of(args[0]).resolve("plans");
        Path made = Path.of(args[1]);
        for (Path file : files(plans)) {
            if (!file.getParent().endsWith("patients")) {
                Path copy = made.resolve(plans.relativize(file));
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Files.createDirectories(made.resolve("patients"));
        String signed = Files.readString(plans.resolve("patients/SM-04417-issue-3.yaml"));
        for (int number = 0; number < Integer.parseInt(args[2]); number++) {
            String id = String.format(Locale.ROOT, "KB-%05d", number);
            Path plan = made.resolve("patients").resolve(id + ".yaml");
            byte[] text = signed.replace("SM-04417", id).getBytes(StandardCharsets.UTF_8);
            Files.write(plan, text);
            String code = Codes.countersign(PlanReader.read(plan, text).sources());
            Countersigned sign = new Countersigned("R. Lindqvist (invented)", LocalDate.of(2027, 3, 12), code);
            Files.write(plan, PlanText.withCountersigned(text, sign));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }
}
