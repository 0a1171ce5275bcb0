package cyclepacket.exchange;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the register of a plan: an issue that was printed, or printed again.
 *
 * @param code the issue code
 * @param inputs a code over the files it was made from
 * @param isDraft whether it was a draft
 * @param did {@code printed} or {@code reprinted}
 * @param at when, as an instant in UTC
 * @param by who prepared it
 * @param countersignedBy the second person
 * @param replaces the issue it retires
 * @param findings grade, code and place of each
 * @param overrides code, place, reason and name of each warning that was accepted
 */
public record RegisterEntry(
        int issue,
        String code,
        String inputs,
        boolean isDraft,
        String did,
        String at,
        String by,
        Optional<String> countersignedBy,
        Optional<Integer> replaces,
        List<String> findings,
        List<String> overrides) {
    public RegisterEntry {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(inputs, "inputs");
        Objects.requireNonNull(did, "did");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(countersignedBy, "countersignedBy");
        Objects.requireNonNull(replaces, "replaces");
        findings = List.copyOf(findings);
        overrides = List.copyOf(overrides);
    }
}
