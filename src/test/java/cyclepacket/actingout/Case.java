package cyclepacket.actingout;

import cyclepacket.plan.RecordLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One plan to compare, with one true world that its record was written from.
 *
 * @param seed makes the same case again
 * @param started how the first box was used before; empty when it is new
 * @param truth the true content of each box, thousandths
 */
record Case(long seed, Pen pen, List<Box> boxes, Optional<Started> started, List<Evening> evenings, List<Long> truth) {
    static final String MEDICINE = "pen";

    Case {
        boxes = List.copyOf(boxes);
        evenings = List.copyOf(evenings);
        truth = List.copyOf(truth);
    }

    Story live(List<Long> contents) {
        return Patient.live(pen, evenings, contents, started);
    }

    /** The record that a patient with these contents would have written. */
    List<RecordLine> recordOf(Story story) {
        return new Diary(pen, MEDICINE).of(story, evenings);
    }

    List<Long> allLeast() {
        return boxes.stream().map(Box::least).toList();
    }

    List<Long> allMost() {
        return boxes.stream().map(Box::most).toList();
    }

    /** Thousandths taken from a box before the plan. */
    long usedOf(int box) {
        return box == 1 ? started.map(Started::used).orElse(0L) : 0;
    }

    /** The last day of a box that is opened on {@code date} unless it was open already. */
    LocalDate lastDayOf(int box, LocalDate date) {
        return pen.lastDayOf(box == 1 ? started.map(Started::openedOn).orElse(date) : date);
    }

    boolean hasPast() {
        return pastEvenings() > 0;
    }

    int pastEvenings() {
        return (int) evenings.stream().filter(Evening::isPast).count();
    }

    /** The same case with only the first so many evenings lived. */
    Case withPast(int count) {
        List<Evening> shorter = new ArrayList<>();
        for (int index = 0; index < evenings.size(); index++) {
            Evening evening = evenings.get(index);
            shorter.add(index < count ? evening : Evening.toCome(evening.date(), evening.settings()));
        }
        return new Case(seed, pen, boxes, started, shorter, truth);
    }

    /** Whether a person with these contents lives through the past without running out, and so can write this record. */
    boolean isPossible(Story story) {
        return story.firstShort().filter(this::isPast).isEmpty();
    }

    boolean isPast(LocalDate date) {
        return evenings.stream()
                .anyMatch(evening -> evening.isPast() && evening.date().equals(date));
    }
}
