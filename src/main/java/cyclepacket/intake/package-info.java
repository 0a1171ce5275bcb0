/** YAML text to valid plan files, or every finding in them with line, column and a mend. */
package cyclepacket.intake;
