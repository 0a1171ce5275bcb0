package cyclepacket.intake;

import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Revision;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/** Reads the parts of a plan that say who it is for and who ordered, called, prepared and accepted what. */
final class PlanPeople {
    private final Field top;

    PlanPeople(Field top) {
        this.top = top;
    }

    Part<Plan.Patient> patient() {
        Field patient = top.at("patient");
        Part<String> name = patient.at("name").text();
        Part<Optional<LocalDate>> born = patient.at("born").ifWritten(Calendar::date);
        Part<Optional<String>> number = patient.at("number").ifWritten(Field::text);
        Part<ZoneId> zone = Calendar.zone(patient.at("zone"));
        return Part.whole(patient, () -> new Plan.Patient(name.get(), born.get(), number.get(), zone.get()));
    }

    Part<Plan.Order> order() {
        Field order = top.at("order");
        Part<String> by = order.at("by").text();
        Part<Optional<String>> reference = order.at("reference").ifWritten(Field::text);
        Part<LocalDate> date = Calendar.date(order.at("date"));
        return Part.whole(order, () -> new Plan.Order(by.get(), reference.get(), date.get()));
    }

    Part<Plan.Prepared> prepared() {
        Field prepared = top.at("prepared");
        Part<String> by = prepared.at("by").text();
        Part<LocalDate> on = Calendar.date(prepared.at("on"));
        return Part.whole(prepared, () -> new Plan.Prepared(by.get(), on.get()));
    }

    Part<Plan.Call> call(Field line, Anchors anchors) {
        Part<Anchor> anchor = anchors.named(line.at("anchor"));
        Part<Plan.Moment> at = Calendar.moment(line.at("at"));
        Part<Optional<String>> order = line.at("order").ifWritten(Field::text);
        Part<String> by = line.at("by").text();
        Part<String> to = line.at("to").text();
        Part<LocalDate> on = Calendar.date(line.at("on"));
        Part<Boolean> readBack = line.at("read-back").truth();
        return Part.whole(
                line,
                () -> new Plan.Call(anchor.get(), at.get(), order.get(), by.get(), to.get(), on.get(), readBack.get()));
    }

    static Part<Plan.Override> override(Field line) {
        Part<String> code = line.at("code").text();
        Part<String> place = line.at("place").text();
        Part<String> reason = line.at("reason").text();
        Part<String> by = line.at("by").text();
        return Part.whole(line, () -> new Plan.Override(code.get(), place.get(), reason.get(), by.get()));
    }

    static Part<Revision> revision(Field line) {
        Part<Integer> issue = line.at("issue").count();
        Part<Revision.What> what = line.at("what").word(Revision.What.class);
        Part<Optional<String>> of = line.at("of").ifWritten(Field::text);
        Part<Optional<LocalDate>> from = line.at("from").ifWritten(Calendar::date);
        Part<Optional<LocalDate>> lastDay = line.at("until").ifWritten(Calendar::date);
        Part<Optional<String>> now = line.at("now").ifWritten(Field::text);
        Part<Optional<String>> order = line.at("order").ifWritten(Field::text);
        Part<String> by = line.at("by").text();
        Part<String> to = line.at("to").text();
        Part<LocalDate> on = Calendar.date(line.at("on"));
        Part<Boolean> readBack = line.at("read-back").truth();
        if (what.value().filter(Revision.What.HOUR::equals).isPresent()) {
            Calendar.time(line.at("now"));
        }
        return Part.whole(
                line,
                () -> new Revision(
                        issue.get(),
                        what.get(),
                        of.get(),
                        from.get(),
                        lastDay.get(),
                        now.get(),
                        order.get(),
                        by.get(),
                        to.get(),
                        on.get(),
                        readBack.get()));
    }

    static Part<Plan.Countersigned> countersigned(Field field) {
        Part<String> by = field.at("by").text();
        Part<LocalDate> on = Calendar.date(field.at("on"));
        Part<String> code = field.at("code").text();
        return Part.whole(field, () -> new Plan.Countersigned(by.get(), on.get(), code.get()));
    }
}
