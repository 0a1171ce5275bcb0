/** Which dose falls on which date and hour: protocol and plan become dated injections. No clock, no files. */
package cyclepacket.course;
