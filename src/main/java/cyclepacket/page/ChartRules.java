package cyclepacket.page;

import static cyclepacket.page.AmountWords.NO_BREAK;

import cyclepacket.plan.Clinic;
import cyclepacket.plan.Device.CartridgePen;
import cyclepacket.plan.HouseRules;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Pharmacy;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The rules that the computation used: what each pen can do, and what this clinic decided. */
final class ChartRules {
    private final ChartSource source;
    private final ChartWords words;

    ChartRules(ChartSource source, ChartWords words) {
        this.source = source;
        this.words = words;
    }

    List<ChartFacts> groups() {
        List<ChartFacts> groups = new ArrayList<>();
        for (Medicine medicine : source.files().medicines().values()) {
            medicine.device().pen().ifPresent(pen -> groups.add(pen(medicine, pen)));
        }
        groups.add(clinic());
        groups.add(new ChartFlags(words).group());
        groups.add(pharmacy(source.files().clinic().pharmacy()));
        return groups;
    }

    private ChartFacts pen(Medicine medicine, CartridgePen pen) {
        return ChartFacts.of(words.wording(), "pen")
                .add("medicine", medicine.name() + " (" + medicine.id() + ")")
                .add("window", words.text("pen.window." + lower(pen.window())))
                .add(
                        "dial",
                        words.fill(
                                "pen.dial.of",
                                "least",
                                words.number(pen.dial().least()),
                                "most",
                                words.amount(pen.dial().most()),
                                "step",
                                words.number(pen.dial().step())))
                .add(
                        "opened",
                        words.fill(
                                "pen.opened.days",
                                "days",
                                "" + pen.openedDays(),
                                "from",
                                words.text("day-one."
                                        + lower(source.files().clinic().rules().inUseDayOne()))))
                .add("prime", pen.prime().words())
                .add(
                        "needle",
                        pen.needle().gauge() + " gauge, "
                                + ChartWords.unbroken(pen.needle().length().toString()))
                .add("hold", medicine.hold().toSeconds() + "" + NO_BREAK + words.text("seconds"))
                .add("source", medicine.source())
                .build();
    }

    private String below(HouseRules.SmallRemainder small) {
        return words.list(small.below().entrySet().stream()
                .map(each -> each.getValue().stripTrailingZeros().toPlainString() + " "
                        + each.getKey().word())
                .toList());
    }

    private ChartFacts clinic() {
        Clinic clinic = source.files().clinic();
        HouseRules rules = clinic.rules();
        ChartFacts.Builder facts = ChartFacts.of(words.wording(), "house")
                .add("split", words.text("split." + lower(rules.splitDose())))
                .add("between", words.text("between." + lower(rules.betweenMarks())))
                .add(
                        "small",
                        words.fill(
                                "house.small.of",
                                "below",
                                below(rules.smallRemainder()),
                                "rule",
                                words.text(
                                        "small." + lower(rules.smallRemainder().rule()))))
                .add("chain", words.text(rules.chainPartUsed() ? "yes" : "no"))
                .add("lead", lead(rules.triggerLead()))
                .add("trigger-evening", pairs(rules.triggerEvening()))
                .add("no-call-by", words.time(rules.noCallBy()))
                .add("callers", words.list(rules.mayCallDoses()))
                .add("cut-off", words.time(rules.cycleDayOneCutOff()))
                .add("first-day", rules.firstStimulationDay().name())
                .add("needles", Integer.toString(rules.spareNeedles()))
                .add("swab", words.text("swab." + lower(rules.swabSkin())))
                .add("thresholds", pairs(rules.callThresholds()))
                .add("missed", pairs(ofThisPlan(rules.missed())));
        return facts.add("off-table", offTable(rules)).build();
    }

    /** What the clinic's own line says about a number or an evening that is not in the table. */
    String offTable(HouseRules rules) {
        return rules.offTable().map(ChartWords::sentence).orElse(words.text("house.off-table.default"));
    }

    private String lead(HouseRules.LeadHours lead) {
        return words.fill(
                "house.lead.of",
                "warnLeast",
                hours(lead.warnLeast()),
                "warnMost",
                hours(lead.warnMost()),
                "stopLeast",
                hours(lead.stopLeast()),
                "stopMost",
                hours(lead.stopMost()));
    }

    static String hours(Duration lead) {
        String hours = lead.toHours() + "" + NO_BREAK + "hours";
        return lead.toMinutesPart() == 0 ? hours : hours + " " + lead.toMinutesPart() + NO_BREAK + "minutes";
    }

    /** A clinic file has a line for every product; this copy shows those that this plan uses. */
    private Map<String, String> ofThisPlan(Map<String, String> byMedicine) {
        Map<String, String> own = new TreeMap<>(byMedicine);
        own.keySet().retainAll(source.files().medicines().keySet());
        return own;
    }

    private String pairs(Map<String, String> pairs) {
        return pairs.isEmpty()
                ? words.text("none")
                : new TreeMap<>(pairs)
                        .entrySet().stream()
                                .map(pair -> pair.getKey() + ": " + ChartWords.sentence(pair.getValue()))
                                .collect(Collectors.joining("\n"));
    }

    private ChartFacts pharmacy(Pharmacy pharmacy) {
        String ships = java.util.Arrays.stream(DayOfWeek.values())
                .filter(pharmacy.ships()::contains)
                .map(day -> words.wording().text("weekday.short." + day.getValue()))
                .collect(Collectors.joining(", "));
        return ChartFacts.of(words.wording(), "pharmacy")
                .add("order-by", words.time(pharmacy.orderBy()))
                .add("ships", ships)
                .add("arrives", workingDays(pharmacy.arrivesAfterWorkingDays()))
                .add("authorisation", workingDays(pharmacy.authorisationWorkingDays()))
                .add("same-day", pharmacy.sameDayArrivalFrom().map(words::time).orElse(words.text("no")))
                .build();
    }

    private String workingDays(int days) {
        return days == 1 ? words.text("pharmacy.working-day") : words.fill("pharmacy.working-days", "days", "" + days);
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
