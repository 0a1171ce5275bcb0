package cyclepacket.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SiteRotationTest {
    private static final LocalDate START = LocalDate.of(2027, 3, 5);

    private static SiteRotation.Injection on(int day, boolean muscle) {
        return new SiteRotation.Injection(START.plusDays(day), muscle);
    }

    @Test
    void changesTheSideEachEvening() {
        List<Site> sites = SiteRotation.of(List.of(on(0, false), on(1, false), on(2, false), on(3, false)));
        assertEquals(
                List.of(true, false, true, false),
                sites.stream().map(Site::isLeft).toList());
        assertEquals(4, new HashSet<>(sites).size());
    }

    @Test
    void putsTwoOfOneEveningOnDifferentSides() {
        List<Site> sites = SiteRotation.of(List.of(on(0, false), on(0, false)));
        assertNotEquals(sites.get(0).isLeft(), sites.get(1).isLeft());
    }

    @Test
    void goesRoundTheFourSpotsOfTheMuscles() {
        List<Site> sites = SiteRotation.of(List.of(on(0, true), on(1, true), on(2, true), on(3, true), on(4, true)));
        assertEquals(List.of(1, 3, 2, 4, 1), sites.stream().map(Site::number).toList());
        assertTrue(sites.stream().allMatch(Site::isMuscle));
    }

    /** Left and right in turn, each spot of a side before the first again. */
    @Test
    void goesRoundTheEightSpotsOfTheBelly() {
        List<Site> sites = SiteRotation.of(
                IntStream.range(0, 10).mapToObj(day -> on(day, false)).toList());
        assertEquals(
                List.of(1, 5, 2, 6, 3, 7, 4, 8, 1, 5),
                sites.stream().map(Site::number).toList());
    }

    /** The first of a day lies on the other side than the first of the day before. */
    @Test
    void changesTheSideOfTheFirstOfTwo() {
        List<Site> sites = SiteRotation.of(
                List.of(on(0, false), on(0, false), on(1, false), on(1, false), on(2, false), on(2, false)));
        assertEquals(List.of(1, 5, 6, 2, 3, 7), sites.stream().map(Site::number).toList());
    }

    private static List<Integer> numbers(SiteRotation.Injection... injections) {
        return SiteRotation.of(List.of(injections)).stream().map(Site::number).toList();
    }

    @Test
    void changesTheSideWithinADay() {
        assertEquals(List.of(1, 5, 2, 6), numbers(on(0, false), on(0, false), on(0, false), on(0, false)));
    }

    /** The third into muscle would be on the right again, where both spots were used today. */
    @Test
    void changesTheSideRatherThanUseASpotTwiceADay() {
        assertEquals(
                List.of(1, 3, 2, 4, 3, 1),
                numbers(on(0, false), on(0, true), on(0, false), on(0, true), on(0, false), on(0, true)));
    }

    /** The one into muscle would be on the left, where both spots were used yesterday. */
    @Test
    void changesTheSideRatherThanUseASpotTwoDaysInARow() {
        assertEquals(
                List.of(1, 5, 2, 6, 3), numbers(on(0, true), on(0, false), on(0, true), on(1, false), on(1, true)));
    }

    /** Nine on one belly are one too many for its spots, and still each has one. */
    @Test
    void findsASpotForOneTooMany() {
        List<Site> nine = SiteRotation.of(
                IntStream.range(0, 9).mapToObj(each -> on(0, false)).toList());
        assertEquals(8, new HashSet<>(nine.subList(0, 8)).size());
        assertFalse(nine.get(8).isMuscle());
        List<Site> muscle = SiteRotation.of(
                IntStream.range(0, 8).mapToObj(each -> on(each / 4, true)).toList());
        assertEquals(4, new HashSet<>(muscle.subList(4, 8)).size());
    }

    @Test
    void startsTheSameWhateverComesLater() {
        List<SiteRotation.Injection> shorter = List.of(on(0, false), on(1, false), on(1, false));
        List<SiteRotation.Injection> longer = new ArrayList<>(shorter);
        longer.add(on(2, false));
        assertEquals(SiteRotation.of(shorter), SiteRotation.of(longer).subList(0, 3));
    }

    /** Up to four a day under the skin and two into muscle, days left out at random. */
    @Test
    void usesNoSpotTwiceADayOrTwoDaysInARow() {
        long seed = 20270308;
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            List<SiteRotation.Injection> injections = new ArrayList<>();
            for (int day = 0; day < 30; day++) {
                int skin = random.nextInt(5);
                int muscle = random.nextInt(3);
                for (int each = 0; each < skin + muscle; each++) {
                    injections.add(on(day, each >= skin));
                }
            }
            assertRotates(injections, "seed " + seed + ", round " + round);
        }
    }

    private static void assertRotates(List<SiteRotation.Injection> injections, String at) {
        List<Site> sites = SiteRotation.of(injections);
        TreeMap<LocalDate, Set<Site>> days = new TreeMap<>();
        for (int index = 0; index < sites.size(); index++) {
            LocalDate date = injections.get(index).date();
            assertEquals(injections.get(index).isIntoMuscle(), sites.get(index).isMuscle(), at);
            Set<Site> today = days.computeIfAbsent(date, day -> new HashSet<>());
            assertTrue(today.add(sites.get(index)), at + ", twice on " + date);
            assertFalse(
                    days.getOrDefault(date.minusDays(1), Set.of()).contains(sites.get(index)),
                    at + ", again on " + date);
        }
    }
}
