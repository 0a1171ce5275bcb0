package cyclepacket.plan;

import cyclepacket.quantity.DoseUnit;
import cyclepacket.quantity.Refusal;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What clinics decide differently. Nothing here has a default: a clinic writes every line.
 *
 * @param triggerEvening what each medicine does on the evening of the trigger, in the file's word
 * @param noCallBy patient time; without a call by then on a provisional evening the patient calls
 * @param chainPartUsed whether two part-used containers may serve one dose
 * @param mayCallDoses who may tell a patient a dose on the phone
 * @param callThresholds numbers for the when-to-call page, for example {@code fever}
 * @param missed what the packet says of a missed dose, by medicine, in the clinic's own words
 * @param offTable what to do on an evening, or with a number, that the page does not list; empty means the packet's own line
 * @param firstStimulationDay what this clinic calls the day of the first stimulation injection
 * @param forms what is decided about vials and syringes
 */
public record HouseRules(
        SplitDose splitDose,
        BetweenMarks betweenMarks,
        InUseDayOne inUseDayOne,
        SmallRemainder smallRemainder,
        LeadHours triggerLead,
        LocalTime noCallBy,
        Map<String, String> triggerEvening,
        boolean chainPartUsed,
        List<String> mayCallDoses,
        LocalTime cycleDayOneCutOff,
        Map<String, String> callThresholds,
        int spareNeedles,
        SwabSkin swabSkin,
        Map<String, String> missed,
        Optional<String> offTable,
        FirstStimulationDay firstStimulationDay,
        FormRules forms) {
    /** Rules of a clinic file that says nothing of vials. */
    public HouseRules(
            SplitDose splitDose,
            BetweenMarks betweenMarks,
            InUseDayOne inUseDayOne,
            SmallRemainder smallRemainder,
            LeadHours triggerLead,
            LocalTime noCallBy,
            Map<String, String> triggerEvening,
            boolean chainPartUsed,
            List<String> mayCallDoses,
            LocalTime cycleDayOneCutOff,
            Map<String, String> callThresholds,
            int spareNeedles,
            SwabSkin swabSkin,
            Map<String, String> missed,
            Optional<String> offTable) {
        this(
                splitDose,
                betweenMarks,
                inUseDayOne,
                smallRemainder,
                triggerLead,
                noCallBy,
                triggerEvening,
                chainPartUsed,
                mayCallDoses,
                cycleDayOneCutOff,
                callThresholds,
                spareNeedles,
                swabSkin,
                missed,
                offTable,
                FirstStimulationDay.S1,
                FormRules.none());
    }

    public HouseRules {
        Objects.requireNonNull(splitDose, "splitDose");
        Objects.requireNonNull(betweenMarks, "betweenMarks");
        Objects.requireNonNull(inUseDayOne, "inUseDayOne");
        Objects.requireNonNull(smallRemainder, "smallRemainder");
        Objects.requireNonNull(triggerLead, "triggerLead");
        Objects.requireNonNull(noCallBy, "noCallBy");
        triggerEvening = InFileOrder.copyOf(triggerEvening);
        mayCallDoses = List.copyOf(mayCallDoses);
        Objects.requireNonNull(cycleDayOneCutOff, "cycleDayOneCutOff");
        callThresholds = InFileOrder.copyOf(callThresholds);
        Objects.requireNonNull(swabSkin, "swabSkin");
        missed = InFileOrder.copyOf(missed);
        Objects.requireNonNull(offTable, "offTable");
        Objects.requireNonNull(firstStimulationDay, "firstStimulationDay");
        Objects.requireNonNull(forms, "forms");
        if (spareNeedles < 0 || spareNeedles > 50) {
            throw new Refusal("spare-needles is from 0 to 50", "write how many needles to add");
        }
    }

    /** How a dose above the dial's most is divided into settings. */
    public enum SplitDose {
        /** As equal as the step allows, the larger first. */
        EQUAL,
        /** The dial's most until the rest fits. */
        FULL_DIAL_FIRST
    }

    /** What a number between two marks of the dial counts as. */
    public enum BetweenMarks {
        /** The nearer mark; halfway counts as the upper one. */
        NEAREST,
        UP,
        CALL
    }

    /** Which day counts as day 1 of an opened container. */
    public enum InUseDayOne {
        FIRST_USE,
        DAY_AFTER
    }

    /** How stimulation days are counted: where the first is S0, the sixth is S5 and not S6. */
    public enum FirstStimulationDay {
        S0,
        S1
    }

    /** How the skin is cleaned. */
    public enum SwabSkin {
        ALCOHOL,
        SOAP_AND_WATER
    }

    /**
     * A remainder too small to bother with.
     *
     * @param below by the unit in which a pen counts, zero or more; a number of units says nothing about micrograms
     */
    public record SmallRemainder(Map<DoseUnit, BigDecimal> below, Do rule) {
        public SmallRemainder {
            EnumMap<DoseUnit, BigDecimal> copy = new EnumMap<>(DoseUnit.class);
            copy.putAll(below);
            below = Collections.unmodifiableMap(copy);
            Objects.requireNonNull(rule, "rule");
            if (below.values().stream().anyMatch(amount -> amount.signum() < 0)) {
                throw new Refusal("below cannot be less than zero", "write the amount without a minus sign");
            }
        }

        /** For pens that count in units. */
        public SmallRemainder(BigDecimal belowUnits, Do rule) {
            this(Map.of(DoseUnit.UNITS, belowUnits), rule);
        }

        /** Empty when the clinic wrote no number for this unit, which stops printing. */
        public Optional<BigDecimal> belowIn(DoseUnit unit) {
            return Optional.ofNullable(below.get(unit));
        }

        /** What the patient does with it. */
        public enum Do {
            GIVE,
            SKIP,
            CALL
        }
    }

    /**
     * Elapsed hours from trigger to retrieval: outside the inner pair is warned about, outside the outer pair stopped.
     */
    public record LeadHours(Duration warnLeast, Duration warnMost, Duration stopLeast, Duration stopMost) {
        public LeadHours {
            Objects.requireNonNull(warnLeast, "warnLeast");
            Objects.requireNonNull(warnMost, "warnMost");
            Objects.requireNonNull(stopLeast, "stopLeast");
            Objects.requireNonNull(stopMost, "stopMost");
            if (stopLeast.compareTo(warnLeast) > 0
                    || warnLeast.compareTo(warnMost) > 0
                    || warnMost.compareTo(stopMost) > 0) {
                throw new Refusal(
                        "the warn hours lie inside the stop hours and each pair rises",
                        "write for example {warn-outside: [34, 38], stop-outside: [30, 42]}");
            }
        }
    }
}
