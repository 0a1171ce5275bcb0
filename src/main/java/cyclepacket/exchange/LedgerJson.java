package cyclepacket.exchange;

import cyclepacket.course.Course;
import cyclepacket.course.Trigger;
import cyclepacket.ledger.ContainerLine;
import cyclepacket.ledger.Covered;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.ledger.DayChange;
import cyclepacket.ledger.LedgerDay;
import cyclepacket.ledger.MedicineLedger;
import cyclepacket.ledger.Owed;
import cyclepacket.plan.Anchor;
import cyclepacket.plan.Plan;
import cyclepacket.quantity.Dose;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The ledger as JSON: a contract that other programs read. */
public final class LedgerJson {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final DateTimeFormatter INSTANT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mmXXX", Locale.ROOT);

    private LedgerJson() {}

    /** One JSON object with a line break at its end. */
    public static String of(Plan plan, Course course, CycleLedger ledger) {
        ObjectNode root = JSON.objectNode();
        root.put("plan", plan.id());
        root.put("issue", plan.issue());
        root.set("anchors", anchors(course));
        ArrayNode medicines = root.putArray("medicines");
        ledger.medicines().forEach(medicine -> medicines.add(medicine(medicine)));
        return JsonText.of(root);
    }

    private static ObjectNode anchors(Course course) {
        ObjectNode anchors = JSON.objectNode();
        anchors.put("S1", text(course.anchors().date(Anchor.S1)));
        anchors.put("T", instant(course.anchors().trigger().map(Trigger::at)));
        anchors.put("R", instant(course.anchors().retrieval()));
        return anchors;
    }

    private static String instant(Optional<ZonedDateTime> at) {
        return at.map(INSTANT::format).orElse(null);
    }

    private static String text(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse(null);
    }

    private static ObjectNode medicine(MedicineLedger ledger) {
        ObjectNode node = JSON.objectNode();
        node.put("medicine", ledger.medicine().id());
        node.put("unit", ledger.medicine().unit().word());
        ArrayNode days = node.putArray("days");
        ledger.days().forEach(day -> days.add(day(ledger, day)));
        ArrayNode changes = node.putArray("changes");
        ledger.changes().forEach(line -> changes.add(end(ledger, line)));
        node.set("covered", covered(ledger.covered()));
        return node;
    }

    private static ObjectNode day(MedicineLedger ledger, LedgerDay day) {
        ObjectNode node = JSON.objectNode();
        node.put("date", day.evening().date().toString());
        node.put("day", day.evening().day());
        node.put("dose", day.evening().ordered().number());
        node.put("state", day.evening().state().name().toLowerCase(Locale.ROOT));
        day.evening().given().ifPresent(given -> node.put("given", given.number()));
        ArrayNode settings = node.putArray("settings");
        day.evening().settings().forEach(setting -> settings.add(setting.number()));
        ArrayNode changes = node.putArray("changes");
        day.changes().forEach(change -> changes.add(change(ledger, change)));
        return node;
    }

    private static ObjectNode change(MedicineLedger ledger, DayChange change) {
        ObjectNode node = JSON.objectNode();
        node.put("leaving", change.leaving());
        node.put("setting", change.setting());
        node.put("chance", change.isCertain() ? "certain" : "possible");
        node.put("cause", change.cause().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        if (change.owed().isPresent()) {
            node.set("owed", owed(ledger, change.owed().get()));
        } else {
            node.putNull("owed");
        }
        return node;
    }

    private static ObjectNode owed(MedicineLedger ledger, Owed owed) {
        Dose least = owed.least();
        if (owed.isAboveZero()) {
            Dose step = ledger.medicine().device().pen().orElseThrow().dial().step();
            least = step.min(owed.most());
        }
        ObjectNode node = JSON.objectNode();
        node.put("least", least.number());
        node.put("most", owed.most().number());
        return node;
    }

    private static ObjectNode end(MedicineLedger ledger, ContainerLine line) {
        ObjectNode node = JSON.objectNode();
        int leaving = line.container().number();
        node.put("leaving", leaving);
        ledger.containers().stream()
                .map(other -> other.container().number())
                .filter(number -> number > leaving)
                .findFirst()
                .ifPresentOrElse(number -> node.put("next", number), () -> node.putNull("next"));
        node.put("earliest", text(line.firstEnd()));
        node.put("latest", text(line.lastEnd()));
        return node;
    }

    private static ObjectNode covered(Covered covered) {
        ObjectNode node = JSON.objectNode();
        node.put("surely-until", text(covered.surelyUntil()));
        node.put("possibly-until", text(covered.possiblyUntil()));
        node.put("first-short", text(covered.firstShort()));
        node.put("short-at-most", covered.shortAtMost().number());
        return node;
    }
}
