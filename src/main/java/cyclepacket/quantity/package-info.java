/** Exact amounts of medicine, temperatures, lengths and money: whole numbers of a smallest unit, never binary floating point. */
package cyclepacket.quantity;
