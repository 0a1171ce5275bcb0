package cyclepacket.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Which spot each injection goes into: sides alternate, two injections of one day lie on different sides where they can,
 * and no spot is used twice within a day or on two days that follow each other, as long as there are spots enough (four
 * injections a day under the skin, two into muscle).
 */
public final class SiteRotation {
    private final Map<Site, LocalDate> lastUse = new EnumMap<>(Site.class);
    private final List<Site> placed = new ArrayList<>();
    private final List<LocalDate> dates = new ArrayList<>();

    private SiteRotation() {}

    /** One injection; a list of them is in the order in which they are given. */
    public record Injection(LocalDate date, boolean isIntoMuscle) {
        public Injection {
            Objects.requireNonNull(date, "date");
        }
    }

    /** One spot for each injection, in the same order. */
    public static List<Site> of(List<Injection> injections) {
        SiteRotation rotation = new SiteRotation();
        injections.forEach(rotation::place);
        return List.copyOf(rotation.placed);
    }

    private void place(Injection injection) {
        List<Site> all = sites(injection.isIntoMuscle());
        List<Site> today = kept(all, site -> !isUsedOn(site, injection.date()));
        List<Site> rested = kept(today, site -> !isUsedOn(site, injection.date().minusDays(1)));
        List<Site> free = rested.isEmpty() ? (today.isEmpty() ? all : today) : rested;
        boolean left = wantsLeft(injection);
        List<Site> preferred = kept(free, site -> site.isLeft() == left);
        Site site = (preferred.isEmpty() ? free : preferred)
                .stream()
                        .min(Comparator.comparing((Site each) -> lastUse.getOrDefault(each, LocalDate.MIN))
                                .thenComparing(Site::number))
                        .orElseThrow();
        lastUse.put(site, injection.date());
        placed.add(site);
        dates.add(injection.date());
    }

    /** The other side than the injection before it; on a new day the other side than the first of the last day. */
    private boolean wantsLeft(Injection injection) {
        if (dates.isEmpty()) {
            return true;
        }
        LocalDate last = dates.get(dates.size() - 1);
        boolean isSameDay = last.equals(injection.date());
        Site other = isSameDay ? placed.get(placed.size() - 1) : placed.get(dates.indexOf(last));
        return !other.isLeft();
    }

    private boolean isUsedOn(Site site, LocalDate date) {
        return date.equals(lastUse.get(site));
    }

    private static List<Site> sites(boolean isMuscle) {
        return kept(List.of(Site.values()), site -> site.isMuscle() == isMuscle);
    }

    private static List<Site> kept(List<Site> sites, Predicate<Site> keeps) {
        return sites.stream().filter(keeps).toList();
    }
}
