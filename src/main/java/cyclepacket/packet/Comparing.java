package cyclepacket.packet;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.page.ChangedTable;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** Two plans, issues or PDFs side by side. */
public final class Comparing {
    private final Path out;
    private final Path templates;

    /** @param out the folder with the registers */
    public Comparing(Path home, Path out) {
        this.out = out;
        templates = home.resolve("templates");
    }

    /**
     * Every day that differs, as a table; empty when none does.
     *
     * @param before a plan, a PDF, the folder of an issue, or a code
     * @throws Unclear when one of them is none of these or cannot be read
     */
    public String table(String before, String now) throws IOException {
        return ChangedTable.of(
                templates,
                Press.packetFacts(read(before), Optional.empty(), ""),
                Press.packetFacts(read(now), Optional.empty(), ""),
                LocalDate.MIN);
    }

    /** The plan and the issue that a name stands for. */
    public String title(String name) throws IOException {
        Plan plan = read(name).own().files().plan();
        return "plan " + plan.id() + ", issue " + plan.issue();
    }

    private Reckoning read(String name) throws IOException {
        Reckoning read = find(Path.of(name), name);
        if (read.planAndIssue().isEmpty()) {
            throw new Unclear(name + " cannot be read as a plan; ./cyclepacket check says why.");
        }
        return read;
    }

    private Reckoning find(Path path, String name) throws IOException {
        if (Files.isDirectory(path)) {
            return carried(path.resolve("chart.pdf"));
        }
        if (Files.isRegularFile(path)) {
            if (!name.endsWith(".pdf")) {
                return Reckoning.of(path);
            }
            // The patient's own packet carries nothing; the chart copy lies beside it.
            boolean isPacket = path.getFileName().toString().equals("packet.pdf");
            return carried(isPacket ? path.resolveSibling("chart.pdf") : path);
        }
        String code = CheckedCode.plain(name);
        if (CheckedCode.hasRightCheck(code)) {
            return coded(CheckedCode.grouped(code));
        }
        throw new Unclear("\"" + name + "\" is no plan, PDF, folder of an issue, or code.");
    }

    private static Reckoning carried(Path chart) throws IOException {
        try (CarriedPlan carried = CarriedPlan.unpack(chart)) {
            return Reckoning.ofCarried(carried.plan());
        }
    }

    private Reckoning coded(String code) throws IOException {
        for (Register register : Register.all(out)) {
            for (RegisterEntry entry : register.entries()) {
                if (entry.code().equals(code)) {
                    return carried(new OutFolder(out, register.plan(), entry.issue())
                            .path()
                            .resolve("chart.pdf"));
                }
            }
        }
        throw new Unclear("No issue in " + out + " has the code " + code + ".");
    }
}
