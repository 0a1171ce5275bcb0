package cyclepacket.page;

import java.util.Optional;

/**
 * What an evening says of a new cartridge.
 *
 * @param kind {@code expect} when every possible cartridge ends that evening, {@code maybe} when some do, {@code limit}
 *     when the old one is left because its days are over, {@code vial} when the next vial is opened
 * @param box the number or numbers of the box to have ready; empty when there is none at home
 */
public record ChangeView(String kind, Optional<String> box) {}
