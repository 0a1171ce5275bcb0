package cyclepacket.page;

import cyclepacket.page.ChartTrailText.Cartridge;
import cyclepacket.page.ChartTrailText.Change;
import cyclepacket.page.ChartTrailText.Injection;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Works the new-cartridge evenings out by the printed sentences, from the printed numbers; shares no code with the
 * ledger. Every possible S is kept as stretches of thousandths, both ends included.
 */
final class ChartTrailAgain {
    private final ChartTrailText trail;
    private final List<Injection> injections;
    private final List<Injection> unknown = new ArrayList<>();
    final List<Change> changes = new ArrayList<>();
    final List<String> ends = new ArrayList<>();

    /** What S of one cartridge can be: where it runs dry, and where it is left because of its in-use days. */
    private record Possible(List<long[]> dry, TreeMap<Integer, Long> left) {
        List<long[]> all() {
            List<long[]> all = new ArrayList<>(dry);
            left.values().forEach(total -> all.add(new long[] {total, total}));
            return all;
        }

        long least() {
            return all().stream().mapToLong(stretch -> stretch[0]).min().orElseThrow();
        }

        long most() {
            return all().stream().mapToLong(stretch -> stretch[1]).max().orElseThrow();
        }
    }

    ChartTrailAgain(ChartTrailText trail) {
        this.trail = trail;
        injections = trail.injections();
        injections.stream().filter(injection -> injection.unknown() > 0).forEach(unknown::add);
        Possible before = new Possible(List.<long[]>of(new long[] {0, 0}), new TreeMap<>());
        for (Cartridge cartridge : trail.cartridges()) {
            before = next(cartridge, before);
        }
    }

    private Possible next(Cartridge cartridge, Possible before) {
        Possible forward = raised(cartridge, before);
        for (int index = 0; index < injections.size(); index++) {
            for (int stop = 0; stop < injections.get(index).stops().size(); stop++) {
                if (injections.get(index).stops().get(stop).box() == cartridge.number()) {
                    return read(cartridge, index, stop);
                }
            }
        }
        Possible possible = narrowed(cartridge, forward);
        if (possible.least() != cartridge.a() || possible.most() != cartridge.b()) {
            throw new AssertionError("cartridge " + cartridge.number() + " gives " + possible.least() + " to "
                    + possible.most() + ", printed " + cartridge.a() + " to " + cartridge.b());
        }
        addEnds(cartridge, possible);
        return possible;
    }

    /** An injection that nobody knows raises the most of the cartridge in use then. */
    private Possible raised(Cartridge cartridge, Possible before) {
        long most = cartridge.most();
        Possible forward = opened(cartridge, most, before);
        while (!unknown.isEmpty()
                && forward.most() >= unknown.get(0).before()
                && !isReadEarlier(cartridge, unknown.get(0))) {
            most += unknown.remove(0).unknown();
            forward = opened(cartridge, most, before);
        }
        return forward;
    }

    private boolean isReadEarlier(Cartridge cartridge, Injection open) {
        return injections.subList(0, injections.indexOf(open) + 1).stream()
                .flatMap(injection -> injection.stops().stream())
                .anyMatch(stop -> stop.box() >= cartridge.number());
    }

    private long start(int index) {
        return index == 0 ? 0 : injections.get(index - 1).after();
    }

    private Possible opened(Cartridge cartridge, long most, Possible before) {
        List<long[]> dry = new ArrayList<>();
        TreeMap<Integer, Long> left = new TreeMap<>();
        for (long[] stretch : before.all()) {
            for (int index = 0; index < injections.size(); index++) {
                long low = Math.max(stretch[0], start(index));
                long high = Math.min(stretch[1], injections.get(index).after() - 1);
                if (low <= high) {
                    LocalDate opening = cartridge
                            .opened()
                            .filter(day -> day.isBefore(injections.get(0).date()))
                            .orElse(injections.get(index).date());
                    addStretch(low + cartridge.least(), high + most, firstPast(opening), dry, left);
                }
            }
            long total = injections.get(injections.size() - 1).after();
            if (stretch[1] >= total) {
                dry.add(new long[] {Math.max(stretch[0], total) + cartridge.least(), stretch[1] + most});
            }
        }
        return new Possible(dry, left);
    }

    private int firstPast(LocalDate opening) {
        LocalDate last = opening.plusDays(trail.inUseDays() - (trail.openingIsDayOne() ? 1 : 0));
        for (int index = 0; index < injections.size(); index++) {
            if (injections.get(index).date().isAfter(last)) {
                return index;
            }
        }
        return -1;
    }

    private void addStretch(long low, long high, int past, List<long[]> dry, TreeMap<Integer, Long> left) {
        long limit = past < 0 ? Long.MAX_VALUE : injections.get(past).before();
        if (high >= limit) {
            left.put(past, limit);
        }
        if (low < limit) {
            dry.add(new long[] {low, Math.min(high, limit - 1)});
        }
    }

