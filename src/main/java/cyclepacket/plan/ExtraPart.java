package cyclepacket.plan;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** A part of the packet that is printed only where a plan or its clinic asks for it. */
public enum ExtraPart {
    /** One evening a card, led by pictures. */
    EVENING_CARDS,
    /** A page for the person who injects in place of the patient. */
    HELPER,
    /** A page for a journey with the medicines. */
    TRAVEL;

    /** An unmodifiable copy in the order of the constants, so that print never follows the order of a hash. */
    static Set<ExtraPart> copyOf(Collection<ExtraPart> parts) {
        EnumSet<ExtraPart> copy = EnumSet.noneOf(ExtraPart.class);
        copy.addAll(parts);
        return Collections.unmodifiableSet(copy);
    }
}
