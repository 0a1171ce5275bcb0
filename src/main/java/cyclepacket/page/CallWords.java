package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Evening;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Revision;
import cyclepacket.plan.Revision.What;
import cyclepacket.quantity.Dose;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a navigator says on the phone for the changes of one issue, amounts digit by digit. */
public final class CallWords {
    /** Changes that say themselves what is taken from then on. */
    private static final Set<What> OF_ONE_MEDICINE = EnumSet.of(What.DOSE, What.STOP);

    private final PacketFacts facts;
    private final Plan plan;
    private final ChartWords words;
    private final List<String> lines = new ArrayList<>();

    private CallWords(Path templates, PacketFacts facts) {
        this.facts = facts;
        plan = facts.files().plan();
        words = new ChartWords(Wording.load(templates, ChartCopy.LANGUAGE));
    }

    /** @param templates the folder with the wording; one sentence a line, in the order of the call */
    public static List<String> of(Path templates, PacketFacts facts) {
        CallWords own = new CallWords(templates, facts);
        own.lines.add("Ask for two identifiers. Do not say them first.");
        Optional<Revision> end = own.changes().stream()
                .filter(line -> line.what() == What.CANCEL)
                .findFirst();
        end.ifPresentOrElse(own::ended, own::changed);
        return own.lines;
    }

    private List<Revision> changes() {
        return plan.revised().stream()
                .filter(line -> line.issue() == plan.issue())
                .toList();
    }

    private void ended(Revision end) {
        lines.add("Say: STOP. No more injections from " + day(end.from().orElseThrow())
                + " on, and no trigger. Have the patient say it back.");
        lines.add(
                "Have the patient cross out every evening from then on, take every page down, and keep the page My log.");
        lines.add("Say which signs mean: call us at once. They can come up to two weeks after the last injection.");
        lines.add("Ask what is left at home, and say what to do with it.");
    }

    private void changed() {
        changes().forEach(this::say);
        facts.daily().forEach(this::sayWhatHolds);
        lines.add("Have the patient cross out every evening that differs, write the new amount, and read back tonight"
                + " and tomorrow: day, amount, time.");
        lines.add("Ask for the last window number, the box in the pen, and what is left at home.");
    }

    private void say(Revision line) {
        String of = line.of().orElse("");
        switch (line.what()) {
            case DOSE ->
                facts.files()
                        .medicine(of)
                        .ifPresent(own -> lines.add("Say: " + own.name() + ", " + said(line, own) + ", from "
                                + day(line.from().orElse(line.on())) + " on."));
            case HOLD -> lines.add("Say: " + name(of) + ", NO INJECTION " + span(line) + ".");
            case STOP ->
                lines.add(
                        "Say: " + name(of) + ", no more from " + day(line.from().orElseThrow()) + " on.");
            case START ->
                lines.add("Say: " + name(of) + " starts on " + day(line.from().orElseThrow()) + ".");
            case HOUR ->
                lines.add("Say: the hour is " + time(LocalTime.parse(line.now().orElseThrow())) + " from "
                        + day(line.from().orElseThrow()) + " on.");
            case SWAP ->
                lines.add("Say: " + name(line.now().orElseThrow()) + " takes the place of " + name(of) + " from "
                        + day(line.from().orElseThrow()) + " on. Do not use it before we have shown it.");
            case CALL -> called(of, line.now().orElseThrow());
            case ANCHOR -> lines.add("Not to be said yet: " + of + " is planned and not called.");
            case CANCEL -> throw new IllegalStateException("a cycle that ends has its own words");
        }
    }

    private void called(String anchor, String moment) {
        if (!anchor.equals("T")) {
            String what = anchor.equals("S1") ? "the injections start" : anchor + " is";
            String at = moment.contains("T") ? " at " + time(LocalTime.parse(moment.substring(11))) : "";
            lines.add("Say: " + what + " on " + day(LocalDate.parse(moment.substring(0, 10))) + at
                    + ". Have it read back.");
            return;
        }
        for (DatedDose dose : facts.exact()) {
            lines.add("Say: " + name(dose.medicine()) + ", " + said(dose.amount()) + ", ONCE, on "
                    + day(dose.at().toLocalDate()) + " at exactly "
                    + time(dose.at().toLocalTime()) + ". Have the day, the time and the amount read back.");
        }
    }

    /** Evenings that are an instruction now, of a medicine whose own change did not say so. */
    private void sayWhatHolds(MedicineLedger ledger) {
        boolean isSaid = changes().stream()
                .anyMatch(line -> OF_ONE_MEDICINE.contains(line.what())
                        && line.of().filter(ledger.medicine().id()::equals).isPresent());
        Optional<Dose> last = Optional.empty();
        for (LedgerDay each : isSaid ? List.<LedgerDay>of() : ledger.days()) {
            Evening evening = each.evening();
            boolean isToSay = evening.state() == Evening.State.PLANNED
                    && !evening.isHeld()
                    && !evening.date().isBefore(facts.today());
            if (isToSay && !last.equals(Optional.of(evening.ordered()))) {
                String at = evening.at()
                        .map(ZonedDateTime::toLocalTime)
                        .map(time -> ", at " + time(time))
                        .orElse("");
                lines.add("Say: " + ledger.medicine().name() + ", " + said(evening.ordered()) + ", from "
                        + day(evening.date()) + " on" + at + ".");
                last = Optional.of(evening.ordered());
            }
        }
    }

    private String said(Revision line, Medicine medicine) {
        return said(Dose.of(line.now().orElseThrow().split(" ")[0], medicine.unit()));
    }

    private String said(Dose dose) {
        return words.said(dose) + " " + words.amounts().unit(dose);
    }

    private String name(String medicine) {
        return facts.files().medicine(medicine).map(Medicine::name).orElse(medicine);
    }

    private String span(Revision line) {
        LocalDate first = line.from().orElseThrow();
        LocalDate last = line.lastDay().orElse(first);
        return last.equals(first) ? "on " + day(first) : "from " + day(first) + " to " + day(last);
    }

    private String time(LocalTime time) {
        return words.time(time).replace(AmountWords.NO_BREAK, ' ');
    }

    private String day(LocalDate date) {
        return words.clock().day(date).full().replace(AmountWords.NO_BREAK, ' ');
    }
}
