package cyclepacket.packet;

import cyclepacket.exchange.RegisterEntry;
import cyclepacket.exchange.RegisterJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was printed of one plan, oldest first. Written whole and moved into place, so that a crash leaves it readable. */
final class Register {
    static final String FILE = "register.json";

    private final Path folder;
    private final String plan;
    private final List<RegisterEntry> entries;

    private Register(Path folder, String plan, List<RegisterEntry> entries) {
        this.folder = folder;
        this.plan = plan;
        this.entries = List.copyOf(entries);
    }

    /** The register in {@code out/<plan>}; empty when nothing was printed yet. */
    static Register of(Path out, String plan) throws IOException {
        Path folder = out.resolve(plan);
        Path file = folder.resolve(FILE);
        List<RegisterEntry> entries = Files.exists(file)
                ? RegisterJson.read(Files.readString(file))
                        .orElseThrow(() -> new IOException(file + " is no register; restore it from a copy"))
                : List.of();
        return new Register(folder, plan, entries);
    }

    /** Every register below {@code out}, by plan. */
    static List<Register> all(Path out) throws IOException {
        if (!Files.isDirectory(out)) {
            return List.of();
        }
        List<Register> all = new ArrayList<>();
        try (Stream<Path> folders = Files.list(out)) {
            for (Path folder : folders.filter(each -> Files.exists(each.resolve(FILE)))
                    .sorted()
                    .toList()) {
                all.add(of(out, folder.getFileName().toString()));
            }
        }
        return all;
    }

    String plan() {
        return plan;
    }

    List<RegisterEntry> entries() {
        return entries;
    }

    /** The packet of an issue that went to the patient, the last one printed. */
    Optional<RegisterEntry> lastFinal(int issue) {
        return entries.stream()
                .filter(entry -> entry.issue() == issue && !entry.isDraft())
                .reduce((earlier, later) -> later);
    }

    /** The highest issue that went to the patient. */
    Optional<RegisterEntry> latestFinal() {
        return entries.stream().filter(entry -> !entry.isDraft()).max(Comparator.comparingInt(RegisterEntry::issue));
    }

    boolean holds(String code) {
        return entries.stream().anyMatch(entry -> entry.code().equals(code));
    }

    /** Only for who holds the folder's lock. */
    void add(RegisterEntry entry) throws IOException {
        List<RegisterEntry> all = new ArrayList<>(entries);
        all.add(entry);
        Path beside = folder.resolve(".register-" + Long.toHexString(System.nanoTime()));
        try {
            Durable.write(beside, RegisterJson.of(plan, all).getBytes(StandardCharsets.UTF_8));
            Durable.move(beside, folder.resolve(FILE));
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
