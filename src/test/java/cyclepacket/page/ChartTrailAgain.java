package cyclepacket.page;

import cyclepacket.page.ChartTrailText.Cartridge;
import cyclepacket.page.ChartTrailText.Change;
import cyclepacket.page.ChartTrailText.Injection;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/**
 * Works the new-cartridge evenings out by the printed sentences, from the printed numbers; shares no code with the
 * ledger. Everything that S of one cartridge can be is a list of stretches, both ends included.
 */
final class ChartTrailAgain {
    private final ChartTrailText trail;
    private final List<Injection> injections;
    private final List<Integer> unknown = new ArrayList<>();
    final List<Change> changes = new ArrayList<>();
    final List<String> ends = new ArrayList<>();

    /**
     * Some of what S can be.
     *
     * @param met how many unknown injections lie before it
     * @param leftAt the injection before which the cartridge is left because of its in-use days; -1 where it runs dry
     */
    private record Stretch(int met, long low, long high, int leftAt) {
        boolean runsDry() {
            return leftAt < 0;
        }
    }

    ChartTrailAgain(ChartTrailText trail) {
        this.trail = trail;
        injections = trail.injections();
        for (int index = 0; index < injections.size(); index++) {
            if (injections.get(index).unknown() > 0) {
                unknown.add(index);
            }
        }
        List<Stretch> before = List.of(new Stretch(0, 0, 0, -1));
        for (Cartridge cartridge : trail.cartridges()) {
            before = next(cartridge, before);
        }
    }

    private List<Stretch> next(Cartridge cartridge, List<Stretch> before) {
        for (int index = 0; index < injections.size(); index++) {
            for (int stop = 0; stop < injections.get(index).stops().size(); stop++) {
                if (injections.get(index).stops().get(stop).box() == cartridge.number()) {
                    return read(cartridge, index, stop);
                }
            }
        }
        List<Stretch> possible = narrowed(cartridge, opened(cartridge, before));
        long least = possible.stream().mapToLong(Stretch::low).min().orElseThrow();
        long most = possible.stream().mapToLong(Stretch::high).max().orElseThrow();
        if (least != cartridge.a() || most != cartridge.b()) {
            throw new AssertionError("cartridge " + cartridge.number() + " gives " + least + " to " + most
                    + ", printed " + cartridge.a() + " to " + cartridge.b());
        }
        addEnds(cartridge, possible);
        return possible;
    }

    private long start(int index) {
        return index == 0 ? 0 : injections.get(index - 1).after();
    }

