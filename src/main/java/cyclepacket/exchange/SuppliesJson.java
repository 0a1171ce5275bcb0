package cyclepacket.exchange;

import cyclepacket.ledger.Covered;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Money;
import cyclepacket.supply.Basket;
import cyclepacket.supply.BuyChoice;
import cyclepacket.supply.BuyChoices;
import cyclepacket.supply.LengthCover;
import cyclepacket.supply.Ratio;
import cyclepacket.supply.SupplyItem;
import cyclepacket.supply.SupplyLine;
import cyclepacket.supply.SupplyPlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What to order and by when as JSON: a contract that other programs read. */
public final class SuppliesJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final DateTimeFormatter INSTANT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmXXX", Locale.ROOT);

    private SuppliesJson() {}

    /**
     * One JSON object with a line break at its end. {@code lengths} and {@code choices} stand beside the medicines, and
     * are empty once the trigger is called. Chances are from 0 to 1 with four decimals, means of
     * amounts have three, of money two, rounded half up.
     */
    public static String of(Plan plan, SupplyPlan supply) {
        ObjectNode root = JSON.objectNode();
        root.put("plan", plan.id());
        ArrayNode medicines = root.putArray("medicines");
        supply.lines().forEach(line -> medicines.add(medicine(line)));
        ArrayNode items = root.putArray("supplies");
        supply.items().forEach(item -> items.add(item(item)));
        ArrayNode lengths = root.putArray("lengths");
        ArrayNode choices = root.putArray("choices");
        for (SupplyLine line : supply.lines()) {
            line.lengths().forEach(length -> lengths.add(length(line, length)));
            line.choices().ifPresent(known -> choices.add(choices(line, known)));
        }
        return JsonText.of(root);
    }

    private static ObjectNode medicine(SupplyLine line) {
        ObjectNode node = JSON.objectNode();
        node.put("medicine", line.medicine().id());
        node.put("need", line.needed().number());
        node.put("on-hand-least", line.onHandLeast().number());
        node.put("short-at-most", line.shortAtMost().number());
        node.set("buy", line.purchase().chosen().map(SuppliesJson::basket).orElse(null));
        node.put("cost", cost(line));
        node.put("order-by", instant(line.lastOrder()));
        return node;
    }

    private static BigDecimal cost(SupplyLine line) {
        return line.purchase().chosen().flatMap(Basket::cost).map(Money::number).orElse(null);
    }

    private static ArrayNode basket(Basket basket) {
        ArrayNode lines = JSON.arrayNode();
        for (Basket.Line line : basket.lines()) {
            ObjectNode node = lines.addObject();
            node.put("size", line.size().label().number());
            node.put("count", line.count());
        }
        return lines;
    }

    private static ObjectNode item(SupplyItem item) {
        ObjectNode node = JSON.objectNode();
        node.put("item", item.kind().word());
        node.put("count", item.count());
        item.boxOf().ifPresent(size -> node.put("box-of", size));
        item.boxes().ifPresent(boxes -> node.put("boxes", boxes));
        item.size().ifPresent(size -> node.put("size", size));
        item.needle().ifPresent(needle -> {
            node.put("gauge", needle.gauge());
            node.put("length", needle.length().toString());
        });
        return node;
    }

    private static ObjectNode length(SupplyLine line, LengthCover length) {
        Covered covered = length.covered();
        ObjectNode node = JSON.objectNode();
        node.put("medicine", line.medicine().id());
        node.put("days", length.days());
        node.put("need", length.needed().number());
        node.put("surely-until", text(covered.surelyUntil()));
        node.put("possibly-until", text(covered.possiblyUntil()));
        node.put("first-short", text(covered.firstShort()));
        node.put("short-at-most", covered.shortAtMost().number());
        return node;
    }

    private static ObjectNode choices(SupplyLine line, BuyChoices choices) {
        ObjectNode node = JSON.objectNode();
        node.put("medicine", line.medicine().id());
        node.put("odds", choices.odds().isFromClinic() ? "clinic" : "even");
        ArrayNode all = node.putArray("ways");
        for (BuyChoice choice : choices.all()) {
            ObjectNode way = choice(choice);
            way.put("best", choices.best().filter(choice::equals).isPresent());
            all.add(way);
        }
        return node;
    }

    private static ObjectNode choice(BuyChoice choice) {
        ObjectNode node = JSON.objectNode();
        node.set("now", basket(choice.now()));
        node.put("refill-chance", chance(choice.refillChance()));
        node.put("waste", choice.waste().times(Ratio.of(1, 1000)).rounded(3, RoundingMode.HALF_UP));
        node.put("waste-cost", money(choice.wasteCost()));
        node.put("cost", money(choice.cost()));
        node.put("in-time", choice.isInTime());
        ArrayNode later = node.putArray("later");
        for (BuyChoice.Stage stage : choice.later()) {
            ObjectNode own = later.addObject();
            own.put("from-days", stage.days());
            own.put("first-short", stage.firstShort().toString());
            own.put("order-by", instant(stage.lastOrder()));
            own.set("buy", basket(stage.basket()));
            own.put("chance-ordered", chance(stage.chanceOrdered()));
            own.put("chance-needed", chance(stage.chanceNeeded()));
        }
        return node;
    }

    private static BigDecimal money(Optional<Ratio> hundredths) {
        return hundredths.map(known -> mean(known.times(Ratio.of(1, 100)))).orElse(null);
    }

    private static BigDecimal mean(Ratio mean) {
        return mean.rounded(2, RoundingMode.HALF_UP);
    }

    private static BigDecimal chance(Ratio chance) {
        return chance.rounded(4, RoundingMode.HALF_UP);
    }

    private static String instant(Optional<ZonedDateTime> at) {
        return at.map(INSTANT::format).orElse(null);
    }

    private static String text(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse(null);
    }
}
