package cyclepacket.intake;

import cyclepacket.quantity.Refusal;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A value read from a file, or nothing when it could not be read and the reason is among the findings already.
 *
 * <p>A record is put together by {@link #whole} from parts that were all read before, so that one broken part does not
 * hide what is wrong with the next.
 */
record Part<T>(Optional<T> value) {
    Part {
        Objects.requireNonNull(value, "value");
    }

    static <T> Part<T> of(T value) {
        return new Part<>(Optional.of(value));
    }

    static <T> Part<T> absent() {
        return new Part<>(Optional.empty());
    }

    boolean isPresent() {
        return value.isPresent();
    }

    /** Only inside {@link #whole}: leaves it when the part is absent. */
    T get() {
        return value.orElseThrow(AbsentPart::new);
    }

    /** The record, or nothing when a part is absent or the record refuses; a refusal is reported at {@code blamed}. */
    static <T> Part<T> whole(Field blamed, Supplier<T> record) {
        return wholeAs("VALUE-CLASH", blamed, record);
    }

    /** The same with a code of its own for the refusal. */
    static <T> Part<T> wholeAs(String code, Field blamed, Supplier<T> record) {
        try {
            return of(record.get());
        } catch (AbsentPart alreadyReported) {
            return absent();
        } catch (Refusal refusal) {
            blamed.stopAtKey(code, refusal.getMessage(), refusal.mend());
            return absent();
        }
    }

    private static final class AbsentPart extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private AbsentPart() {
            super(null, null, false, false);
        }
    }
}
