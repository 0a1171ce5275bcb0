/**
 * An independent reader of the same rules: it acts out what a patient does with pens and containers, evening by
 * evening, and shares no code with the closed form that it is compared with. All amounts are whole thousandths of a unit.
 */
package cyclepacket.actingout;
