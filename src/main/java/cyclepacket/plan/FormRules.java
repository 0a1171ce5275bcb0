package cyclepacket.plan;

import cyclepacket.quantity.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What clinics decide differently about vials.
 *
 * @param vialsPerDiluent through how many vials one diluent may go, by medicine, 1 to 20
 * @param oneSyringe groups of medicines that may be drawn into one syringe; nothing else may
 */
public record FormRules(Map<String, Integer> vialsPerDiluent, List<Set<String>> oneSyringe) {
    public FormRules {
        vialsPerDiluent = InFileOrder.copyOf(vialsPerDiluent);
        oneSyringe = oneSyringe.stream().map(Set::copyOf).collect(Collectors.toUnmodifiableList());
        if (vialsPerDiluent.values().stream().anyMatch(count -> count < 1 || count > 20)) {
            throw new Refusal("vials-per-diluent is from 1 to 20", "write how many vials one diluent may go through");
        }
    }

    /** A clinic file that says nothing of vials. */
    public static FormRules none() {
        return new FormRules(Map.of(), List.of());
    }

    /** Whether two medicines may be drawn into one syringe. */
    public boolean mayShareSyringe(String one, String other) {
        return oneSyringe.stream().anyMatch(group -> group.contains(one) && group.contains(other));
    }
}
