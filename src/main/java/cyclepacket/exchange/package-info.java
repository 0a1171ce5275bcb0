/** What other programs read: the ledger as JSON and CSV, packet.json. */
package cyclepacket.exchange;
