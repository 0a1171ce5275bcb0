package cyclepacket;

import cyclepacket.plan.Device;
import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.Dilution;
import cyclepacket.plan.DrawnVial;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.Length;
import cyclepacket.quantity.TemperatureRange;
import cyclepacket.quantity.Volume;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Vials and syringes built by hand for tests; everything in them is invented. */
public final class VialSketch {
    private static final Device.Needle NEEDLE = new Device.Needle(29, Length.parse("13 mm"));

    private VialSketch() {}

    public static Syringe syringe(String id) {
        return switch (id) {
            case "marks-100" -> of(id, "1 mL", "0.01 mL", Syringe.Numbers.MARKS, 10, "57 mm", "0.02 mL");
            case "marks-50" -> of(id, "0.5 mL", "0.01 mL", Syringe.Numbers.MARKS, 5, "43 mm", "0.02 mL");
            case "ml-1" -> of(id, "1 mL", "0.05 mL", Syringe.Numbers.ML, 5, "57 mm", "0.05 mL");
            case "ml-1-fifths" -> of(id, "1 mL", "0.2 mL", Syringe.Numbers.ML, 5, "57 mm", "0.05 mL");
            case "ml-3" -> of(id, "3 mL", "0.1 mL", Syringe.Numbers.ML, 5, "45 mm", "0.1 mL");
            default -> throw new IllegalArgumentException(id);
        };
    }

    private static Syringe of(
            String id, String holds, String line, Syringe.Numbers numbers, int every, String scale, String loses) {
        return new Syringe(
                id,
                holds + " syringe",
                Volume.parse(holds),
                Volume.parse(line),
                numbers,
                every,
                Length.parse(scale),
                Length.parse("6.5 mm"),
                Volume.parse(loses),
                "invented");
    }

    public static Medicine menotropin() {
        return medicine("menotropin", new MixedVial(Volume.parse("1 mL"), syringe("ml-1"), NEEDLE, NEEDLE), "75 units");
    }

    /** The same, drawn into a syringe with few lines. */
    public static Medicine coarse() {
        return medicine(
                "menotropin", new MixedVial(Volume.parse("1 mL"), syringe("ml-1-fifths"), NEEDLE, NEEDLE), "75 units");
    }

    public static Medicine leuprolide(String syringe) {
        Concentration five = Concentration.parse("5 mg in 1 mL");
        return medicine("leuprolide", new DrawnVial(five, syringe(syringe), NEEDLE, 28), "14 mg");
    }

    /** 1 mg in 3 mL: most of its lines hold an amount with no end of decimals. */
    public static Medicine thirds() {
        Concentration third = Concentration.parse("1 mg in 3 mL");
        return medicine("thirds", new DrawnVial(third, syringe("marks-100"), NEEDLE, 28), "14 mg");
    }

    public static Medicine diluted() {
        Dilution dilution = new Dilution(
                Concentration.parse("5 mg in 1 mL"),
                Volume.parse("0.4 mL"),
                Volume.parse("9.6 mL"),
                Dilution.MadeBy.PHARMACY);
        Concentration weak = Concentration.parse("200 mcg in 1 mL");
        return medicine("weak", new DilutedVial(dilution, weak, syringe("marks-100"), NEEDLE, 28), "2000 mcg");
    }

    public static Medicine hcg() {
        Dilution dilution = new Dilution(
                Concentration.parse("10000 units in 1 mL"),
                Volume.parse("1 mL"),
                Volume.parse("9 mL"),
                Dilution.MadeBy.CLINIC);
        Concentration weak = Concentration.parse("1000 units in 1 mL");
        return medicine("hcg", new DilutedVial(dilution, weak, syringe("ml-3"), NEEDLE, 14), "10000 units");
    }

    private static Medicine medicine(String id, Device device, String label) {
        Dose size = Dose.parse(label);
        return new Medicine(
                id,
                "an invented medicine",
                "vial",
                "is for a test",
                device,
                size.unit(),
                "under the skin",
                Duration.ofSeconds(5),
                List.of(new Medicine.Size(size, DoseRange.exactly(size), Optional.empty())),
                Optional.empty(),
                false,
                Optional.empty(),
                new Medicine.Storage(TemperatureRange.parse("2-25 C"), Optional.empty()),
                List.of(),
                "invented");
    }
}
