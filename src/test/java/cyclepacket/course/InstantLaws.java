package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.util.BasicTimeZone;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.TimeZoneTransition;
import cyclepacket.PlanSketch;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Hours and instants from 1970 to 2100 in every zone whose clocks change, against ICU: another library, with the IANA
 * time zone data in a form of its own. A failure names zone and hour; {@code -Dcyclepacket.seed} gives other hours.
 */
class InstantLaws {
    private static final long SEED = Long.getLong("cyclepacket.seed", 20_270_314);
    private static final int CHANGES_A_ZONE = 3;
    private static final Duration LEAD = Duration.ofHours(36);

    private final SplittableRandom random = new SplittableRandom(SEED);

    /** A change of the clocks: the wall hour at which it begins. */
    private record Change(String zone, LocalDateTime wall) {}

    private List<Change> changes(String id) {
        return Stream.generate(() -> change(id))
                .limit(CHANGES_A_ZONE)
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Change> change(String id) {
        LocalDateTime from = LocalDateTime.of(1970 + random.nextInt(131), 1 + random.nextInt(12), 1, 0, 0);
        BasicTimeZone zone = (BasicTimeZone) TimeZone.getTimeZone(id, TimeZone.TIMEZONE_ICU);
        TimeZoneTransition next =
                zone.getNextTransition(from.toInstant(ZoneOffset.UTC).toEpochMilli(), false);
        if (next == null) {
            return Optional.empty();
        }
        int offset = next.getFrom().getRawOffset() + next.getFrom().getDSTSavings();
        LocalDateTime wall = LocalDateTime.ofEpochSecond((next.getTime() + offset) / 1_000, 0, ZoneOffset.UTC);
        return wall.getYear() > 2100 ? Optional.empty() : Optional.of(new Change(id, wall));
    }

    private static Set<String> zones() {
        Set<String> zones = new TreeSet<>(ZoneId.getAvailableZoneIds());
        zones.retainAll(TimeZone.getAvailableIDs(TimeZone.SystemTimeZoneType.ANY, null, null));
        return zones;
    }

    /** Every instant at which clocks of the zone show this; none in a gap, two where an hour comes twice. */
    private static Set<Long> instants(String zone, LocalDateTime wall) {
        TimeZone icu = TimeZone.getTimeZone(zone, TimeZone.TIMEZONE_ICU);
        long utc = wall.toEpochSecond(ZoneOffset.UTC) * 1_000;
        Set<Long> instants = new TreeSet<>();
        for (int hours = -30; hours <= 30; hours++) {
            long instant = utc - icu.getOffset(utc + hours * 3_600_000L);
            if (instant + icu.getOffset(instant) == utc) {
                instants.add(instant);
            }
        }
        return instants;
    }

    private static LocalDateTime wall(String zone, long instant) {
        int offset = TimeZone.getTimeZone(zone, TimeZone.TIMEZONE_ICU).getOffset(instant);
        return LocalDateTime.ofEpochSecond((instant + offset) / 1_000, 0, ZoneOffset.UTC);
    }

    private static PlanSketch sketch(LocalDate start) {
        PlanSketch sketch = new PlanSketch().size("900", "900", "900").home("900");
        sketch.start = start;
        sketch.prepared = start.minusDays(2);
        sketch.doses.clear();
        return sketch.dose(1, "25");
    }

    @Test
    void printsAnEveningAtItsHourOrSaysThatItIsRemovedOrRepeated() {
        Map<Integer, Integer> met = new TreeMap<>();
        for (String zone : zones()) {
            for (Change change : changes(zone)) {
                LocalDateTime at =
                        change.wall().plusMinutes(random.nextInt(-130, 131)).truncatedTo(ChronoUnit.MINUTES);
                Set<Long> instants = instants(zone, at);
                met.merge(instants.size(), 1, Integer::sum);
                assertEvening(zone, at, instants);
            }
        }
        assertTrue(met.get(0) > 50 && met.get(1) > 300 && met.get(2) > 50, "too few of a kind: " + met);
    }

    private static void assertEvening(String zone, LocalDateTime at, Set<Long> instants) {
        PlanSketch sketch = sketch(at.toLocalDate().minusDays(1));
        sketch.patientZone = ZoneId.of(zone);
        sketch.evening = at.toLocalTime();
        Course course = Course.of(sketch.files());
        String subject = at + " in " + zone;
        Set<CourseDoubt.Kind> kinds = new TreeSet<>();
        course.doubts().stream()
                .filter(doubt -> doubt.subject().equals(subject))
                .forEach(doubt -> kinds.add(doubt.kind()));
        Set<CourseDoubt.Kind> expected = instants.size() == 1
                ? Set.of()
                : Set.of(instants.isEmpty() ? CourseDoubt.Kind.TIME_REMOVED : CourseDoubt.Kind.TIME_REPEATED);
        assertEquals(expected, kinds, subject);
        DatedDose dose = course.doses().stream()
                .filter(each -> each.date().equals(at.toLocalDate()))
                .findFirst()
                .orElseThrow();
        if (instants.size() == 1) {
            assertEquals(instants.iterator().next(), dose.at().toInstant().toEpochMilli(), subject);
            assertEquals("S2", dose.day(), subject);
        }
    }

    @Test
    void countsTheHoursToTheRetrievalAsTheyPass() {
        int counted = 0;
        String[] clinics = zones().toArray(String[]::new);
        for (String home : zones()) {
            String clinic = random.nextBoolean() ? home : clinics[random.nextInt(clinics.length)];
            for (Change change : changes(clinic)) {
                LocalDateTime retrieval =
                        change.wall().plusMinutes(random.nextInt(-60, 60 * 48)).truncatedTo(ChronoUnit.MINUTES);
                counted += assertTrigger(home, clinic, retrieval) ? 1 : 0;
            }
        }
        assertTrue(counted > 500, "only " + counted);
    }

    private static boolean assertTrigger(String home, String clinic, LocalDateTime retrieval) {
        Set<Long> instants = instants(clinic, retrieval);
        PlanSketch sketch = sketch(retrieval.toLocalDate().minusDays(10));
        sketch.clinicZone = ZoneId.of(clinic);
        sketch.patientZone = ZoneId.of(home);
        sketch.retrieval = Optional.of(retrieval);
        Optional<Trigger> trigger = Course.of(sketch.files()).anchors().trigger();
        String hour = retrieval + " in " + clinic + ", at home in " + home;
        assertEquals(instants.size() == 1, trigger.isPresent(), hour);
        if (trigger.isEmpty()) {
            return false;
        }
        long expected = instants.iterator().next() - LEAD.toMillis();
        ZonedDateTime at = trigger.get().at();
        assertEquals(expected, at.toInstant().toEpochMilli(), hour);
        LocalDateTime wall = wall(home, expected);
        assertEquals(wall, at.toLocalDateTime(), hour);
        // From midnight to six it is still the evening before.
        assertEquals(wall.minusHours(6).toLocalDate(), trigger.get().evening(), hour);
        return true;
    }

    /** Day numbers against a count of days that knows the calendar's rule alone (Gregorian: 97 leap days in 400 years). */
    @Test
    void numbersEveningsAcrossLeapDays() {
        for (int year = 1970; year <= 2100; year++) {
            PlanSketch sketch = sketch(LocalDate.of(year, 2, 20));
            List<DatedDose> doses = Course.of(sketch.files()).doses();
            assertEquals(13, doses.size());
            boolean isLeap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
            for (int evening = 0; evening < doses.size(); evening++) {
                int february = 20 + evening;
                int last = isLeap ? 29 : 28;
                String day = february <= last
                        ? String.format("%04d-02-%02d", year, february)
                        : String.format("%04d-03-%02d", year, february - last);
                assertEquals(day, doses.get(evening).date().toString());
                assertEquals("S" + (evening + 1), doses.get(evening).day());
            }
        }
    }
}
