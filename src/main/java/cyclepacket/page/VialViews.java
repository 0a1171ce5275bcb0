package cyclepacket.page;

import cyclepacket.course.DatedDose;
import cyclepacket.ledger.Measure;
import cyclepacket.ledger.Measuring;
import cyclepacket.ledger.VialLedger;
import cyclepacket.plan.Device;
import cyclepacket.plan.Device.Needle;
import cyclepacket.plan.DilutedVial;
import cyclepacket.plan.DrawnVial;
import cyclepacket.plan.FormRules;
import cyclepacket.plan.KeptVial;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.MixedVial;
import cyclepacket.plan.OilVial;
import cyclepacket.plan.StockVial;
import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Concentration;
import cyclepacket.quantity.Dose;
import cyclepacket.quantity.Volume;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes the facts of a vial's page: needles, draw lines and what one vial can be relied on for. */
final class VialViews {
    private final PacketFacts facts;
    private final Words words;
    private final MarkWords marks;
    private final FormRules rules;

    VialViews(PacketFacts facts, Words words) {
        this.facts = facts;
        this.words = words;
        marks = new MarkWords(facts, words);
        rules = facts.files().clinic().rules().forms();
    }

    /** Empty for a medicine that is not drawn into an empty syringe. */
    Optional<VialView> of(Medicine medicine) {
        return Measuring.of(medicine, rules).map(measuring -> view(medicine, measuring));
    }

    private VialView view(Medicine medicine, Measuring measuring) {
        Device device = medicine.device();
        Needles needles = Needles.of(device);
        return new VialView(
                device.word().replace("-vial", ""),
                words.slot(measuring.syringe().name()),
                needle(needles.gives()),
                needles.other().map(this::needle),
                device.stockVial().map(StockVial::strength).map(this::strength),
                device.stockVial().flatMap(StockVial::oilName).map(words::slot),
                device.stockVial().map(vial -> Integer.toString(vial.openedDays())),
                doses(medicine, measuring),
                diluent(device).map(volume -> picture(measuring.syringe(), volume)),
                marks(medicine, measuring),
                swabs(medicine, measuring),
                spareDiluents(medicine, measuring),
                together(medicine));
    }

    /** The needle that gives and the one that mixes or draws. */
    private record Needles(Needle gives, Optional<Needle> other) {
        static Needles of(Device device) {
            if (device instanceof MixedVial mixed) {
                return new Needles(mixed.giveNeedle(), Optional.of(mixed.mixNeedle()));
            }
            if (device instanceof KeptVial kept) {
                return new Needles(kept.giveNeedle(), Optional.of(kept.mixNeedle()));
            }
            if (device instanceof OilVial oil) {
                return new Needles(oil.giveNeedle(), Optional.of(oil.drawNeedle()));
            }
            if (device instanceof DilutedVial diluted) {
                return new Needles(diluted.needle(), Optional.empty());
            }
            return new Needles(((DrawnVial) device).needle(), Optional.empty());
        }
    }

    private static Optional<Volume> diluent(Device device) {
        return device.mixedVial().map(MixedVial::diluent);
    }

    private String needle(Needle needle) {
        return MedicineViews.needle(needle, words);
    }

    private String strength(Concentration strength) {
        return words.fill(
                "strength",
                Map.of(
                        "amount", words.amounts().amount(strength.amount()),
                        "volume", strength.in().toString().replace(' ', AmountWords.NO_BREAK)));
    }

    /** Each draw line once, with the first day still ahead on which it holds. */
    private Map<Dose, LocalDate> ahead(Medicine medicine) {
        Map<Dose, LocalDate> first = new LinkedHashMap<>();
        for (DatedDose dose : facts.course().dosesOf(medicine.id())) {
            boolean isTold = !dose.isExact() || facts.course().isTriggerCalled();
            if (isTold && !dose.date().isBefore(facts.today())) {
                first.putIfAbsent(dose.amount(), dose.at().toLocalDate());
            }
        }
        return first;
    }

    private List<VialView.MarkFrom> marks(Medicine medicine, Measuring measuring) {
        List<VialView.MarkFrom> all = new ArrayList<>();
        ahead(medicine)
                .forEach((dose, from) -> measuring
                        .measure(dose)
                        .ifPresent(measure -> all.add(new VialView.MarkFrom(
                                words.clock().day(from),
                                Integer.toString(measure.vials()),
                                IntStream.rangeClosed(1, measure.vials())
                                        .mapToObj(Integer::toString)
                                        .toList(),
                                picture(measuring.syringe(), measure.drawn()),
                                !measure.rest().isZero()))));
        return all;
    }

    private VialView.Picture picture(Syringe syringe, Volume volume) {
        return new VialView.Picture(marks.mark(syringe, syringe.markAt(volume)), SyringeDrawings.of(syringe, volume));
    }

    /** One for the skin and one for the top of each vial; a liquid of its own takes one more. */
    private String swabs(Medicine medicine, Measuring measuring) {
        int tops = medicine.device().mixedVial().isPresent() ? 1 + mostVials(medicine, measuring) : 1;
        return Integer.toString(1 + tops);
    }

    private int mostVials(Medicine medicine, Measuring measuring) {
        return ahead(medicine).keySet().stream()
                .flatMap(dose -> measuring.measure(dose).stream())
                .mapToInt(Measure::vials)
                .max()
                .orElse(1);
    }

    /** A liquid comes with each vial, and one is used for each injection. */
    private Optional<String> spareDiluents(Medicine medicine, Measuring measuring) {
        if (medicine.device().mixedVial().isEmpty()) {
            return Optional.empty();
        }
        int spare = facts.course().dosesOf(medicine.id()).stream()
                .filter(dose -> !dose.date().isBefore(facts.today()))
                .flatMap(dose -> measuring.measure(dose.amount()).stream())
                .mapToInt(measure -> measure.vials() - 1)
                .sum();
        return Optional.of(spare).filter(count -> count > 0).map(count -> Integer.toString(count));
    }

    /** Counted for the largest dose still ahead, which needs the most. */
    private Optional<String> doses(Medicine medicine, Measuring measuring) {
        Optional<Volume> largest = ahead(medicine).keySet().stream()
                .flatMap(dose -> measuring.measure(dose).stream())
                .map(Measure::drawn)
                .max(Volume::compareTo);
        Optional<Volume> holds = medicine.device()
                .stockVial()
                .flatMap(
                        vial -> vial.strength().volumeOf(medicine.sizes().get(0).label()));
        return holds.flatMap(volume -> largest.map(dose -> Integer.toString(
                VialLedger.reliableDoses(volume, dose, measuring.syringe().loses()))));
    }

    private List<String> together(Medicine medicine) {
        return facts.files().medicines().values().stream()
                .filter(other -> !other.id().equals(medicine.id()))
                .filter(other -> rules.mayShareSyringe(medicine.id(), other.id()))
                .map(Medicine::doorName)
                .toList();
    }
}
