/** Arguments, exit codes, printing, the clock and the process. */
package cyclepacket.cli;
