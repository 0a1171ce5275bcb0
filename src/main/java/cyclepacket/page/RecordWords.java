package cyclepacket.page;

import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.plan.Device.Window;
import cyclepacket.plan.RecordLine;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a fact that was just told means, in the sentences a navigator says on the phone. */
public final class RecordWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    private final MedicineLedger ledger;
    private final List<String> words = new ArrayList<>();

    private RecordWords(MedicineLedger ledger) {
        this.ledger = ledger;
    }

    /**
     * @param then the medicine's ledger without the fact
     * @param now its ledger with it
     * @param line the fact, line {@code index} of the record
     */
    public static List<String> of(Optional<MedicineLedger> then, MedicineLedger now, RecordLine line, int index) {
        RecordWords own = new RecordWords(now);
        own.fact(line);
        now.draws().stream()
                .filter(draw -> draw.recordLine().filter(at -> at == index).isPresent())
                .forEach(draw -> own.draw(draw, line));
        own.ends(then);
        return own.words;
    }

    /** What a box that came, or that was thrown away, changes. */
    public static List<String> ofStock(Optional<MedicineLedger> then, Optional<MedicineLedger> now) {
        if (now.isEmpty()) {
            return List.of();
        }
        RecordWords own = new RecordWords(now.get());
        List<String> boxes = now.get().containers().stream()
                .filter(line -> !line.hasEnded())
                .map(line -> "box " + line.container().number() + " ("
                        + line.container().label() + ")")
                .toList();
        own.say(
                boxes.isEmpty()
                        ? "No box is left at home. Order today."
                        : "Boxes at home, in loading order: " + String.join(", ", boxes) + ".");
        own.ends(then);
        own.reach();
        return own.words;
    }

    private void say(String sentence) {
        words.add(sentence);
    }

    private static String day(LocalDate date) {
        return DAY.format(date);
    }

    private void fact(RecordLine line) {
        line.at().ifPresent(at -> say("A late dose. It belongs to the evening of " + day(line.date()) + "."));
        line.insteadOf()
                .ifPresent(due -> say("A wrong medicine was taken in place of " + due + ". Tell the prescriber now."));
        if (line.given() instanceof RecordLine.Given.Missed) {
            say("Missed: nothing was given on " + day(line.date()) + ". Ask the prescriber what comes next.");
        }
        if (line.given() instanceof RecordLine.Given.Unknown) {
            say("Nobody knows how much was given. The ledger counts from nothing to the whole setting.");
        }
        line.loaded().ifPresent(box -> say("Box " + box + " is in the pen from this evening on."));
        line.lost().ifPresent(lost -> say(lost + " reached nobody. The supply counts without them."));
    }

    private void draw(Draw draw, RecordLine line) {
        draw.given().ifPresent(given -> {
            if (given.isLessThan(draw.dialled())) {
                say("Given: " + given + " of " + draw.dialled() + ". Not given: "
                        + draw.dialled().minus(given) + ". Ask the prescriber.");
            }
        });
        if (line.windows().stream().allMatch(Dose::isZero) && !line.windows().isEmpty()) {
            say("The window reached 0: the whole setting went in, and no box ended.");
        }
        for (Draw.Stop stop : draw.stops()) {
            stop(draw, stop, line);
        }
    }

    private void stop(Draw draw, Draw.Stop stop, RecordLine line) {
        Optional<ContainerLine> box = ledger.containers().stream()
                .filter(each -> each.read().contains(stop))
                .findFirst();
        if (box.isEmpty() || line.windows().isEmpty()) {
            return;
        }
        int number = box.get().container().number();
        Dose fromOld = stop.total().minus(draw.before());
        say("Box " + number + " gave " + fromOld + " of tonight's " + draw.dialled() + " and is empty.");
        Dose rest = draw.dialled().minus(fromOld.min(draw.dialled()));
        boolean isWhole = draw.given().filter(draw.dialled()::equals).isPresent();
        String verb = isWhole ? " came from the new box." : " was owed and must come from a new box.";
        if (!rest.isZero()) {
            say(
                    ledger.medicine().device().pen().orElseThrow().window() == Window.OWED
                            ? "The number in the window, " + stop.window() + ", is what was still owed; it"
                                    + verb.replace("it was", "was")
                            : "The pen stopped at " + stop.window() + "; the rest, " + rest + "," + verb);
        }
        fill(box.get(), stop);
        if (!stop.isConfirmed()) {
            say("The number was not read back. Ask the patient to read it again; until then it narrows nothing.");
        }
    }

    private void fill(ContainerLine box, Draw.Stop stop) {
        List<ContainerLine> all = ledger.containers();
        int index = all.indexOf(box);
        Dose low = stop.total().minus(stop.total().min(before(index, true)));
        Dose high = stop.total().minus(stop.total().min(before(index, false)));
        String gave = low.equals(high) ? low.toString() : low.number().toPlainString() + " to " + high;
        Dose least = box.container().least();
        Dose most = box.container().most();
        boolean fits = !high.isLessThan(least) && !low.isMoreThan(most);
        say("In all, box " + box.container().number() + " gave " + gave + ". A box of "
                + box.container().label() + " gives " + least.number().toPlainString() + " to " + most
                + (fits ? ": this fits." : ": this cannot be, or only just. Read the number and the box again."));
    }

    private Dose before(int index, boolean most) {
        if (index == 0) {
            return Dose.zero(ledger.medicine().unit());
        }
        ContainerLine line = ledger.containers().get(index - 1);
        return most ? line.mostTotal() : line.leastTotal();
    }

    private void ends(Optional<MedicineLedger> then) {
        if (ledger.medicine().device().pen().isEmpty()) {
            return;
        }
        String before = then.map(RecordWords::nextEnd).orElse("not known");
        String after = nextEnd(ledger);
        say(
                before.equals(after)
                        ? "The next end stays as it was: " + after + "."
                        : "Next end before this: " + before + ".");
        if (!before.equals(after)) {
            say("Next end now: " + after + ".");
        }
    }

    private void reach() {
        say(ledger.covered()
                .surelyUntil()
                .map(last -> "Enough for sure until " + day(last) + ".")
                .orElse("The first dose is already short."));
    }

    private static String nextEnd(MedicineLedger ledger) {
        Optional<ContainerLine> coming = ledger.coming();
        if (coming.isEmpty()) {
            return "no box ends before the last injection";
        }
        int number = coming.get().container().number();
        List<String> evenings = new ArrayList<>();
        for (LedgerDay each : ledger.days()) {
            for (DayChange change : each.changes()) {
                if (change.leaving() == number && each.evening().isToCome()) {
                    evenings.add((change.isCertain() ? "" : "maybe ")
                            + day(each.evening().date())
                            + change.owed()
                                    .map(owed -> ", number " + owed(owed))
                                    .orElse(", past its days"));
                }
            }
        }
        return "box " + number + " "
                + (evenings.isEmpty() ? "on an evening in the past that nobody told" : String.join("; ", evenings));
    }

    private static String owed(Owed owed) {
        if (owed.isExact()) {
            return owed.most().toString();
        }
        String least = owed.isAboveZero() ? "above 0" : owed.least().number().toPlainString();
        return least + " to " + owed.most();
    }
}
