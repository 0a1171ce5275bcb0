package cyclepacket.supply;

import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Money;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;

/**
 * Works out the ways to buy while the length is unknown: for each length the best set for it now, then one order after the
 * other, each at its last hour and for everything that cannot wait for a later one. Whoever orders at that hour knows only
 * that stimulation still goes on.
 */
final class ChoiceMaker {
    private final Shop shop;
    private final DoseUnit unit;
    private final LengthOdds odds;
    private final SortedMap<Integer, EveningTotals> lengths;
    private final EveningTotals longest;
    private final long start;
    private final Calendar calendar;

    /**
     * What the choices need to know of the calendar.
     *
     * @param lastOrder the last hour to order for a first short evening
     */
    record Calendar(LocalDate startOn, LocalDate today, Function<LocalDate, Optional<ZonedDateTime>> lastOrder) {}

    /**
     * @param lengths the totals of the course by length, not empty
     * @param start the total of what is at hand
     */
    ChoiceMaker(
            Shop shop,
            DoseUnit unit,
            LengthOdds odds,
            SortedMap<Integer, EveningTotals> lengths,
            long start,
            Calendar calendar) {
        this.shop = shop;
        this.unit = unit;
        this.odds = odds;
        this.lengths = lengths;
        longest = lengths.get(lengths.lastKey());
        this.start = start;
        this.calendar = calendar;
    }

    /** Empty when every length needs the same, when nothing runs short, or when nothing can be bought. */
    Optional<BuyChoices> choices() {
        long least = lengths.get(lengths.firstKey()).goal();
        if (longest.goal() <= Math.max(start, least)) {
            return Optional.empty();
        }
        List<BuyChoice> all = new ArrayList<>();
        for (Map.Entry<Integer, EveningTotals> length : lengths.entrySet()) {
            Optional<Basket> now = best(length.getValue(), start);
            if (now.isEmpty()) {
                return Optional.empty();
            }
            if (all.stream().noneMatch(choice -> choice.now().holdsTheSameAs(now.get()))) {
                choice(now.get(), length.getKey()).ifPresent(all::add);
            }
        }
        all.sort(Comparator.comparing((BuyChoice choice) -> choice.now().labelled())
                .reversed());
        Comparator<BuyChoice> cheapest = Comparator.comparing(
                        (BuyChoice choice) -> choice.cost().orElse(choice.waste()))
                .thenComparing(choice -> choice.later().size())
                .thenComparing(BuyChoice::waste);
        return Optional.of(new BuyChoices(
                odds, all, all.stream().filter(BuyChoice::isInTime).min(cheapest)));
    }

    private Optional<Basket> best(EveningTotals totals, long from) {
        return shop.best(BasketSearch.Goal.CHEAPEST, totals, from, totals.goal());
    }

    private Optional<BuyChoice> choice(Basket now, int forDays) {
        List<BuyChoice.Stage> later = new ArrayList<>();
        long total = shop.reach(longest, start, now);
        while (total < longest.goal()) {
            int days = firstBeyond(total);
            LocalDate firstShort = lengths.get(days).firstShort(total);
            Optional<ZonedDateTime> by = calendar.lastOrder().apply(firstShort);
            Optional<Basket> refill = best(lengths.get(lastDueWith(days, by)), total);
            if (refill.isEmpty()) {
                return Optional.empty();
            }
            later.add(stage(days, firstShort, by, refill.get()));
            total = shop.reach(longest, total, refill.get());
        }
        return Optional.of(withMeans(now, forDays, later));
    }

    private int firstBeyond(long total) {
        return lengths.entrySet().stream()
                .filter(length -> length.getValue().goal() > total)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** The longest length that no later order could still cover: all up to it go into one order. */
    private int lastDueWith(int days, Optional<ZonedDateTime> by) {
        int last = days;
        for (int next : lengths.tailMap(days + 1).keySet()) {
            long covered = lengths.get(last).goal();
            boolean isLonger = lengths.get(next).goal() > covered;
            boolean canWait = isLonger
                    && calendar.lastOrder()
                            .apply(lengths.get(next).firstShort(covered))
                            .filter(own -> by.isEmpty() || own.isAfter(by.get()))
                            .isPresent();
            if (canWait) {
                return last;
            }
            last = next;
        }
        return last;
    }

    /** Without a trigger call before its last hour the order has to be made, needed or not. */
    private BuyChoice.Stage stage(int days, LocalDate firstShort, Optional<ZonedDateTime> by, Basket basket) {
        int orderedFrom = by.map(at -> ChronoUnit.DAYS.between(calendar.startOn(), at.toLocalDate()))
                .map(passed -> (int) Math.min(days, Math.max(0, passed + 1)))
                .orElse(days);
        return new BuyChoice.Stage(
                days, orderedFrom, firstShort, by, basket, odds.atLeast(days), odds.atLeast(orderedFrom));
    }

    private BuyChoice withMeans(Basket now, int forDays, List<BuyChoice.Stage> later) {
        Ratio waste = Ratio.ZERO;
        Ratio wasteCost = Ratio.ZERO;
        Ratio cost = Ratio.ZERO;
        for (Map.Entry<Integer, EveningTotals> length : lengths.entrySet()) {
            Ratio chance = odds.of(length.getKey());
            long content = shop.content(now);
            long paid = paid(now);
            for (BuyChoice.Stage stage : later) {
                boolean isBought = stage.orderedFromDays() <= length.getKey();
                content += isBought ? shop.content(stage.basket()) : 0;
                paid += isBought ? paid(stage.basket()) : 0;
            }
            long left = start + content - length.getValue().goal();
            waste = waste.plus(chance.times(left));
            cost = cost.plus(chance.times(paid));
            if (content > 0) {
                wasteCost = wasteCost.plus(
                        chance.times(Ratio.of(Math.min(left, content), content)).times(paid));
            }
        }
        boolean isInTime = later.stream()
                .allMatch(stage -> stage.lastOrder()
                        .filter(at -> !at.toLocalDate().isBefore(calendar.today()))
                        .isPresent());
        return new BuyChoice(now, forDays, later, waste, priced(wasteCost), priced(cost), isInTime);
    }

    private long paid(Basket basket) {
        return shop.isPriced() ? basket.cost().map(Money::hundredths).orElseThrow() : 0;
    }

    private Optional<Ratio> priced(Ratio money) {
        return Optional.of(money).filter(known -> shop.isPriced());
    }
}
