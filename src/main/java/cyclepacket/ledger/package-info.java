/** Which container gives which injection and on which evening it may run dry, as exact ranges. */
package cyclepacket.ledger;
