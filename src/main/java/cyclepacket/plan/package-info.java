/** The four files of a plan as records that are valid by construction: plan, protocol, medicine, clinic. */
package cyclepacket.plan;
