/**
 * Files and faults that mean harm: demo files twisted by a seeded hand, and what the program may touch while it reads
 * them.
 */
package cyclepacket.hostile;