    private List<Stretch> opened(Cartridge cartridge, List<Stretch> before) {
        List<Stretch> possible = new ArrayList<>();
        for (Stretch stretch : before) {
            for (int index = 0; index < injections.size(); index++) {
                LocalDate evening = injections.get(index).date();
                LocalDate opening = cartridge
                        .opened()
                        .filter(day -> day.isBefore(injections.get(0).date()))
                        .orElse(evening);
                for (Stretch here :
                        cut(stretch, start(index), injections.get(index).after() - 1)) {
                    give(cartridge, here, firstPast(opening), possible);
                }
            }
            long total = injections.get(injections.size() - 1).after();
            cut(stretch, total, Long.MAX_VALUE).forEach(never -> give(cartridge, never, -1, possible));
        }
        return possible;
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

    /** An unknown injection raises the most of a cartridge that was in use; one that ended by then leaves it to the next. */
    private void give(Cartridge cartridge, Stretch opening, int past, List<Stretch> possible) {
        long low = opening.low() + cartridge.least();
        long high = opening.high() + cartridge.most();
        int met = opening.met();
        while (met < unknown.size() && (past < 0 || past > unknown.get(met))) {
            Injection open = injections.get(unknown.get(met));
            end(new Stretch(met, low, Math.min(high, open.after() - 1), -1), past, possible);
            if (high < open.before()) {
                return;
            }
            low = Math.max(low, open.before());
            high += open.unknown();
            met++;
        }
        end(new Stretch(met, low, high, -1), past, possible);
    }

    private void end(Stretch reach, int past, List<Stretch> possible) {
        if (reach.low() > reach.high()) {
            return;
        }
        long limit = past < 0 ? Long.MAX_VALUE : injections.get(past).before();
        if (reach.high() >= limit) {
            possible.add(new Stretch(reach.met(), limit, limit, past));
        }
        possible.addAll(cut(reach, Long.MIN_VALUE, limit - 1));
    }

    /** No S lies in an injection that ran through, below A or above B. */
    private List<Stretch> narrowed(Cartridge cartridge, List<Stretch> forward) {
        boolean isLast = cartridge.number() == trail.cartridges().size();
        List<Stretch> narrowed = new ArrayList<>();
        forward.forEach(stretch -> narrowed.addAll(cut(stretch, cartridge.a(), cartridge.b())));
        for (int index = 0; index < injections.size(); index++) {
            Injection injection = injections.get(index);
            if (injection.ranThrough() || isLast && injection.inFull()) {
                List<Stretch> rest = new ArrayList<>();
                for (Stretch stretch : narrowed) {
                    if (!stretch.runsDry()) {
                        rest.add(stretch);
                        continue;
                    }
                    rest.addAll(cut(stretch, Long.MIN_VALUE, start(index) - 1));
                    rest.addAll(cut(stretch, injection.after(), Long.MAX_VALUE));
                }
                narrowed.clear();
                narrowed.addAll(rest);
            }
        }
        return narrowed;
    }

    /** The part from {@code low} to {@code high}, on whole steps where S comes in steps; nothing when they cross. */
    private List<Stretch> cut(Stretch stretch, long low, long high) {
        long step = trail.step();
        long from = low <= stretch.low() ? stretch.low() : -Math.floorDiv(-low, step) * step;
        long to = high >= stretch.high() ? stretch.high() : Math.floorDiv(high, step) * step;
        return from <= to ? List.of(new Stretch(stretch.met(), from, to, stretch.leftAt())) : List.of();
    }

    private List<Stretch> read(Cartridge cartridge, int index, int stop) {
        Injection injection = injections.get(index);
        long whole = injection.before() + injection.dialled();
        if (injection.confirmed()) {
            long total = trail.showsLeft()
                    ? injection.before()
                            + injection.stops().subList(0, stop + 1).stream()
                                    .mapToLong(ChartTrailText.Stop::number)
                                    .sum()
                    : whole - injection.stops().get(stop).number();
            if (total != cartridge.a() || total != cartridge.b()) {
                throw new AssertionError("cartridge " + cartridge.number() + " was read at " + total + ", printed "
                        + cartridge.a() + " to " + cartridge.b());
            }
        }
        String owed = owed(whole - cartridge.b(), whole - Math.max(cartridge.a(), injection.before()));
        changes.add(new Change(cartridge.number(), injection.date(), injection.number(), "recorded", owed));
        ends.add(shortDay(injection.date()) + " " + shortDay(injection.date()));
        int met = (int) unknown.stream().filter(open -> open < index).count();
        return List.of(new Stretch(met, cartridge.a(), cartridge.b(), -1));
    }

    private void addEnds(Cartridge cartridge, List<Stretch> possible) {
        long total =
                injections.isEmpty() ? 0 : injections.get(injections.size() - 1).after();
        boolean sure = possible.stream().filter(Stretch::runsDry).allMatch(stretch -> stretch.high() < total);
        TreeSet<LocalDate> evenings = new TreeSet<>();
        List<Change> own = new ArrayList<>();
        for (int index = 0; index < injections.size(); index++) {
            addEnd(cartridge, possible, index, own);
        }
        own.forEach(change -> evenings.add(change.date()));
        String chance = sure && evenings.size() == 1 ? "certain" : "possible";
        own.forEach(change ->
                changes.add(new Change(change.leaving(), change.date(), change.injection(), chance, change.owed())));
        ends.add(
                evenings.isEmpty()
                        ? "none none"
                        : shortDay(evenings.first()) + " " + (sure ? shortDay(evenings.last()) : "later"));
    }

    private void addEnd(Cartridge cartridge, List<Stretch> possible, int index, List<Change> own) {
        Injection injection = injections.get(index);
        if (possible.stream().anyMatch(stretch -> stretch.leftAt() == index)) {
            own.add(new Change(cartridge.number(), injection.date(), injection.number(), "", "in-use limit"));
        }
        List<Stretch> here = possible.stream()
                .filter(Stretch::runsDry)
                .flatMap(stretch -> cut(stretch, start(index), injection.after() - 1).stream())
                .toList();
        if (!here.isEmpty()) {
            long least = here.stream().mapToLong(Stretch::low).min().orElseThrow();
            long most = here.stream().mapToLong(Stretch::high).max().orElseThrow();
            long whole = injection.before() + injection.dialled();
            String owed = owed(
                    Math.max(0, Math.min(whole, injection.after()) - most),
                    Math.min(
                            Math.max(whole, injection.after()) - Math.max(least, injection.before()),
                            injection.dialled()));
            own.add(new Change(cartridge.number(), injection.date(), injection.number(), "", owed));
        }
    }

    /** One thousandth is how "just above" looks in whole thousandths. */
    private static String owed(long least, long most) {
        if (least == 0 && most > least || least % 100 == 1) {
            return "above " + number(least - least % 100) + " to " + number(most);
        }
        return least >= most ? number(most) : number(least) + " to " + number(most);
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
                + month.substring(1, 3).toLowerCase(Locale.ROOT);
    }
}
