package cyclepacket.actingout;

import java.time.LocalDate;

/**
 * The first box, when it was in use before this plan.
 *
 * @param openedOn before the first evening
 * @param used thousandths taken from it before the plan, less than its least content
 */
record Started(LocalDate openedOn, long used) {}
