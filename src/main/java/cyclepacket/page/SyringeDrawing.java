package cyclepacket.page;

import java.util.List;

/**
 * A syringe at true size, lying down with its needle to the left; every number is in millimetres.
 *
 * @param width of the whole drawing
 * @param height of the whole drawing
 * @param top of the barrel
 * @param bottom of the barrel
 * @param middle of the barrel
 * @param zero where its first line is
 * @param end where its last line is
 * @param flange where the barrel ends
 * @param rod where the plunger ends
 * @param draw where the draw line is
 * @param lines every line of the scale
 * @param numbers the numbers beside the lines
 * @param mark the number of the draw line
 */
public record SyringeDrawing(
        String width,
        String height,
        String top,
        String bottom,
        String middle,
        String zero,
        String end,
        String flange,
        String rod,
        String draw,
        List<Line> lines,
        List<Number> numbers,
        String mark) {
    public SyringeDrawing {
        lines = List.copyOf(lines);
        numbers = List.copyOf(numbers);
    }

    /** One line of the scale: its place along the syringe, how far down it goes and how thick it is. */
    public record Line(String at, String to, String thick) {}

    /** One number and its place along the syringe. */
    public record Number(String at, String text) {}
}
