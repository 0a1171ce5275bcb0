package cyclepacket.page;

import cyclepacket.ledger.Container;
import cyclepacket.ledger.Covered;
import cyclepacket.plan.PlanFiles;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Money;
import cyclepacket.supply.Basket;
import cyclepacket.supply.BuyChoice;
import cyclepacket.supply.BuyChoices;
import cyclepacket.supply.LengthCover;
import cyclepacket.supply.LoadingOrder;
import cyclepacket.supply.Ratio;
import cyclepacket.supply.SupplyItem;
import cyclepacket.supply.SupplyLine;
import cyclepacket.supply.SupplyPlan;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to order and by when as tables for a screen; for staff, and with the least content alone. */
public final class SuppliesTable {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final String currency;
    private final LocalDate today;

    private SuppliesTable(String currency, LocalDate today) {
        this.currency = currency;
        this.today = today;
    }

    /** Every medicine with its own heading, then everything else on the table. */
    public static String of(PlanFiles files, SupplyPlan supply) {
        SuppliesTable table = new SuppliesTable(
                files.clinic().currency(), files.plan().prepared().on());
        return supply.lines().stream().map(table::medicine).collect(Collectors.joining("\n"))
                + (supply.items().isEmpty() ? "" : "\n" + items(supply));
    }

    private String medicine(SupplyLine line) {
        String unit = line.medicine().unit().word();
        StringBuilder text =
                new StringBuilder(line.medicine().id() + " (" + line.medicine().name() + ")\n");
        text.append("  still needed ").append(number(line.needed())).append(' ').append(unit);
        text.append(", at home for certain ").append(number(line.onHandLeast()));
        text.append(", short by at most ").append(number(line.shortAtMost())).append('\n');
        text.append(reach(line));
        if (line.isToBuy()) {
            text.append(toBuy(line));
        }
        line.betterOrder().ifPresent(better -> text.append(better(better, unit)));
        if (!line.lengths().isEmpty()) {
            text.append('\n').append(lengths(line));
        }
        line.choices().ifPresent(choices -> text.append('\n').append(choices(choices)));
        return text.toString();
    }

    private static String reach(SupplyLine line) {
        if (line.undated() > 0) {
            return "  its day is not called yet"
                    + line.firstShort()
                            .map(day -> "; at the earliest " + DAY.format(day))
                            .orElse("") + "\n";
        }
        Covered covered = line.covered();
        String sure = covered.surelyUntil()
                .map(day -> "  enough for sure until " + DAY.format(day))
                .orElse("  not enough for the first dose");
        return sure
                + covered.possiblyUntil()
                        .filter(day -> covered.firstShort().isPresent())
                        .map(day -> ", perhaps until " + DAY.format(day))
                        .orElse("")
                + covered.firstShort()
                        .map(day -> ", first short on " + DAY.format(day))
                        .orElse("") + "\n";
    }

    private String toBuy(SupplyLine line) {
        String by = line.lastOrder()
                .map(last -> at(last)
                        + (last.toLocalDate().isBefore(today)
                                ? ", which has passed: call the pharmacy and the prescriber today"
                                : ""))
                .orElse("no order surely comes in time: call the pharmacy and the prescriber today");
        String bought = line.purchase()
                .chosen()
                .map(basket -> basket(basket) + cost(basket))
                .orElse("no set of sizes covers this: ask the pharmacist");
        String why = line.purchase().isPriced() ? "" : " (least on the labels; prices are missing)";
        return "  order by  " + by + "\n  buy       " + bought + why + "\n"
                + line.purchase().calmest().map(this::calmest).orElse("");
    }

    private String calmest(Basket basket) {
        return "  or        " + basket(basket) + cost(basket) + ", with the fewest new-cartridge evenings ("
                + basket.changeEvenings() + ")\n";
    }

    private static String better(LoadingOrder better, String unit) {
        String order = better.order().stream()
                .map(Container::number)
                .map(number -> "box " + number)
                .collect(Collectors.joining(", "));
        String saves = switch (better.gain()) {
            case PART_USED_FIRST -> "uses first what is in use already";
            case FEWER_EVENINGS -> "saves new-cartridge evenings: " + better.fewerEvenings();
            case LESS_LEFT ->
                "leaves less in opened cartridges: " + number(Ratio.of(better.lessLeft(), 1000)) + " " + unit;
            case SOONER_EXPIRY -> "uses first what expires first";
        };
        return "  loading   " + order + "; " + saves + "\n";
    }

