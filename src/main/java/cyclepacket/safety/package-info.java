/** Rules over the whole computed plan, one rule a file; each returns every finding it has. */
package cyclepacket.safety;
