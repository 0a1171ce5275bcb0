package cyclepacket.plan;

import cyclepacket.quantity.Length;
import java.util.Objects;
import java.util.Optional;

/** What a person holds in the hand, with the facts that this form needs; absent facts are refused when the file is read. */
public sealed interface Device
        permits Device.CartridgePen, Device.ReadySyringe, DisposablePen, MixedVial, StockVial, Taken {
    /** The word of the file format for this form. */
    String word();

    /** The pen, if this is one. */
    Optional<CartridgePen> pen();

    /** The ready syringe, if this is one. */
    default Optional<ReadySyringe> readySyringe() {
        return Optional.empty();
    }

    /** The vial that is mixed for one injection, if this is one. */
    default Optional<MixedVial> mixedVial() {
        return Optional.empty();
    }

    /** The vial that holds several doses, if this is one. */
    default Optional<StockVial> stockVial() {
        return Optional.empty();
    }

    /** What is taken without a needle, if this is it. */
    default Optional<Taken> taken() {
        return Optional.empty();
    }

    /** Days an opened container may be used, where it can be used more than once. */
    default Optional<Integer> daysOnceOpened() {
        return pen().map(CartridgePen::openedDays).or(() -> stockVial().map(StockVial::openedDays));
    }

    /** The empty syringe that a dose is drawn into, if there is one. */
    default Optional<Syringe> emptySyringe() {
        return mixedVial().map(MixedVial::syringe).or(() -> stockVial().map(StockVial::syringe));
    }

    /**
     * A pen that takes cartridges.
     *
     * @param window what its number shows when it stops early
     * @param openedDays days a cartridge may be used once opened, 1 to 400
     */
    record CartridgePen(Window window, Dial dial, Needle needle, Prime prime, int openedDays) implements Device {
        public CartridgePen {
            Objects.requireNonNull(window, "window");
            Objects.requireNonNull(dial, "dial");
            Objects.requireNonNull(needle, "needle");
            Objects.requireNonNull(prime, "prime");
            if (openedDays < 1 || openedDays > 400) {
                throw new cyclepacket.quantity.Refusal(
                        "opened-days is from 1 to 400", "copy the number of days from the product's leaflet");
            }
        }

        @Override
        public String word() {
            return "cartridge-pen";
        }

        @Override
        public Optional<CartridgePen> pen() {
            return Optional.of(this);
        }
    }

    /**
     * A syringe that is filled when it is bought and is used once.
     *
     * @param bubble what its leaflet says of the air bubble; empty when the file does not say
     * @param keepDark whether it must be kept from light
     */
    record ReadySyringe(Optional<Bubble> bubble, boolean keepDark) implements Device {
        public ReadySyringe {
            Objects.requireNonNull(bubble, "bubble");
        }

        /** A syringe whose file says nothing of bubble and light. */
        public ReadySyringe() {
            this(Optional.empty(), false);
        }

        @Override
        public Optional<ReadySyringe> readySyringe() {
            return Optional.of(this);
        }

        @Override
        public String word() {
            return "ready-syringe";
        }

        @Override
        public Optional<CartridgePen> pen() {
            return Optional.empty();
        }
    }

    /** What is done with the air bubble of a ready syringe. */
    enum Bubble {
        /** It stays in: it follows the medicine into the needle, so that none of the dose is left behind. */
        LEAVE,
        PUSH_OUT
    }

    /** What the number means when a pen stops before the whole dose is out. */
    enum Window {
        /** The number is what is still owed. */
        OWED,
        /** The pen refuses to dial past what is left inside; the number is what is left. */
        LEFT
    }

    /** When a pen is primed. */
    enum Prime {
        EACH_NEW_CARTRIDGE("each new cartridge"),
        EACH_INJECTION("each injection");

        private final String words;

        Prime(String words) {
            this.words = words;
        }

        /** The words used in the medicine file. */
        public String words() {
            return words;
        }
    }

    /**
     * The needle of a pen.
     *
     * @param gauge 18 to 34
     */
    record Needle(int gauge, Length length) {
        public Needle {
            Objects.requireNonNull(length, "length");
            if (gauge < 18 || gauge > 34) {
                throw new cyclepacket.quantity.Refusal(
                        "a needle gauge is from 18 to 34", "copy the gauge from the needle box");
            }
        }
    }
}
