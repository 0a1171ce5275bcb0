package cyclepacket.supply;

import cyclepacket.PlanSketch;
import cyclepacket.course.Course;
import cyclepacket.ledger.CycleLedger;
import cyclepacket.plan.Clinic;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Pharmacy;
import cyclepacket.plan.Plan;
import cyclepacket.plan.PlanFiles;
import cyclepacket.plan.SupplyRules;
import cyclepacket.quantity.DoseRange;
import cyclepacket.quantity.Money;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A plan for one pen with prices, a pharmacy and odds; everything in it is invented. */
final class SupplySketch {
    final PlanSketch plan = new PlanSketch();
    Set<DayOfWeek> ships = Set.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY);
    int arrives = 1;
    int authorisation = 0;
    Set<LocalDate> closed = Set.of();
    Optional<LocalTime> sameDay = Optional.empty();
    SupplyRules rules = SupplyRules.NONE;

    SupplySketch size(String label, String price) {
        plan.sizes.add(new Medicine.Size(
                PlanSketch.units(label),
                DoseRange.exactly(PlanSketch.units(label)),
                Optional.of(Money.of(new BigDecimal(price)))));
        return this;
    }

    SupplySketch unpriced(String label) {
        plan.size(label, label, label);
        return this;
    }

    /** Boxes at home that were opened on a day and partly used. */
    SupplySketch partUsed(String label, LocalDate opened, String used) {
        plan.stock.add(new Plan.Stock(
                PlanSketch.units(label),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.of(opened),
                Optional.of(PlanSketch.units(used))));
        return this;
    }

    SupplySketch home(String label, LocalDate expires) {
        plan.stock.add(new Plan.Stock(
                PlanSketch.units(label),
                1,
                Optional.empty(),
                Optional.of(expires),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    /** A pharmacy that brings a parcel on the day it is ordered, so that every order can wait until it is needed. */
    SupplySketch atTheDoor() {
        ships = Set.of(DayOfWeek.values());
        arrives = 0;
        sameDay = Optional.of(LocalTime.of(17, 0));
        return this;
    }

    SupplySketch odds(Map<Integer, Integer> odds) {
        rules = new SupplyRules(Map.of("sketch", odds), rules.boxes(), rules.gauzeAnInjection(), rules.sharps());
        return this;
    }

    PlanFiles files() {
        PlanFiles files = plan.files();
        Clinic clinic = files.clinic();
        Pharmacy pharmacy =
                new Pharmacy("the pharmacy", LocalTime.of(14, 0), ships, arrives, authorisation, closed, sameDay);
        return new PlanFiles(
                files.plan(),
                new Clinic(
                        clinic.name(),
                        clinic.zone(),
                        clinic.currency(),
                        clinic.country(),
                        clinic.day(),
                        clinic.night(),
                        clinic.emergency(),
                        clinic.closed(),
                        clinic.rules(),
                        pharmacy,
                        clinic.approved(),
                        rules),
                files.protocol(),
                files.medicines(),
                files.planFile(),
                files.clinicFile(),
                files.protocolFile(),
                files.medicineFiles());
    }

    SupplyPlan supply() {
        PlanFiles files = files();
        return SupplyPlan.of(files, CycleLedger.of(files, Course.of(files)));
    }

    SupplyLine line() {
        return supply().of(PlanSketch.PEN).orElseThrow();
    }

    static String text(Basket basket) {
        return String.join(
                " + ",
                basket.lines().stream()
                        .map(line -> line.count() + "x"
                                + line.size().label().number().toPlainString())
                        .toList());
    }
}
