package cyclepacket.packet;

import cyclepacket.finding.Finding;
import cyclepacket.finding.Place;
import cyclepacket.intake.FlowLine;
import cyclepacket.intake.PlanEdit;
import cyclepacket.ledger.Container;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.Draw;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** One numbered box of a plan and its line under on-hand. */
record Stock(MedicineLedger ledger, ContainerLine line, List<Plan.Stock> lines) {

    /** @throws Unclear if no such box is at home, or it is empty already */
    static Stock find(Reckoning.Computed own, String medicine, int box) {
        MedicineLedger ledger = own.ledger()
                .of(medicine)
                .orElseThrow(
                        () -> new Unclear("the plan has no " + medicine + "; write the medicine as the plan does."));
        ContainerLine line = ledger.containers().stream()
                .filter(each -> each.container().number() == box)
                .findFirst()
                .orElseThrow(
                        () -> new Unclear("there is no box " + box + "; count the boxes in loading order from 1."));
        if (line.hasEnded()) {
            throw new Unclear("box " + box + " is empty already" + "; there is nothing to record.");
        }
        return new Stock(ledger, line, own.files().plan().onHand().get(medicine));
    }

    /** A box that was loaded before its turn, or that was in the pen already. */
    static Optional<Finding> outOfOrder(Reckoning.Computed own, Happening told) {
        if (told.loaded().isEmpty()) {
            return Optional.empty();
        }
        int box = told.loaded().get();
        Optional<Stock> first = own.ledger()
                .of(told.medicine())
                .flatMap(ledger -> ledger.inUse().map(line -> new Stock(ledger, line, List.of())));
        if (first.isEmpty()) {
            return Optional.empty();
        }
        int number = first.get().line().container().number();
        boolean isAgain = box == number
                && first.get().isInUse()
                && first.get().ledger().draws().stream()
                        .noneMatch(draw -> draw.date().equals(told.evening())
                                && !draw.stops().isEmpty());
        if (box < number || isAgain) {
            return Optional.of(doubt(
                    own,
                    "box " + box + " was loaded, and box " + number + " is in the pen already",
                    "ask which box is in the pen, and on which evening it was loaded"));
        }
        Optional<Integer> due = first.get().isInUse() ? after(first.get().ledger(), number) : Optional.of(number);
        return due.filter(next -> next < box)
                .map(next -> doubt(
                        own,
                        "box " + box + " was loaded, and box " + next + " comes next",
                        "read the number on the box again; if it stands, put on-hand into the order of loading"));
    }

    private static Optional<Integer> after(MedicineLedger ledger, int box) {
        return ledger.containers().stream()
                .map(each -> each.container().number())
                .filter(number -> number > box)
                .findFirst();
    }

    private static Finding doubt(Reckoning.Computed own, String text, String mend) {
        return Finding.stop("RECORD-BOX-ORDER", Place.at(own.files().planFile(), "/record"), text, mend);
    }

    /** Whether medicine was drawn from it, as far as the record tells. */
    boolean isInUse() {
        boolean isNext = ledger.inUse()
                .map(own -> own.container().number())
                .filter(own -> own == line.container().number())
                .isPresent();
        Dose ended = ledger.containers().stream()
                .filter(ContainerLine::hasEnded)
                .map(ContainerLine::leastTotal)
                .reduce(Dose.zero(ledger.medicine().unit()), Dose::max);
        boolean isDrawn = ledger.draws().stream()
                .filter(Draw::isRecorded)
                .anyMatch(draw -> draw.after().isMoreThan(ended));
        boolean isPen = ledger.medicine().device().pen().isPresent();
        return isPen && isNext && (isDrawn || line.container().opened().isPresent());
    }

    int next() {
        return after(ledger, line.container().number()).orElse(line.container().number() + 1);
    }

    /** Marks it in its line, which is divided when it tells of several alike. */
    PlanEdit thrownAway(PlanEdit plan, LocalDate on, String reason) {
        int at = line.container().stock();
        Plan.Stock stock = lines.get(at);
        int before = placeInLine();
        int after = stock.count() - before - 1;
        String list = "/on-hand/" + ledger.medicine().id();
        PlanEdit edit = plan;
        if (before == 0) {
            edit = stock.count() > 1 ? edit.put(list + "/" + at + "/count", "1") : edit;
            edit = edit.put(list + "/" + at + "/discarded", on.toString())
                    .put(list + "/" + at + "/reason", FlowLine.text(reason));
        } else {
            edit = edit.put(list + "/" + at + "/count", Integer.toString(before))
                    .insert(
                            list,
                            at + 1,
                            copy(stock, 1)
                                    .plain("discarded", on)
                                    .text("reason", reason)
                                    .toString());
        }
        return after == 0
                ? edit
                : edit.insert(
                        list, at + (before == 0 ? 1 : 2), copy(stock, after).toString());
    }

    private int placeInLine() {
        int first = ledger.containers().stream()
                .map(ContainerLine::container)
                .filter(each -> each.stock() == line.container().stock())
                .mapToInt(Container::number)
                .min()
                .orElseThrow();
        return line.container().number() - first;
    }

    private static FlowLine copy(Plan.Stock stock, int count) {
        FlowLine line = new FlowLine().plain("size", stock.size().number().toPlainString());
        if (count > 1) {
            line.plain("count", count);
        }
        stock.lot().ifPresent(lot -> line.text("lot", lot));
        stock.expires().ifPresent(day -> line.plain("expires", day));
        stock.received().ifPresent(day -> line.plain("received", day));
        return line;
    }
}
