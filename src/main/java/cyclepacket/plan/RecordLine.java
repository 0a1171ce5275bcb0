package cyclepacket.plan;

import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Refusal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What really happened with one dial setting, or with one syringe. Sums are checked where the course is known; here
 * only what a single line must be.
 *
 * @param date the evening the dose belonged to
 * @param setting which setting of that evening, from 1
 * @param dialled the number that was set; empty means what was ordered
 * @param given all that reached the patient; empty means that nothing was written
 * @param windows the number in the window each time a container stopped, in order; {@code 0} alone on a pen that shows
 *     what is owed means that nothing stopped; empty means that nobody looked
 * @param plunger where the plunger stood when the pen stopped
 * @param readBack whether the number was read aloud and repeated
 * @param lost medicine that left the container and reached nobody, on a line of its own or with a whole setting
 * @param inQuestion the line says something that cannot be true and is kept as it was told
 * @param reason why an impossible line is accepted
 * @param by who accepted it
 * @param at when it was really given, for a late dose; it still belongs to its evening
 * @param insteadOf the medicine that was due, when this one was taken by mistake
 * @param loaded the number of the container that was loaded on this evening
 */
public record RecordLine(
        LocalDate date,
        String medicine,
        int setting,
        Optional<Dose> dialled,
        Given given,
        List<Dose> windows,
        Optional<Plunger> plunger,
        boolean readBack,
        Optional<Dose> lost,
        boolean inQuestion,
        Optional<String> reason,
        Optional<String> by,
        Optional<LocalDateTime> at,
        Optional<String> insteadOf,
        Optional<Integer> loaded) {
    public RecordLine {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(medicine, "medicine");
        Objects.requireNonNull(dialled, "dialled");
        Objects.requireNonNull(given, "given");
        windows = List.copyOf(windows);
        Objects.requireNonNull(plunger, "plunger");
        Objects.requireNonNull(lost, "lost");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(insteadOf, "insteadOf");
        Objects.requireNonNull(loaded, "loaded");
        if (setting < 1 || setting > 20) {
            throw new Refusal("a setting is from 1 to 20", "count the injections of that evening from 1");
        }
    }

    /** A line as most are: given on its evening, from the container in use. */
    public RecordLine(
            LocalDate date,
            String medicine,
            int setting,
            Optional<Dose> dialled,
            Given given,
            List<Dose> windows,
            Optional<Plunger> plunger,
            boolean readBack,
            Optional<Dose> lost,
            boolean inQuestion,
            Optional<String> reason,
            Optional<String> by) {
        this(
                date,
                medicine,
                setting,
                dialled,
                given,
                windows,
                plunger,
                readBack,
                lost,
                inQuestion,
                reason,
                by,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A line that only says that a container was loaded, with no injection. */
    public boolean isLoadOnly() {
        return loaded.isPresent()
                && given instanceof Given.NotWritten
                && windows.isEmpty()
                && dialled.isEmpty()
                && lost.isEmpty();
    }

    /** Whether somebody wrote why this line stands although it looks impossible. */
    public boolean isExplained() {
        return reason.isPresent() && by.isPresent();
    }

    /** A line that only says that medicine was lost, with no injection. */
    public boolean isLossOnly() {
        return lost.isPresent() && given instanceof Given.NotWritten && windows.isEmpty() && dialled.isEmpty();
    }

    /** Where the plunger of the cartridge stood. */
    public enum Plunger {
        /** At the very end: the cartridge is empty. */
        END,
        /** Not at the end: the needle was blocked, the cartridge is not empty. */
        NOT_END
    }

    /** What is known of the amount that reached the patient. */
    public sealed interface Given {
        /** The amount, when the line states one. */
        Optional<Dose> known();

        /** So much reached the patient. */
        record Amount(Dose amount) implements Given {
            public Amount {
                Objects.requireNonNull(amount, "amount");
            }

            @java.lang.Override
            public Optional<Dose> known() {
                return Optional.of(amount);
            }
        }

        /** The evening passed without an injection. */
        record Missed() implements Given {
            @java.lang.Override
            public Optional<Dose> known() {
                return Optional.empty();
            }
        }

        /** Nobody knows whether, or how much, reached the patient. */
        record Unknown() implements Given {
            @java.lang.Override
            public Optional<Dose> known() {
                return Optional.empty();
            }
        }

        /** The line does not say. */
        record NotWritten() implements Given {
            @java.lang.Override
            public Optional<Dose> known() {
                return Optional.empty();
            }
        }
    }
}
