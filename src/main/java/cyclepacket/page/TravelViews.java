package cyclepacket.page;

import cyclepacket.course.DatedDose;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Makes the page for a journey: each time to inject on the patient's clock and on the clinic's. */
final class TravelViews {
    private final PacketFacts facts;
    private final Words words;

    TravelViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
    }

    /** Two clocks that stand alike so long; a clock change in one of the zones starts another line. */
    private record Pair(LocalTime yours, LocalTime clinics, long days) {}

    TravelView view() {
        List<TravelView.Clock> clocks = new ArrayList<>();
        Set<Pair> listed = new HashSet<>();
        boolean differs = false;
        for (DatedDose dose : ahead()) {
            ZonedDateTime clinic = atClinic(dose);
            differs |= !clinic.toLocalDateTime().equals(dose.at().toLocalDateTime());
            Pair pair = new Pair(
                    dose.at().toLocalTime(),
                    clinic.toLocalTime(),
                    clinic.toLocalDate().toEpochDay() - dose.at().toLocalDate().toEpochDay());
            if (dose.isExact() || listed.add(pair)) {
                clocks.add(clock(dose, clinic));
            }
        }
        return new TravelView(differs ? clocks : List.of());
    }

    private List<DatedDose> ahead() {
        return facts.course().doses().stream()
                .filter(dose -> !dose.isExact() || facts.course().isTriggerCalled())
                .filter(dose -> !dose.at().toLocalDate().isBefore(facts.today()))
                .sorted(Comparator.comparing(DatedDose::at))
                .toList();
    }

    private ZonedDateTime atClinic(DatedDose dose) {
        return dose.at().withZoneSameInstant(facts.files().clinic().zone());
    }

    private TravelView.Clock clock(DatedDose dose, ZonedDateTime clinic) {
        return new TravelView.Clock(
                words.clock().day(dose.at().toLocalDate()),
                dose.isExact(),
                words.clock().time(dose.at().toLocalTime()),
                words.clock().day(clinic.toLocalDate()),
                words.clock().time(clinic.toLocalTime()));
    }
}
