package cyclepacket.actingout;

import java.time.LocalDate;

/**
 * How one container ended.
 *
 * @param box counted from 1
 * @param setting which setting of that evening, from 1
 * @param inUseLimit true when it was thrown away unfinished, false when it stopped the pen
 * @param owed thousandths still to be given when it stopped; zero when it was thrown away
 * @param shown the number in the window when it stopped
 */
record End(int box, LocalDate date, int setting, boolean inUseLimit, long owed, long shown) {}
