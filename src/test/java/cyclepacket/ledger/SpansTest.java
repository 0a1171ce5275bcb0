package cyclepacket.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Sets of totals: what belongs to one of them and what does not, at every edge. */
class SpansTest {
    private static String text(Spans spans) {
        return spans.list().stream()
                .map(span -> span.least() + ".." + span.most())
                .collect(Collectors.joining(" "));
    }

    @Test
    void joinsStretchesThatTouch() {
        Spans first = Spans.of(0, 10, 1);
        assertEquals("0..20", text(first.with(Spans.of(11, 20, 1))));
        assertEquals("0..10 12..20", text(first.with(Spans.of(12, 20, 1))));
        assertEquals("0..10", text(first.with(Spans.of(4, 5, 1))));
        assertEquals("0..20", text(first.with(Spans.of(10, 20, 1))));
        assertEquals("-5..-3 0..10", text(first.with(Spans.of(-5, -3, 1))));
    }

    @Test
    void takesInSingleTotals() {
        assertEquals("0..11 13..13", text(Spans.of(0, 10, 1).with(List.of(13L, 4L, 11L))));
        assertEquals("7..7", text(Spans.NONE.with(List.of(7L, 7L))));
    }

    /** On a pen that gives whole marks of 5, nothing lies between 10 and 15. */
    @Test
    void joinsMarksThatFollowOneAnother() {
        assertEquals("0..20", text(Spans.of(0, 10, 5).with(Spans.of(15, 20, 5))));
        assertEquals("0..10 20..25", text(Spans.of(0, 10, 5).with(Spans.of(20, 25, 5))));
        assertEquals(5, Spans.NONE.with(Spans.of(0, 10, 5)).grain());
    }

    @Test
    void cutsOnTheNearestMarkInside() {
        Spans marks = Spans.of(0, 20, 5);
        assertEquals("5..15", text(marks.between(3, 17)));
        assertEquals("5..15", text(marks.between(5, 15)));
        assertEquals("0..20", text(marks.between(0, 20)));
        assertEquals("10..10", text(marks.between(10, 10)));
        assertEquals("", text(marks.between(11, 14)));
        assertEquals("", text(marks.between(21, 30)));
        assertEquals("3..18", text(Spans.of(3, 18, 5).between(3, 18)));
        assertEquals("-5..0", text(Spans.of(-10, 20, 5).between(-7, 3)));
    }

    @Test
    void takesAStretchOut() {
        Spans all = Spans.of(0, 20, 1);
        assertEquals("0..4 11..20", text(all.without(5, 10)));
        assertEquals("1..20", text(all.without(0, 0)));
        assertEquals("0..19", text(all.without(20, 20)));
        assertEquals("", text(all.without(0, 20)));
        assertSame(all, all.without(6, 5));
    }

    @Test
    void movesEveryTotalByEveryAmount() {
        Spans two = Spans.of(0, 0, 1).with(Spans.of(10, 10, 1));
        assertEquals("1..3 11..13", text(two.plus(1, 3)));
        assertEquals("1..20", text(two.plus(1, 10)));
    }

    @Test
    void knowsItsEnds() {
        Spans two = Spans.of(20, 30, 1).with(Spans.of(0, 10, 1));
        assertEquals(List.of(0L, 30L), List.of(two.min(), two.max()));
        assertFalse(two.isEmpty());
        assertTrue(Spans.NONE.isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Spans.of(1, 0, 1));
    }
}
