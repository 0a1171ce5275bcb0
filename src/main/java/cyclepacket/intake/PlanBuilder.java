package cyclepacket.intake;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.DayMark;
import cyclepacket.plan.ExtraPart;
import cyclepacket.plan.Plan;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.Revision;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** Builds the record of a plan file. */
final class PlanBuilder {
    private final Field top;
    private final Anchors anchors;
    private final Shelf shelf;

    PlanBuilder(Sheet sheet, Anchors anchors, Shelf shelf) {
        this.top = sheet.top();
        this.anchors = anchors;
        this.shelf = shelf;
    }

    Part<Plan> plan() {
        Part<String> id = top.at("plan").parsed("VALUE-FORM", PlanBuilder::id);
        Part<Integer> issue = top.at("issue").count();
        Part<Optional<Integer>> replaces = top.at("replaces").ifWritten(Field::count);
        PlanPeople people = new PlanPeople(top);
        Part<Plan.Patient> patient = people.patient();
        Part<String> language = top.at("language").text();
        Part<Plan.Paper> paper = top.at("paper").word(Plan.Paper.class);
        Part<Plan.TextSize> textSize = top.at("text-size").word(Plan.TextSize.class);
        Part<List<String>> avoid = top.at("avoid").each(Substances::read);
        Part<Plan.Order> order = people.order();
        Part<String> protocol = top.at("protocol").text();
        Part<Map<Anchor, Plan.Moment>> planned = planned(top.at("anchors"));
        Part<List<Plan.Call>> called = top.at("called").each(line -> people.call(line, anchors));
        Part<Map<String, LocalTime>> times = top.at("times").byName(Calendar::time);
        Part<Map<String, List<Plan.DoseLine>>> doses = byMedicine("doses", this::doseLine);
        Part<Map<String, List<Plan.Stock>>> onHand = byMedicine("on-hand", this::stock);
        Part<List<RecordLine>> record = top.at("record").each(new RecordBuilder(shelf)::line);
        Part<List<Plan.Override>> overrides = top.at("overrides").each(PlanPeople::override);
        Part<Plan.Prepared> prepared = people.prepared();
        Part<Optional<Plan.Countersigned>> countersigned =
                top.at("countersigned").ifWritten(PlanPeople::countersigned);
        Part<List<Revision>> revised = top.at("revised").each(PlanPeople::revision);
        Part<Optional<Set<ExtraPart>>> with = ExtraParts.read(top.at("with"));
        // Whatever the plan refuses as a whole is a matter of its issue numbers; every other limit is the schema's.
        return Part.whole(
                top.at("replaces"),
                () -> new Plan(
                        id.get(),
                        issue.get(),
                        replaces.get(),
                        patient.get(),
                        language.get(),
                        paper.get(),
                        textSize.get(),
                        avoid.get(),
                        order.get(),
                        protocol.get(),
                        planned.get(),
                        called.get(),
                        times.get(),
                        doses.get(),
                        onHand.get(),
                        record.get(),
                        overrides.get(),
                        prepared.get(),
                        countersigned.get(),
                        revised.get(),
                        with.get()));
    }

    private static String id(String text) {
        if (!text.matches("[A-Za-z0-9][A-Za-z0-9-]{0,39}")) {
            throw new Refusal(
                    Characters.quoted(text) + " is not a plan id", "write letters, digits and hyphens, at most 40");
        }
        return text;
    }

    private Part<Map<Anchor, Plan.Moment>> planned(Field group) {
        Map<Anchor, Plan.Moment> planned = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<String, Field> entry : group.entries().entrySet()) {
            Part<Anchor> anchor = anchors.keyed(entry.getValue(), entry.getKey());
            Part<Plan.Moment> moment = Calendar.moment(entry.getValue());
            complete &= anchor.isPresent() && moment.isPresent();
            anchor.value().ifPresent(a -> moment.value().ifPresent(m -> planned.put(a, m)));
        }
        return complete ? Part.of(planned) : Part.absent();
    }

    private <T> Part<Map<String, List<T>>> byMedicine(String key, BiFunction<String, Field, Part<T>> line) {
        Map<String, List<T>> lists = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<String, Field> entry : top.at(key).entries().entrySet()) {
            String id = entry.getKey();
            Part<List<T>> lines = entry.getValue().each(field -> line.apply(id, field));
            lines.value().ifPresent(list -> lists.put(id, list));
            complete &= lines.isPresent();
        }
        return complete ? Part.of(lists) : Part.absent();
    }

    private Part<Plan.DoseLine> doseLine(String medicine, Field line) {
        Part<DayMark> from = anchors.day(line.at("from"));
        Part<Dose> amount = shelf.amounts(medicine).read(line.at("amount"));
        Part<Optional<String>> order = line.at("order").ifWritten(Field::text);
        return Part.whole(line, () -> new Plan.DoseLine(from.get(), amount.get(), order.get()));
    }

    private Part<Plan.Stock> stock(String medicine, Field line) {
        Part<Dose> size = shelf.size(medicine, line.at("size"));
        Part<Optional<Integer>> count = line.at("count").ifWritten(Field::count);
        Part<Optional<String>> lot = line.at("lot").ifWritten(Field::text);
        Part<Optional<LocalDate>> expires = line.at("expires").ifWritten(Calendar::date);
        Part<Optional<LocalDate>> opened = line.at("opened").ifWritten(Calendar::date);
        Part<Optional<Dose>> used = line.at("used").ifWritten(shelf.amounts(medicine)::read);
        Part<Optional<LocalDate>> received = line.at("received").ifWritten(Calendar::date);
        Part<Optional<LocalDate>> discarded = line.at("discarded").ifWritten(Calendar::date);
        Part<Optional<String>> reason = line.at("reason").ifWritten(Field::text);
        return Part.whole(
                line,
                () -> new Plan.Stock(
                        size.get(),
                        count.get().orElse(1),
                        lot.get(),
                        expires.get(),
                        opened.get(),
                        used.get(),
                        received.get(),
                        discarded.get(),
                        reason.get()));
    }
}
