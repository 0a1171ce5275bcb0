/** The computed plan as XHTML pages through FreeMarker; all wording and every number a person reads is made here. */
package cyclepacket.page;
