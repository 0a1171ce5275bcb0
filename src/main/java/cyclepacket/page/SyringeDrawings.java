package cyclepacket.page;

import cyclepacket.plan.Syringe;
import cyclepacket.quantity.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Draws a syringe to scale: a line lies as far along its scale as its volume is of the whole, to a micrometre. */
final class SyringeDrawings {
    private static final long NEEDLE = 16_000;
    private static final long PLUNGER = 26_000;
    private static final long FLANGE = 6_000;
    private static final long ABOVE = 12_000;
    private static final long BELOW = 8_000;
    /** Numbers closer than this would touch. */
    private static final long NUMBER_WIDTH = 8_500;

    private final Syringe syringe;
    private final long scale;
    private final long top = ABOVE;
    private final long barrel;

    private SyringeDrawings(Syringe syringe) {
        this.syringe = syringe;
        scale = syringe.scale().micrometres();
        barrel = syringe.barrel().micrometres();
    }

    /** The syringe with its draw line at a volume that lies on one of its lines. */
    static SyringeDrawing of(Syringe syringe, Volume volume) {
        return new SyringeDrawings(syringe).at(volume);
    }

    private SyringeDrawing at(Volume volume) {
        return new SyringeDrawing(
                mm(NEEDLE + scale + PLUNGER),
                mm(top + barrel + BELOW),
                mm(top),
                mm(top + barrel),
                mm(top + barrel / 2),
                mm(NEEDLE),
                mm(NEEDLE + scale),
                mm(NEEDLE + scale + FLANGE),
                mm(NEEDLE + scale + PLUNGER - 1_000),
                mm(along(volume)),
                lines(),
                numbers(),
                syringe.markAt(volume).number().toPlainString());
    }

    /** Micrometres from the left edge, half up. */
    private long along(Volume volume) {
        return NEEDLE
                + BigDecimal.valueOf(volume.microlitres())
                        .multiply(BigDecimal.valueOf(scale))
                        .divide(BigDecimal.valueOf(syringe.capacity().microlitres()), 0, RoundingMode.HALF_UP)
                        .longValueExact();
    }

    private Volume volumeOf(int line) {
        return syringe.graduation().times(line);
    }

    private List<SyringeDrawing.Line> lines() {
        List<SyringeDrawing.Line> lines = new ArrayList<>();
        for (int line = 0; line <= syringe.lines(); line++) {
            boolean isNumbered = line % syringe.numberedEvery() == 0;
            lines.add(new SyringeDrawing.Line(
                    mm(along(volumeOf(line))),
                    mm(top + barrel * (isNumbered ? 55 : 30) / 100),
                    isNumbered ? "0.25" : "0.12"));
        }
        return lines;
    }

    /** Every number, or every second, third and so on where there is no room; the real syringe may show more. */
    private List<SyringeDrawing.Number> numbers() {
        int every = syringe.numberedEvery();
        int shown = every;
        while (along(volumeOf(Math.min(shown, syringe.lines()))) - NEEDLE < NUMBER_WIDTH) {
            shown += every;
        }
        List<SyringeDrawing.Number> numbers = new ArrayList<>();
        for (int line = shown; line <= syringe.lines(); line += shown) {
            numbers.add(new SyringeDrawing.Number(
                    mm(along(volumeOf(line))),
                    syringe.markAt(volumeOf(line)).number().toPlainString()));
        }
        return numbers;
    }

    private static String mm(long micrometres) {
        return BigDecimal.valueOf(micrometres, 3).stripTrailingZeros().toPlainString();
    }
}
