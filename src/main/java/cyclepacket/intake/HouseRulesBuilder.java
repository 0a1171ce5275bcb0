package cyclepacket.intake;

import cyclepacket.plan.FormRules;
import cyclepacket.plan.HouseRules;
import cyclepacket.quantity.DoseUnit;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Builds the house rules of a clinic file. */
final class HouseRulesBuilder {
    private final Field top;

    HouseRulesBuilder(Field top) {
        this.top = top;
    }

    Part<HouseRules> rules() {
        Part<HouseRules.SplitDose> splitDose = top.at("split-dose").word(HouseRules.SplitDose.class);
        Part<HouseRules.BetweenMarks> betweenMarks = top.at("between-marks").word(HouseRules.BetweenMarks.class);
        Part<HouseRules.InUseDayOne> dayOne = top.at("in-use-day-one").word(HouseRules.InUseDayOne.class);
        Part<HouseRules.SmallRemainder> smallRemainder = smallRemainder(top.at("small-remainder"));
        Part<HouseRules.LeadHours> triggerLead = triggerLead(top.at("trigger-lead-hours"));
        Part<LocalTime> noCallBy = Calendar.time(top.at("no-call-by"));
        Part<Map<String, String>> triggerEvening = top.at("trigger-evening").byName(Field::text);
        Part<Boolean> chainPartUsed = top.at("chain-part-used").truth();
        Part<List<String>> mayCallDoses = top.at("may-call-doses").each(Field::text);
        Part<LocalTime> cutOff = Calendar.time(top.at("cycle-day-one-cut-off"));
        Part<Map<String, String>> thresholds = top.at("call-thresholds").byName(Field::text);
        Part<Integer> spareNeedles = top.at("spare-needles").count();
        Part<HouseRules.SwabSkin> swabSkin = top.at("swab-skin").word(HouseRules.SwabSkin.class);
        Part<Map<String, String>> missed = top.at("missed").byName(Field::text);
        Part<Optional<String>> offTable = top.at("off-table").ifWritten(Field::text);
        Part<Optional<String>> firstDay = top.at("first-stimulation-day").ifWritten(Field::text);
        Part<FormRules> forms = forms();
        return Part.whole(
                top,
                () -> new HouseRules(
                        splitDose.get(),
                        betweenMarks.get(),
                        dayOne.get(),
                        smallRemainder.get(),
                        triggerLead.get(),
                        noCallBy.get(),
                        triggerEvening.get(),
                        chainPartUsed.get(),
                        mayCallDoses.get(),
                        cutOff.get(),
                        thresholds.get(),
                        spareNeedles.get(),
                        swabSkin.get(),
                        missed.get(),
                        offTable.get(),
                        firstDay.get()
                                .map(HouseRules.FirstStimulationDay::valueOf)
                                .orElse(HouseRules.FirstStimulationDay.S1),
                        forms.get()));
    }

    private Part<FormRules> forms() {
        Part<Map<String, Integer>> vials = top.at("vials-per-diluent").byName(Field::count);
        Part<List<Set<String>>> groups = top.at("one-syringe")
                .each(group -> new Part<>(group.each(Field::text).value().map(Set::copyOf)));
        return Part.whole(top, () -> new FormRules(vials.get(), groups.get()));
    }

    private static Part<HouseRules.SmallRemainder> smallRemainder(Field field) {
        Part<BigDecimal> below = field.at("below").number();
        Part<Optional<BigDecimal>> belowMcg = field.at("below-mcg").ifWritten(Field::number);
        Part<Optional<BigDecimal>> belowMg = field.at("below-mg").ifWritten(Field::number);
        Part<HouseRules.SmallRemainder.Do> rule = field.at("do").word(HouseRules.SmallRemainder.Do.class);
        return Part.whole(field, () -> {
            EnumMap<DoseUnit, BigDecimal> byUnit = new EnumMap<>(DoseUnit.class);
            byUnit.put(DoseUnit.UNITS, below.get());
            belowMcg.get().ifPresent(amount -> byUnit.put(DoseUnit.MCG, amount));
            belowMg.get().ifPresent(amount -> byUnit.put(DoseUnit.MG, amount));
            return new HouseRules.SmallRemainder(byUnit, rule.get());
        });
    }

    private static Part<HouseRules.LeadHours> triggerLead(Field field) {
        Part<List<Duration>> warn = field.at("warn-outside").pair(Calendar::hours);
        Part<List<Duration>> stop = field.at("stop-outside").pair(Calendar::hours);
        return Part.whole(
                field,
                () -> new HouseRules.LeadHours(
                        warn.get().get(0),
                        warn.get().get(1),
                        stop.get().get(0),
                        stop.get().get(1)));
    }
}
