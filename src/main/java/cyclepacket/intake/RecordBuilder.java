package cyclepacket.intake;

import cyclepacket.plan.Plan;
import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Reads the lines that say what really happened. */
final class RecordBuilder {
    private final Shelf shelf;

    RecordBuilder(Shelf shelf) {
        this.shelf = shelf;
    }

    Part<RecordLine> line(Field line) {
        Part<LocalDate> date = Calendar.date(line.at("date"));
        Part<String> medicine = line.at("medicine").text();
        Amounts amounts = shelf.amounts(medicine.value().orElse(""));
        Part<Optional<Integer>> setting = line.at("setting").ifWritten(Field::count);
        Part<Optional<Dose>> dialled = line.at("dialled").ifWritten(amounts::read);
        Part<Given> given = given(line, amounts);
        Part<List<Dose>> windows = windows(line.at("window"), amounts);
        Part<Optional<RecordLine.Plunger>> plunger =
                line.at("plunger").ifWritten(field -> field.word(RecordLine.Plunger.class));
        Part<Optional<Boolean>> readBack = line.at("read-back").ifWritten(Field::truth);
        Part<Optional<Dose>> lost = line.at("lost").ifWritten(amounts::read);
        Part<Optional<Boolean>> inQuestion = line.at("in-question").ifWritten(Field::truth);
        Part<Optional<String>> reason = line.at("reason").ifWritten(Field::text);
        Part<Optional<String>> by = line.at("by").ifWritten(Field::text);
        Part<Optional<LocalDateTime>> at = line.at("at").ifWritten(RecordBuilder::hour);
        Part<Optional<String>> insteadOf = line.at("instead-of").ifWritten(Field::text);
        Part<Optional<Integer>> loaded = line.at("loaded").ifWritten(Field::count);
        return Part.whole(
                line,
                () -> new RecordLine(
                        date.get(),
                        medicine.get(),
                        setting.get().orElse(1),
                        dialled.get(),
                        given.get(),
                        windows.get(),
                        plunger.get(),
                        readBack.get().orElse(false),
                        lost.get(),
                        inQuestion.get().orElse(false),
                        reason.get(),
                        by.get(),
                        at.get(),
                        insteadOf.get(),
                        loaded.get()));
    }

    private static Part<LocalDateTime> hour(Field field) {
        Part<Plan.Moment> moment = Calendar.moment(field);
        if (moment.value().filter(at -> at.local().isEmpty()).isPresent()) {
            field.stop("TIME-INVALID", "this day has no hour", "write for example \"2027-03-09T07:05\"");
        }
        return new Part<>(moment.value().flatMap(Plan.Moment::local));
    }

    private static Part<Given> given(Field line, Amounts amounts) {
        Field given = line.at("given");
        Field missed = line.at("missed");
        if (given.isWritten() && missed.isWritten()) {
            missed.stopAtKey("RECORD-CLASH", "this line says given and missed", "keep the one that is true");
            return Part.absent();
        }
        if (missed.isWritten()) {
            return new Part<>(missed.truth().value().map(yes -> new Given.Missed()));
        }
        if (!given.isWritten()) {
            return Part.of(new Given.NotWritten());
        }
        return given.text().value().filter("unknown"::equals).isPresent()
                ? Part.of(new Given.Unknown())
                : new Part<>(amounts.read(given).value().map(Given.Amount::new));
    }

    private static Part<List<Dose>> windows(Field window, Amounts amounts) {
        boolean isList = window.tree().filter(Tree.Sequence.class::isInstance).isPresent();
        return isList || !window.isWritten()
                ? window.each(amounts::read)
                : new Part<>(amounts.read(window).value().map(List::of));
    }
}
