package cyclepacket.page;

import java.util.Optional;

/**
 * The content of an amount box.
 *
 * @param text the amount with its unit; empty when the patient writes it after our call
 * @param unit the unit alone, for the writing line
 */
public record BoxedAmount(Optional<String> text, String unit) {}
