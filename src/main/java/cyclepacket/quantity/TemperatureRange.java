package cyclepacket.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A storage range, both ends included.
 *
 * @param leastCelsius whole degrees Celsius, -90 to 60
 * @param mostCelsius whole degrees Celsius, above {@code leastCelsius}, at most 60
 */
public record TemperatureRange(int leastCelsius, int mostCelsius) {
    private static final Pattern FORM = Pattern.compile("(-?\\d{1,2})-(-?\\d{1,2}) C");

    /** Technical limits of what a file may say: beyond them a number is a slip of the pen. */
    private static final int ROOM_MOST_CELSIUS = 60;

    /** A technical limit as well. */
    private static final int FREEZER_LEAST_CELSIUS = -90;

    public TemperatureRange {
        if (leastCelsius >= mostCelsius || leastCelsius < FREEZER_LEAST_CELSIUS || mostCelsius > ROOM_MOST_CELSIUS) {
            throw new Refusal(
                    leastCelsius + "-" + mostCelsius + " C is not a storage range",
                    "write the lower temperature first, for example 2-8 C");
        }
    }

    /** Reads for example {@code 2-8 C}. */
    public static TemperatureRange parse(String text) {
        Matcher match = FORM.matcher(text);
        if (!match.matches()) {
            throw new Refusal("\"" + text + "\" is not a storage range", "write it as 2-8 C, in degrees Celsius");
        }
        return new TemperatureRange(Integer.parseInt(match.group(1)), Integer.parseInt(match.group(2)));
    }

    /** Whole degrees Fahrenheit, half up: 2 C is 36 F and 8 C is 46 F (USP 659, refrigerator 36-46 F). */
    public int leastFahrenheit() {
        return fahrenheit(leastCelsius);
    }

    public int mostFahrenheit() {
        return fahrenheit(mostCelsius);
    }

    private static int fahrenheit(int celsius) {
        return BigDecimal.valueOf(celsius * 18L + 320, 1)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    /** A refrigerator range: 8 C or colder at its warm end (USP 659). */
    public boolean needsRefrigerator() {
        return mostCelsius <= 8;
    }

    /** Whether a refrigerator, at its 2 to 8 C (USP 659), may hold it at all; controlled room temperature starts at 20 C. */
    public boolean allowsRefrigerator() {
        return leastCelsius <= 8;
    }

    @Override
    public String toString() {
        return leastCelsius + "-" + mostCelsius + " C";
    }
}
