package cyclepacket.course;

import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.Protocol;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Dates the visits of a protocol, in the clinic's zone; a visit whose anchor has no day yet, or after a cancelled cycle, is left out. */
final class VisitDates {
    private final PlanFiles files;
    private final Anchors anchors;
    private final Shifts shifts;

    VisitDates(PlanFiles files, Anchors anchors, Shifts shifts) {
        this.files = files;
        this.anchors = anchors;
        this.shifts = shifts;
    }

    List<DatedVisit> visits() {
        List<DatedVisit> dated = new ArrayList<>();
        for (Protocol.Visit visit : files.protocol().visits()) {
            at(visit)
                    .ifPresent(at -> dated.add(
                            new DatedVisit(at.toLocalDate(), visit.on().toString(), at, visit.what())));
        }
        dated.sort(Comparator.comparing(DatedVisit::at));
        return dated;
    }

    private Optional<ZonedDateTime> at(Protocol.Visit visit) {
        ZoneId zone = files.clinic().zone();
        if (visit.hoursAfter().isPresent()) {
            return visit.on()
                    .anchor()
                    .flatMap(anchors::instant)
                    .map(instant -> instant.plus(visit.hoursAfter().get()).withZoneSameInstant(zone));
        }
        Optional<LocalDate> date = anchors.date(visit.on());
        return date.map(day -> day.atTime(visit.at().orElseThrow()))
                .map(local -> LocalTimes.exact(local, zone, Optional.empty()).orElse(ZonedDateTime.of(local, zone)));
    }
}
