package cyclepacket.finding;

/** How much a finding weighs. */
public enum Severity {
    /** Nothing is printed until it is mended; it cannot be switched off. */
    STOP,
    /** Needs a line under {@code overrides} in the plan, or the packet stays a draft. */
    WARN,
    /** Good to know. */
    NOTE;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
