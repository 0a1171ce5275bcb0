package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.List;

/**
 * One evening of the course.
 *
 * @param settings the dial settings that the ordered dose is given as
 * @param deeds what was done with each setting; empty for an evening that is still to come
 */
record Evening(LocalDate date, List<Long> settings, List<Deed> deeds) {
    Evening {
        settings = List.copyOf(settings);
        deeds = List.copyOf(deeds);
        if (!deeds.isEmpty() && deeds.size() != settings.size()) {
            throw new IllegalArgumentException("one deed for each setting");
        }
    }

    static Evening toCome(LocalDate date, List<Long> settings) {
        return new Evening(date, settings, List.of());
    }

    boolean isPast() {
        return !deeds.isEmpty();
    }

    long dose() {
        return settings.stream().mapToLong(Long::longValue).sum();
    }

    Deed deed(int setting) {
        return isPast() ? deeds.get(setting - 1) : Deed.AS_ORDERED;
    }
}
