package cyclepacket.course;

import cyclepacket.plan.Revision;
import cyclepacket.plan.Revision.What;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** What later issues moved in the protocol's rows: holds, stops, starts, hours, products, and the end of the cycle. */
final class Shifts {
    private final List<Revision> revised;

    Shifts(List<Revision> revised) {
        this.revised = List.copyOf(revised);
    }

    private List<Revision> of(What what) {
        return revised.stream().filter(line -> line.what() == what).toList();
    }

    /** The first day without any injection, when the cycle was cancelled. */
    Optional<LocalDate> cancelledFrom() {
        return of(What.CANCEL).stream().flatMap(line -> line.from().stream()).min(LocalDate::compareTo);
    }

    boolean isCancelledOn(LocalDate day) {
        return cancelledFrom().map(from -> !day.isBefore(from)).orElse(false);
    }

    boolean isHeld(String medicine, LocalDate day) {
        return of(What.HOLD).stream()
                .filter(line -> line.of().filter(medicine::equals).isPresent())
                .anyMatch(line -> !day.isBefore(line.from().orElseThrow())
                        && !day.isAfter(line.lastDay().orElseThrow()));
    }

    /** The first day that can have a dose, a start before the row's own first day counted. */
    LocalDate firstDay(String medicine, LocalDate rowFirst) {
        return of(What.START).stream()
                .filter(line -> line.of().filter(medicine::equals).isPresent())
                .flatMap(line -> line.from().stream())
                .reduce(rowFirst, (left, right) -> left.isBefore(right) ? left : right);
    }

    /** Whether a row gives its medicine on this day, after every stop and start in the order they were told. */
    boolean isOn(String medicine, LocalDate day, LocalDate rowFirst) {
        boolean isOn = !day.isBefore(rowFirst);
        boolean wasStopped = false;
        for (Revision line : revised) {
            if (line.of().filter(medicine::equals).isEmpty()) {
                continue;
            }
            boolean reached = line.from().map(from -> !day.isBefore(from)).orElse(false);
            if (line.what() == What.STOP) {
                isOn &= !reached;
                wasStopped = true;
            } else if (line.what() == What.START) {
                // A first start moves the beginning; one after a stop begins again and leaves the days before alone.
                isOn = reached || (wasStopped && isOn);
            }
        }
        return isOn && !isCancelledOn(day);
    }

    /** The clock time of a named time on this day. */
    LocalTime hour(String name, LocalDate day, LocalTime usual) {
        LocalTime hour = usual;
        for (Revision line : of(What.HOUR)) {
            if (line.of().filter(name::equals).isPresent()
                    && !day.isBefore(line.from().orElseThrow())) {
                hour = LocalTime.parse(line.now().orElseThrow());
            }
        }
        return hour;
    }

    /** The product that stands for a row's medicine on this day. */
    String product(String medicine, LocalDate day) {
        String product = medicine;
        for (Revision line : of(What.SWAP)) {
            if (line.of().filter(product::equals).isPresent()
                    && !day.isBefore(line.from().orElseThrow())) {
                product = line.now().orElseThrow();
            }
        }
        return product;
    }
}
