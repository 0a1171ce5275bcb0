package cyclepacket.page;

import cyclepacket.ledger.Covered;
import cyclepacket.quantity.Dose;
import cyclepacket.supply.Basket;
import cyclepacket.supply.BuyChoice;
import cyclepacket.supply.BuyChoices;
import cyclepacket.supply.LengthCover;
import cyclepacket.supply.Ratio;
import cyclepacket.supply.SupplyItem;
import cyclepacket.supply.SupplyLine;
import java.math.RoundingMode;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Section 9 of the chart copy: the order sheet, with what each way to buy leaves over and what that is worth. */
final class ChartOrders {
    private final ChartSource source;
    private final ChartWords words;
    private final List<SupplyLine> lines;

    ChartOrders(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
        lines = source.supply().lines();
    }

    ChartView.Orders view() {
        Optional<ChartTable> buy = buy();
        // With something to buy the tables below say it all.
        Optional<ChartTable> sums = buy.isPresent() ? Optional.empty() : Optional.of(sums());
        return new ChartView.Orders(sums, buy, steps(), lengths(), ways(), items());
    }

    private ChartTable sums() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "sums", "medicine", "#need", "#home", "#short", "#left");
        for (SupplyLine line : lines) {
            Dose none = Dose.zero(line.medicine().unit());
            boolean isLeft = line.onHandLeast().isMoreThan(line.needed());
            table.row(
                    ChartInputs.name(source, line.medicine()),
                    words.amount(line.needed()),
                    words.amount(line.onHandLeast()),
                    words.amount(line.shortAtMost()),
                    words.amount(isLeft ? line.onHandLeast().minus(line.needed()) : none));
        }
        return table.build();
    }

    private Optional<ChartTable> buy() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "orders", "medicine", "set", "#cost", "#evenings", "by", "done");
        boolean isEmpty = true;
        for (SupplyLine line : lines) {
            if (line.isToBuy()) {
                isEmpty = false;
                table.row(
                        ChartInputs.name(source, line.medicine()),
                        line.purchase().chosen().map(this::basket).orElseGet(() -> words.text("orders.no-set")),
                        line.purchase().chosen().map(this::cost).orElse(words.text("none")),
                        line.purchase().chosen().map(this::evenings).orElse(words.text("none")),
                        at(line.lastOrder()),
                        "");
                line.purchase()
                        .calmest()
                        .ifPresent(calmest -> table.row(
                                words.text("orders.calmest"),
                                basket(calmest),
                                cost(calmest),
                                evenings(calmest),
                                "",
                                ""));
            }
        }
        return isEmpty ? Optional.empty() : Optional.of(table.build());
    }

    private String evenings(Basket basket) {
        return Integer.toString(basket.changeEvenings());
    }

    private Optional<ChartTable> steps() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "steps", "medicine", "by", "set", "first", "#ordered", "#needed");
        boolean isEmpty = true;
        for (SupplyLine line : lines) {
            Optional<BuyChoice> best = line.choices().flatMap(BuyChoices::best);
            if (best.isPresent()) {
                isEmpty = false;
                best.map(BuyChoice::now)
                        .filter(now -> !now.isEmpty())
                        .ifPresent(now -> table.row(
                                ChartInputs.name(source, line.medicine()),
                                at(line.lastOrder()),
                                basket(now),
                                line.firstShort().map(words::day).orElse(words.text("none")),
                                percent(Ratio.of(1, 1)),
                                ""));
                best.get()
                        .later()
                        .forEach(stage -> table.row(
                                ChartInputs.name(source, line.medicine()),
                                at(stage.lastOrder()),
                                basket(stage.basket()),
                                words.day(stage.firstShort()),
                                percent(stage.chanceOrdered()),
                                percent(stage.chanceNeeded())));
            }
        }
        return isEmpty ? Optional.empty() : Optional.of(table.build());
    }

    private Optional<ChartTable> lengths() {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "lengths", "medicine", "#days", "#need", "surely", "possibly", "#short");
        boolean isEmpty = true;
        for (SupplyLine line : lines) {
            // What has no day yet, or no evening left, reaches nowhere and needs no row.
            if (line.lengths().stream().allMatch(length -> length.needed().isZero())) {
                continue;
            }
            for (LengthCover length : line.lengths()) {
                isEmpty = false;
                Covered covered = length.covered();
                table.row(
                        ChartInputs.name(source, line.medicine()),
                        Integer.toString(length.days()),
                        words.amount(length.needed()),
                        words.date(covered.surelyUntil(), "none"),
                        words.date(covered.possiblyUntil(), "none"),
                        words.amount(covered.shortAtMost()));
            }
        }
        return isEmpty ? Optional.empty() : Optional.of(table.build());
    }

    private List<ChartTable> ways() {
        List<ChartTable> tables = new ArrayList<>();
        for (SupplyLine line : lines) {
            line.choices().ifPresent(choices -> tables.add(ways(line, choices)));
        }
        return tables;
    }

    private ChartTable ways(SupplyLine line, BuyChoices choices) {
        ChartTable.Builder table =
                ChartTable.of(words.wording(), "ways", "now", "later", "#refill", "#waste", "#worth", "#paid", "time");
        table.caption(words.fill(
                choices.odds().isFromClinic() ? "ways.odds.clinic" : "ways.odds.even",
                "medicine",
                line.medicine().name()));
        for (BuyChoice choice : choices.all()) {
            String later = choice.later().isEmpty()
                    ? words.text("none")
                    : choice.later().stream()
                            .map(stage -> basket(stage.basket()))
                            .collect(Collectors.joining("\n"));
            table.row(
                    choices.best().filter(choice::equals).isPresent(),
                    List.of(
                            basket(choice.now()),
                            later,
                            percent(choice.refillChance()),
                            mean(line, choice.waste()),
                            money(choice.wasteCost()),
                            money(choice.cost()),
                            words.text(choice.isInTime() ? "ways.in-time" : "ways.late")));
        }
        return table.build();
    }

    private Optional<ChartTable> items() {
        ChartTable.Builder table = ChartTable.of(words.wording(), "items", "item", "#count", "sold", "done");
        for (SupplyItem item : source.supply().items()) {
            table.row(named(item), Integer.toString(item.count()), sold(item), "");
        }
        return source.supply().items().isEmpty() ? Optional.empty() : Optional.of(table.build());
    }

    private String named(SupplyItem item) {
        String name = words.text("items." + item.kind().key());
        return item.needle()
                .map(needle -> name + ", " + needle.gauge() + " gauge, " + needle.length())
                .or(() -> item.size()
                        .filter(size -> item.kind() == SupplyItem.Kind.EMPTY_SYRINGE)
                        .map(size -> name + ", " + size))
                .orElse(name);
    }

    private String sold(SupplyItem item) {
        return item.boxes()
                .map(boxes -> words.fill(
                        "items.boxes",
                        "boxes",
                        Integer.toString(boxes),
                        "holds",
                        Integer.toString(item.boxOf().orElseThrow())))
                .or(() -> item.size().filter(size -> item.kind() == SupplyItem.Kind.SHARPS_CONTAINER))
                .orElse(words.text("not-told"));
    }

    private String basket(Basket basket) {
        return basket.isEmpty()
                ? words.text("none")
                : basket.lines().stream()
                        .map(line -> ChartWords.unbroken(line.count() + " \u00d7 "
                                + words.amount(line.size().label())))
                        .collect(Collectors.joining("\n"));
    }

    private String cost(Basket basket) {
        return basket.cost()
                .map(cost -> ChartWords.unbroken(cost.number().toPlainString() + " "
                        + source.files().clinic().currency()))
                .orElse(words.text("not-told"));
    }

    private String at(Optional<ZonedDateTime> by) {
        return by.map(at -> words.day(at.toLocalDate()) + "\n" + words.time(at.toLocalTime()))
                .orElse(words.text("supply.too-late"));
    }

    /** A mean to three decimals at most, half up. */
    private String mean(SupplyLine line, Ratio milliUnits) {
        long rounded = milliUnits.rounded(0, RoundingMode.HALF_UP).longValueExact();
        return words.amount(new Dose(rounded, line.medicine().unit()));
    }

    private String money(Optional<Ratio> hundredths) {
        return hundredths
                .map(known -> ChartWords.unbroken(known.times(Ratio.of(1, 100))
                                .rounded(0, RoundingMode.HALF_UP)
                                .toPlainString()
                        + " " + source.files().clinic().currency()))
                .orElse(words.text("not-told"));
    }

    private static String percent(Ratio chance) {
        return chance.times(100).rounded(0, RoundingMode.HALF_UP).toPlainString() + AmountWords.NO_BREAK + "%";
    }
}
