package cyclepacket.actingout;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the closed form says of one plan, in the words of the acting-out; amounts in thousandths.
 *
 * @param entries what may end where
 * @param changes first and last evening of each end
 * @param trails how each box is reached
 * @param lived what the past evenings are said to have been
 * @param stops texts of any finding that says the record cannot be true
 */
record Foretold(
        List<Entry> entries,
        List<Change> changes,
        List<Trail> trails,
        List<Lived> lived,
        Optional<LocalDate> surelyUntil,
        Optional<LocalDate> possiblyUntil,
        Optional<LocalDate> firstShort,
        long shortAtMost,
        List<String> stops) {

    /**
     * One end that is foretold for one setting.
     *
     * @param owedLeast the smallest amount that can be owed, zero when it is thrown away
     * @param owedMost the largest
     */
    record Entry(
            int box, LocalDate date, int setting, boolean inUseLimit, boolean certain, long owedLeast, long owedMost)
            implements Comparable<Entry> {

        boolean holds(End end) {
            return box == end.box()
                    && date.equals(end.date())
                    && setting == end.setting()
                    && inUseLimit == end.inUseLimit()
                    && owedLeast <= end.owed()
                    && end.owed() <= owedMost;
        }

        boolean holds(Entry other) {
            return isSamePlace(other) && owedLeast <= other.owedLeast && other.owedMost <= owedMost;
        }

        boolean isSamePlace(Entry other) {
            return box == other.box
                    && date.equals(other.date)
                    && setting == other.setting
                    && inUseLimit == other.inUseLimit;
        }

        @Override
        public int compareTo(Entry other) {
            return java.util.Comparator.comparingInt(Entry::box)
                    .thenComparing(Entry::date)
                    .thenComparingInt(Entry::setting)
                    .thenComparing(Entry::inUseLimit)
                    .compare(this, other);
        }
    }

    /** The evenings between which a box ends; {@code latest} is empty when it may not end at all. */
    record Change(int box, LocalDate earliest, Optional<LocalDate> latest) {
        boolean spans(LocalDate date) {
            return !date.isBefore(earliest)
                    && latest.map(last -> !date.isAfter(last)).orElse(true);
        }
    }

    Foretold withoutTrails() {
        return new Foretold(
                entries, changes, List.of(), lived, surelyUntil, possiblyUntil, firstShort, shortAtMost, stops);
    }

    Optional<Change> changeOf(int box) {
        return changes.stream().filter(change -> change.box() == box).findFirst();
    }
}
