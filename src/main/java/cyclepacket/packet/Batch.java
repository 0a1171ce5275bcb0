package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.packet.BatchLine.State;
import cyclepacket.page.CoverView;
import cyclepacket.pdf.Carried;
import cyclepacket.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
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
        BatchChoice choice = BatchChoice.of(plans, on, all);
        watch.expects(choice.settled().size() + choice.toPrint().size());
        choice.settled().forEach(watch::done);
        List<BatchLine> lines = new ArrayList<>(choice.settled());
        ConcurrentLinkedQueue<Path> waiting = new ConcurrentLinkedQueue<>(choice.toPrint());
        List<Map<Path, BatchLine>> done = inParallel(waiting, watch::done);
        Map<Path, BatchLine> byPlan = new LinkedHashMap<>();
        done.forEach(byPlan::putAll);
        choice.toPrint().forEach(plan -> lines.add(byPlan.get(plan)));
        return sheets(lines);
    }

    private List<Map<Path, BatchLine>> inParallel(ConcurrentLinkedQueue<Path> waiting, Consumer<BatchLine> told)
            throws IOException {
        ExecutorService crew = Executors.newFixedThreadPool(workers);
        Object turn = new Object();
        try {
            List<Future<Map<Path, BatchLine>>> runs = new ArrayList<>();
            for (int worker = 0; worker < Math.min(workers, Math.max(1, waiting.size())); worker++) {
                runs.add(crew.submit(() -> work(waiting, line -> {
                    synchronized (turn) {
                        told.accept(line);
                    }
                })));
            }
            List<Map<Path, BatchLine>> done = new ArrayList<>();
            for (Future<Map<Path, BatchLine>> run : runs) {
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
    private Map<Path, BatchLine> work(ConcurrentLinkedQueue<Path> waiting, Consumer<BatchLine> told) {
        Map<Path, BatchLine> done = new LinkedHashMap<>();
        try (Press press = new Press(home)) {
            for (Path plan = waiting.poll(); plan != null; plan = waiting.poll()) {
                BatchLine line = print(press, plan);
                done.put(plan, line);
                told.accept(line);
            }
        }
        return done;
    }

    private BatchLine print(Press press, Path plan) {
        try {
            Reckoning reckoning = Reckoning.of(plan);
            Plan own = reckoning.own().files().plan();
            Outcome outcome = press.print(plan, out, false, at);
            if (outcome.written().isEmpty()) {
                return BatchLine.without(plan, reckoning, State.FAILED, firstStop(outcome.findings()));
            }
            Outcome.Written written = outcome.written().get();
            return new BatchLine(
                    plan,
                    BatchLine.name(reckoning).orElseThrow(),
                    State.PRINTED,
                    "",
                    own.id(),
                    own.issue(),
                    press.sheets().initials(Press.packetFacts(reckoning, Optional.empty(), written.code())),
                    Carried.pages(Files.readAllBytes(written.folder().resolve("packet.pdf"))),
                    written.code());
        } catch (IOException unreadable) {
            return BatchLine.without(plan, State.FAILED, "it could not be read or written");
        } catch (RuntimeException fault) {
            // Recorded with its kind, and the run goes on: the other patients wait for their packets.
            return BatchLine.without(plan, State.FAULT, "a fault of the program: " + fault);
        }
    }

    static String firstStop(List<Finding> findings) {
        return findings.stream()
                .filter(Finding::isStop)
                .map(found -> found.text() + " [" + found.code() + "]")
                .findFirst()
                .orElse("it was refused");
    }

    private BatchReport sheets(List<BatchLine> lines) throws IOException {
        List<BatchLine> printed = lines.stream().filter(BatchLine::isPrinted).toList();
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, Path> packets = new LinkedHashMap<>();
        try (Press press = new Press(home)) {
            files.put("000-cover-list.pdf", press.sheet(cover(press, lines, printed), "Print run of " + on, on));
            for (int index = 0; index < printed.size(); index++) {
                BatchLine line = printed.get(index);
                String number = String.format(Locale.ROOT, "%03d-", index + 1);
                Reckoning reckoning = Reckoning.of(line.plan());
                String page = press.sheets()
                        .separator(Press.packetFacts(reckoning, Optional.empty(), line.code()), line.pages());
                files.put(number + "a-separator.pdf", press.sheet(page, "Separator " + line.code(), on));
                packets.put(
                        number + "b-packet.pdf",
                        new OutFolder(out, line.id(), line.issue()).path().resolve("packet.pdf"));
            }
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
