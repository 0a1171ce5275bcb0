/** One run: read, compute, check, render and write everything, or refuse and leave nothing behind. */
package cyclepacket.packet;
