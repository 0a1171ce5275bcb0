package cyclepacket.quantity;

/** Two amounts in different units met in one sum; carries both. */
public final class UnitClash extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Dose left;
    private final transient Dose right;

    UnitClash(Dose left, Dose right) {
        super(left + " and " + right + " are amounts in different units");
        this.left = left;
        this.right = right;
    }

    public Dose left() {
        return left;
    }

    public Dose right() {
        return right;
    }
}