    private static String lengths(SupplyLine line) {
        TextTable table = new TextTable("if it takes", "#needed", "surely until", "perhaps until", "#short at most");
        for (LengthCover length : line.lengths()) {
            Covered covered = length.covered();
            table.row(
                    length.days() + " evenings",
                    number(length.needed()),
                    day(covered.surelyUntil()),
                    day(covered.possiblyUntil()),
                    number(covered.shortAtMost()));
        }
        return table.text();
    }

    private String choices(BuyChoices choices) {
        TextTable table = new TextTable(
                "",
                "buy now",
                "order later",
                "#refill",
                "#left over",
                "#worth " + currency,
                "#paid " + currency,
                "in time");
        for (BuyChoice choice : choices.all()) {
            table.row(
                    choices.best().filter(choice::equals).isPresent() ? "*" : "",
                    basket(choice.now()),
                    choice.later().isEmpty()
                            ? "-"
                            : choice.later().stream()
                                    .map(stage -> basket(stage.basket()))
                                    .collect(Collectors.joining("; ")),
                    percent(choice.refillChance()),
                    number(choice.waste().times(Ratio.of(1, 1000))),
                    money(choice.wasteCost()),
                    money(choice.cost()),
                    choice.isInTime() ? "yes" : "no");
        }
        String odds = choices.odds().isFromClinic()
                ? "  odds: the clinic's own"
                : "  odds: the clinic gives none, so every length counts alike";
        return table.text() + odds + "; means over all lengths\n"
                + choices.best().map(SuppliesTable::stages).orElse("");
    }

    private static String stages(BuyChoice best) {
        return "  * costs least on average\n"
                + (best.later().isEmpty() ? "" : "  then, while stimulation still goes on at that hour:\n")
                + best.later().stream().map(SuppliesTable::stage).collect(Collectors.joining());
    }

    private static String stage(BuyChoice.Stage stage) {
        return "    by " + stage.lastOrder().map(SuppliesTable::at).orElse("no hour that is in time") + ": order "
                + basket(stage.basket()) + " for evening " + stage.days() + " (" + DAY.format(stage.firstShort())
                + ") and on; ordered " + percent(stage.chanceOrdered()) + ", needed " + percent(stage.chanceNeeded())
                + "\n";
    }

    private static String items(SupplyPlan supply) {
        TextTable table = new TextTable("also needed", "#count", "size", "as sold");
        for (SupplyItem item : supply.items()) {
            String sold = item.boxes()
                    .map(boxes -> boxes
                            + (boxes == 1 ? " box of " : " boxes of ")
                            + item.boxOf().orElseThrow())
                    .orElse("");
            String size = item.needle()
                    .map(needle -> needle.gauge() + " gauge, " + needle.length())
                    .or(item::size)
                    .orElse("");
            table.row(item.kind().word(), Integer.toString(item.count()), size, sold);
        }
        return table.text();
    }

    private static String basket(Basket basket) {
        return basket.isEmpty()
                ? "nothing"
                : basket.lines().stream()
                        .map(line -> line.count() + " x " + number(line.size().label()))
                        .collect(Collectors.joining(" + "));
    }

    private String cost(Basket basket) {
        return basket.cost().map(cost -> ", " + number(cost) + " " + currency).orElse("");
    }

    private static String number(Money money) {
        return money.number().toPlainString();
    }

    private static String number(Dose dose) {
        return dose.number().toPlainString();
    }

    private static String number(Ratio mean) {
        return mean.rounded(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private static String money(Optional<Ratio> hundredths) {
        return hundredths
                .map(known -> known.times(Ratio.of(1, 100))
                        .rounded(0, RoundingMode.HALF_UP)
                        .toPlainString())
                .orElse("-");
    }

    private static String percent(Ratio chance) {
        return chance.times(100).rounded(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(DAY::format).orElse("-");
    }

    private static String at(ZonedDateTime at) {
        return DAY.format(at) + ", " + HOUR.format(at) + " in " + at.getZone().getId();
    }
}
