package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.packet.BatchLine.State;
import cyclepacket.page.CoverView;
import cyclepacket.page.PacketFacts;
import cyclepacket.pdf.Carried;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Prints every plan of a folder that has a visit on one day, on all cores. One bad plan never stops the rest, and each
 * packet is the same bytes as alone.
 */
public final class Batch {
    private final Path home;
    private final Path out;
    private final LocalDate on;
    private final Instant at;
    private final int workers;

    /** @param at when, for the registers alone */
    public Batch(Path home, Path out, LocalDate on, Instant at, int workers) {
        this.home = home;
        this.out = out;
        this.on = on;
        this.at = at;
        this.workers = workers;
    }

    /** The plans of a folder in the order of their names; a hidden file is what some program left, not a plan. */
    public static List<Path> plansIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches("[^.].*\\.yaml"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList();
        }
    }

    /**
     * Prints them.
     *
     * @param all whether plans without a visit on that day are printed too
     * @param watch is told how far the run is
     */
    public BatchReport run(List<Path> plans, boolean all, BatchWatch watch) throws IOException {
        BatchChoice choice = BatchChoice.of(home.resolve("templates"), plans, on, all);
        watch.expects(choice.settled().size() + choice.toPrint().size());
        choice.settled().forEach(watch::done);
        List<BatchLine> lines = new ArrayList<>(choice.settled());
        ConcurrentLinkedQueue<Path> waiting = new ConcurrentLinkedQueue<>(choice.toPrint());
        Map<Path, Made> byPlan = new HashMap<>();
        inParallel(waiting, watch::done).forEach(byPlan::putAll);
        List<Made> made = choice.toPrint().stream().map(byPlan::get).toList();
        made.forEach(each -> lines.add(each.line()));
        return sheets(lines, made);
    }

    private List<Map<Path, Made>> inParallel(ConcurrentLinkedQueue<Path> waiting, Consumer<BatchLine> told)
            throws IOException {
        ExecutorService crew = Executors.newFixedThreadPool(workers);
        Object turn = new Object();
        try {
            List<Future<Map<Path, Made>>> runs = new ArrayList<>();
            for (int worker = 0; worker < Math.min(workers, Math.max(1, waiting.size())); worker++) {
                runs.add(crew.submit(() -> work(waiting, line -> {
                    synchronized (turn) {
                        told.accept(line);
                    }
                })));
            }
            List<Map<Path, Made>> done = new ArrayList<>();
            for (Future<Map<Path, Made>> run : runs) {
                done.add(run.get());
            }
            return done;
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("the print run was interrupted", stopped);
        } finally {
            crew.shutdownNow();
        }
    }

    /** Each worker has a press of its own: a press sets one document at a time. */
    private Map<Path, Made> work(ConcurrentLinkedQueue<Path> waiting, Consumer<BatchLine> told) {
        Map<Path, Made> done = new HashMap<>();
        try (Press press = new Press(home)) {
            for (Path plan = waiting.poll(); plan != null; plan = waiting.poll()) {
                Made made = make(press, plan);
                done.put(plan, made);
                told.accept(made.line());
            }
        }
        return done;
    }

    private Made make(Press press, Path plan) {
        try {
            Reckoning reckoning = Reckoning.of(plan).in(home.resolve("templates"));
            Outcome outcome = press.print(reckoning, plan, out, at);
            if (outcome.written().isEmpty()) {
                return Made.none(BatchLine.without(plan, reckoning, State.FAILED, firstStop(outcome.findings())));
            }
            return printed(press, plan, reckoning, outcome.written().get());
        } catch (IOException unreadable) {
            return Made.none(BatchLine.without(plan, State.FAILED, "it could not be read or written"));
        } catch (RuntimeException fault) {
            // Recorded with its kind, and the run goes on: the other patients wait for their packets.
            return Made.none(BatchLine.without(plan, State.FAULT, "a fault of the program: " + fault));
        }
    }

    private Made printed(Press press, Path plan, Reckoning reckoning, Outcome.Written written) throws IOException {
        PacketFacts facts = Press.packetFacts(reckoning, Optional.empty(), written.code());
        int pages = Carried.pages(Files.readAllBytes(written.folder().resolve("packet.pdf")));
        Plan own = reckoning.own().files().plan();
        BatchLine line = new BatchLine(
                plan,
                BatchLine.name(reckoning).orElseThrow(),
                State.PRINTED,
                "",
                own.id(),
                own.issue(),
                press.sheets().initials(facts),
                pages,
                written.code());
        String separator = press.sheets().separator(facts, pages);
        return new Made(line, Optional.of(press.sheet(separator, "Separator " + line.code(), on)));
    }

    /** What became of one plan, and the sheet that goes before its packet. */
    private record Made(BatchLine line, Optional<byte[]> separator) {
        static Made none(BatchLine line) {
            return new Made(line, Optional.empty());
        }
    }

    static String firstStop(List<Finding> findings) {
        return findings.stream()
                .filter(Finding::isStop)
                .map(found -> found.text() + " [" + found.code() + "]")
                .findFirst()
                .orElse("it was refused");
    }

    private BatchReport sheets(List<BatchLine> lines, List<Made> made) throws IOException {
        List<Made> printed =
                made.stream().filter(each -> each.line().isPrinted()).toList();
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, Path> packets = new LinkedHashMap<>();
        try (Press press = new Press(home)) {
            List<BatchLine> rows = printed.stream().map(Made::line).toList();
            files.put("000-cover-list.pdf", press.sheet(cover(press, lines, rows), "Print run of " + on, on));
        }
        for (int index = 0; index < printed.size(); index++) {
            BatchLine line = printed.get(index).line();
            String number = String.format(Locale.ROOT, "%03d-", index + 1);
            files.put(number + "a-separator.pdf", printed.get(index).separator().orElseThrow());
            packets.put(
                    number + "b-packet.pdf",
                    new OutFolder(out, line.id(), line.issue()).path().resolve("packet.pdf"));
        }
        Durable.createFolders(out);
        OutFolder folder = new OutFolder(out.resolve("batch-" + on));
        FolderLock.holding(out, () -> {
            OutFolder.tidy(out);
            folder.write(files, packets);
            return folder;
        });
        return new BatchReport(folder.path(), lines);
    }

    private String cover(Press press, List<BatchLine> lines, List<BatchLine> printed) {
        List<CoverView.Printed> rows = new ArrayList<>();
        for (BatchLine line : printed) {
            rows.add(new CoverView.Printed(
                    Integer.toString(rows.size() + 1),
                    line.id(),
                    line.initials(),
                    Integer.toString(line.issue()),
                    Integer.toString(line.pages()),
                    line.code()));
        }
        List<CoverView.Other> others = lines.stream()
                .filter(line -> !line.isPrinted())
                .map(line -> new CoverView.Other(line.file(), line.why()))
                .toList();
        int pages = printed.stream().mapToInt(BatchLine::pages).sum();
        return press.sheets().cover(on, Plan.Paper.LETTER.name(), pages, rows, others);
    }
}
