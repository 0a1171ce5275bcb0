/** What a check says: severity, code, place, text and mend, all as plain values. */
package cyclepacket.finding;
