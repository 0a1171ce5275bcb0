package cyclepacket.intake;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.Anchoring;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.Pattern;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import java.time.Duration;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds the record of the protocol file. */
final class ProtocolBuilder {
    private final Field top;
    private final Anchors anchors;
    private final Shelf shelf;

    ProtocolBuilder(Sheet sheet, Anchors anchors, Shelf shelf) {
        this.top = sheet.top();
        this.anchors = anchors;
        this.shelf = shelf;
    }

    Part<Protocol> protocol() {
        Part<String> id = top.at("protocol").text();
        Part<String> title = top.at("title").text();
        Part<Map<Anchor, String>> meanings = meanings(top.at("anchors"));
        Part<Map<Anchor, Duration>> triggerBefore = triggerBefore(top.at("anchors"));
        Part<Optional<Protocol.StimulationDays>> days =
                top.at("stimulation-days").ifWritten(ProtocolBuilder::stimulationDays);
        Part<Anchoring> anchoring = new AnchoringBuilder(top, anchors).anchoring();
        Part<Optional<Protocol.Aim>> aim = top.at("aim").ifWritten(field -> field.word(Protocol.Aim.class));
        Part<List<Protocol.Row>> rows = top.at("rows").each(this::row);
        Part<List<Protocol.Visit>> visits = top.at("visits").each(this::visit);
        return Part.whole(
                top,
                () -> new Protocol(
                        id.get(),
                        title.get(),
                        meanings.get(),
                        triggerBefore.get(),
                        days.get(),
                        rows.get(),
                        visits.get(),
                        anchoring.get(),
                        aim.get().orElse(Protocol.Aim.TRANSFER)));
    }

    private static Part<Map<Anchor, String>> meanings(Field group) {
        Map<Anchor, String> meanings = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<String, Field> entry : group.entries().entrySet()) {
            Field field = entry.getValue();
            Part<Anchor> anchor = anchor(field, entry.getKey());
            Part<String> meaning =
                    field.isText() ? field.text() : field.at("is").text();
            complete &= anchor.isPresent() && meaning.isPresent();
            anchor.value().ifPresent(a -> meaning.value().ifPresent(m -> meanings.put(a, m)));
        }
        return complete ? Part.of(meanings) : Part.absent();
    }

    private static Part<Anchor> anchor(Field field, String code) {
        return Part.wholeAs("ANCHOR-INVALID", field, () -> new Anchor(code));
    }

    private Part<Map<Anchor, Duration>> triggerBefore(Field group) {
        Map<Anchor, Duration> before = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<String, Field> entry : group.entries().entrySet()) {
            Field hoursBefore = entry.getValue().at("hours-before");
            if (hoursBefore.isWritten() && !entry.getKey().equals(Anchor.T.code())) {
                hoursBefore.stopAtKey(
                        "ANCHOR-INVALID",
                        "only T is computed from another anchor",
                        "write the meaning of " + entry.getKey() + " as text");
            }
            for (Map.Entry<String, Field> hours : hoursBefore.entries().entrySet()) {
                Part<Anchor> anchor = anchors.keyed(hours.getValue(), hours.getKey());
                Part<Duration> length = Calendar.hours(hours.getValue());
                complete &= anchor.isPresent() && length.isPresent();
                anchor.value().ifPresent(a -> length.value().ifPresent(l -> before.put(a, l)));
            }
        }
        return complete ? Part.of(before) : Part.absent();
    }

    private static Part<Protocol.StimulationDays> stimulationDays(Field field) {
        Part<Integer> least = field.at("least").count();
        Part<Integer> usual = field.at("usual").count();
        Part<Integer> most = field.at("most").count();
        return Part.whole(field, () -> new Protocol.StimulationDays(least.get(), usual.get(), most.get()));
    }

    private Part<Protocol.Row> row(Field line) {
        boolean isOneDay = line.at("on").isWritten();
        Part<String> medicine = line.at("medicine").text();
        Part<DayMark> first = anchors.day(line.at(isOneDay ? "on" : "from"));
        Part<DayMark> last = isOneDay ? first : anchors.day(line.at("until"));
        Part<Pattern> pattern = pattern(line);
        Amounts amounts = shelf.amounts(medicine.value().orElse(""));
        Part<Optional<Dose>> amount = line.at("amount").ifWritten(amounts::read);
        return Part.whole(
                line, () -> new Protocol.Row(medicine.get(), first.get(), last.get(), pattern.get(), amount.get()));
    }

    private Part<Pattern> pattern(Field line) {
        Part<List<String>> times = times(line.at("at"));
        Part<Optional<Integer>> everyDays = line.at("every-days").ifWritten(Field::count);
        Part<Optional<Duration>> everyHours = line.at("every-hours").ifWritten(Calendar::hours);
        Part<Optional<DayMark>> halfFrom = line.at("half-from").ifWritten(anchors::day);
        Part<Optional<Duration>> hoursAfter = line.at("hours-after").ifWritten(Calendar::hours);
        Part<Optional<String>> stopRule = line.at("stop-rule").ifWritten(Field::text);
        return Part.whole(
                line,
                () -> new Pattern(
                        times.get(),
                        everyDays.get().orElse(1),
                        everyHours.get(),
                        halfFrom.get(),
                        hoursAfter.get(),
                        stopRule.get()));
    }

    private static Part<List<String>> times(Field at) {
        return at.tree().filter(Tree.Sequence.class::isInstance).isPresent()
                ? at.each(Field::text)
                : new Part<>(at.text().value().map(List::of));
    }

    private Part<Protocol.Visit> visit(Field line) {
        Part<DayMark> on = anchors.day(line.at("on"));
        Part<Optional<LocalTime>> at = line.at("at").ifWritten(Calendar::time);
        Part<Optional<Duration>> hoursAfter = line.at("hours-after").ifWritten(Calendar::hours);
        Part<String> what = line.at("what").text();
        return Part.whole(line, () -> new Protocol.Visit(on.get(), at.get(), hoursAfter.get(), what.get()));
    }
}