    /** No S lies in an injection that ran through, below A or above B. */
    private Possible narrowed(Cartridge cartridge, Possible forward) {
        List<long[]> dry = cut(forward.dry(), cartridge.a(), cartridge.b());
        for (int index = 0; index < injections.size(); index++) {
            if (injections.get(index).ranThrough()) {
                List<long[]> rest = cut(dry, Long.MIN_VALUE, start(index) - 1);
                rest.addAll(cut(dry, injections.get(index).after(), Long.MAX_VALUE));
                dry = rest;
            }
        }
        TreeMap<Integer, Long> left = new TreeMap<>(forward.left());
        left.values().removeIf(total -> total < cartridge.a() || total > cartridge.b());
        return new Possible(dry, left);
    }

    private static List<long[]> cut(List<long[]> stretches, long low, long high) {
        List<long[]> kept = new ArrayList<>();
        for (long[] stretch : stretches) {
            if (Math.max(stretch[0], low) <= Math.min(stretch[1], high)) {
                kept.add(new long[] {Math.max(stretch[0], low), Math.min(stretch[1], high)});
            }
        }
        return kept;
    }

    private Possible read(Cartridge cartridge, int index, int stop) {
        Injection injection = injections.get(index);
        if (injection.confirmed()) {
            long drawn = trail.showsLeft()
                    ? injection.stops().subList(0, stop + 1).stream()
                            .mapToLong(ChartTrailText.Stop::number)
                            .sum()
                    : injection.dialled() - injection.stops().get(stop).number();
            long total = injection.before() + drawn;
            if (total != cartridge.a() || total != cartridge.b()) {
                throw new AssertionError("cartridge " + cartridge.number() + " was read at " + total + ", printed "
                        + cartridge.a() + " to " + cartridge.b());
            }
        }
        long end = injection.before() + injection.dialled();
        add(cartridge, index, "recorded", owed(end - cartridge.b(), end - Math.max(cartridge.a(), injection.before())));
        String day = shortDay(injection.date());
        ends.add(day + " " + day);
        return new Possible(List.<long[]>of(new long[] {cartridge.a(), cartridge.b()}), new TreeMap<>());
    }

    private void addEnds(Cartridge cartridge, Possible possible) {
        TreeSet<LocalDate> evenings = new TreeSet<>();
        long total = injections.get(injections.size() - 1).after();
        boolean sure = possible.dry().stream().allMatch(stretch -> stretch[1] < total);
        List<Change> own = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            String chance = sure && evenings.size() == 1 ? "certain" : "possible";
            own.clear();
            for (int index = 0; index < injections.size(); index++) {
                addEnd(cartridge, possible, index, chance, own);
            }
            own.forEach(change -> evenings.add(change.date()));
        }
        changes.addAll(own);
        String none = "none none";
        ends.add(
                evenings.isEmpty()
                        ? none
                        : shortDay(evenings.first()) + " " + (sure ? shortDay(evenings.last()) : "later"));
    }

    private void addEnd(Cartridge cartridge, Possible possible, int index, String chance, List<Change> own) {
        Injection injection = injections.get(index);
        if (possible.left().containsKey(index)) {
            own.add(new Change(cartridge.number(), injection.date(), injection.number(), chance, "in-use limit"));
        }
        List<long[]> here = cut(possible.dry(), start(index), injection.after() - 1);
        if (!here.isEmpty()) {
            long least = here.stream().mapToLong(stretch -> stretch[0]).min().orElseThrow();
            long most = here.stream().mapToLong(stretch -> stretch[1]).max().orElseThrow();
            String owed = owed(injection.after() - most, injection.after() - Math.max(least, injection.before()));
            own.add(new Change(cartridge.number(), injection.date(), injection.number(), chance, owed));
        }
    }

    private void add(Cartridge cartridge, int index, String chance, String owed) {
        changes.add(new Change(
                cartridge.number(),
                injections.get(index).date(),
                injections.get(index).number(),
                chance,
                owed));
    }

    /** One thousandth is how "above zero" looks in whole thousandths. */
    private static String owed(long least, long most) {
        if (least <= 1 && most > least) {
            return "above 0 to " + number(most);
        }
        return least == most ? number(most) : number(least) + " to " + number(most);
    }

    private static String number(long thousandths) {
        BigDecimal number = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros();
        String plain = (number.scale() < 0 ? number.setScale(0) : number).toPlainString();
        String whole = plain.contains(".") ? plain.substring(0, plain.indexOf('.')) : plain;
        return whole.replaceAll("(\\d)(?=(\\d{3})+$)", "$1,") + plain.substring(whole.length());
    }

    private static String shortDay(LocalDate date) {
        String month = date.getMonth().name();
        return date.getDayOfMonth() + " " + month.charAt(0)
                + month.substring(1, 3).toLowerCase(java.util.Locale.ROOT);
    }
}
