package cyclepacket.page;

import cyclepacket.plan.RecordLine;
import cyclepacket.plan.RecordLine.Given;
import cyclepacket.plan.RecordLine.Plunger;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;

/** One line of the record in words, with everything that it says and nothing more. */
final class ChartTold {
    private final ChartWords words;

    ChartTold(ChartWords words) {
        this.words = words;
    }

    String of(RecordLine line) {
        List<String> told = new ArrayList<>();
        line.dialled().ifPresent(dose -> told.add(words.fill("told.dialled", "amount", words.amount(dose))));
        told.add(given(line));
        if (!line.windows().isEmpty()) {
            List<String> numbers = line.windows().stream().map(words::number).toList();
            told.add(words.fill("told.window", "numbers", String.join(words.text("told.then"), numbers)));
        }
        line.plunger()
                .ifPresent(at -> told.add(words.text(at == Plunger.END ? "told.plunger.end" : "told.plunger.not-end")));
        if (line.windows().stream().anyMatch(shown -> !shown.isZero())) {
            told.add(words.text(line.readBack() ? "told.read-back" : "told.not-read-back"));
        }
        line.at()
                .ifPresent(at -> told.add(words.fill(
                        "told.late", "day", words.day(at.toLocalDate()), "time", words.time(at.toLocalTime()))));
        line.insteadOf().ifPresent(due -> told.add(words.fill("told.instead", "medicine", due)));
        line.loaded().ifPresent(box -> told.add(words.fill("told.loaded", "box", Integer.toString(box))));
        line.lost().ifPresent(dose -> told.add(words.fill("told.lost", "amount", words.amount(dose))));
        if (line.inQuestion()) {
            told.add(words.text("told.in-question"));
        }
        line.reason().ifPresent(reason -> told.add(words.fill("told.reason", "reason", ChartWords.sentence(reason))));
        line.by().ifPresent(by -> told.add(words.fill("told.by", "by", by)));
        told.removeIf(String::isEmpty);
        return String.join(" ", told);
    }

    private String given(RecordLine line) {
        Given given = line.given();
        if (given instanceof Given.Missed) {
            return words.text("told.missed");
        }
        if (given instanceof Given.Unknown) {
            return words.text("told.unknown");
        }
        return given.known().map(this::amountGiven).orElse("");
    }

    private String amountGiven(Dose dose) {
        return words.fill("told.given", "amount", words.amount(dose));
    }
}
