package cyclepacket.safety;

import cyclepacket.finding.Place;
import cyclepacket.plan.Device;
import cyclepacket.plan.Dial;
import cyclepacket.plan.Medicine;
import cyclepacket.plan.Plan;
import cyclepacket.plan.Protocol;
import cyclepacket.quantity.Dose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One amount a day as it stands in a file, and where. */
record OrderedAmount(Place place, Medicine medicine, Dose amount) {

    /** Every dose line of the plan and every fixed amount of the protocol's rows. */
    static List<OrderedAmount> all(ComputedPlan plan) {
        List<OrderedAmount> all = new ArrayList<>();
        for (Medicine medicine : plan.files().medicines().values()) {
            List<Plan.DoseLine> lines = plan.plan().doses().getOrDefault(medicine.id(), List.of());
            for (int line = 0; line < lines.size(); line++) {
                Place place = plan.inPlan("/doses/" + medicine.id() + "/" + line + "/amount");
                all.add(new OrderedAmount(place, medicine, lines.get(line).amount()));
            }
        }
        for (int row = 0; row < plan.protocol().rows().size(); row++) {
            Protocol.Row template = plan.protocol().rows().get(row);
            Optional<Medicine> medicine = plan.files().medicine(template.medicine());
            if (medicine.isPresent() && template.amount().isPresent()) {
                Place place = plan.inProtocol("/rows/" + row + "/amount");
                all.add(new OrderedAmount(
                        place, medicine.get(), template.amount().get()));
            }
        }
        return all;
    }

    /** The same, with what the course makes of it: a half has a volume and a line of its own. */
    static List<OrderedAmount> allWithHalves(ComputedPlan plan) {
        Stream<OrderedAmount> dated = plan.course().doses().stream()
                .flatMap(dose -> plan
                        .files()
                        .medicine(dose.medicine())
                        .map(medicine -> new OrderedAmount(plan.amountOf(dose), medicine, dose.amount()))
                        .stream());
        return Stream.concat(all(plan).stream(), dated).distinct().toList();
    }

    /** The dial of its pen; empty for a medicine without one. */
    Optional<Dial> dial() {
        return medicine.device().pen().map(Device.CartridgePen::dial);
    }
}
