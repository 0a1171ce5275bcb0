/** What is needed, how long it surely lasts, and the last safe time to order more. */
package cyclepacket.supply;
