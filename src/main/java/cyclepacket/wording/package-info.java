/** Texts judged as words: translations and their sources, error-prone designations, reading grade, plain sentences. */
package cyclepacket.wording;
