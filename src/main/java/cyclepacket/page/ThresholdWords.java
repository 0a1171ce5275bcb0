package cyclepacket.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The clinic's numbers for calling, as a patient reads them: words for short forms, both scales for a fever. */
final class ThresholdWords {
    private static final Pattern FAHRENHEIT = Pattern.compile("(\\d{2,3}(?:\\.\\d)?) F");
    private static final Pattern CELSIUS = Pattern.compile("(\\d{2}(?:\\.\\d)?) C");

    private final Words words;

    ThresholdWords(Words words) {
        this.words = words;
    }

    /** For example {@code 2 lb in 24 h} as {@code 2 pounds in 24 hours}. */
    String plain(String line) {
        return line.replaceAll("(\\d) lb\\b", "$1" + AmountWords.NO_BREAK + words.text("pounds"))
                .replaceAll("(\\d) h\\b", "$1" + AmountWords.NO_BREAK + words.text("hours"))
                .replaceAll("(\\d) kg\\b", "$1" + AmountWords.NO_BREAK + "kg");
    }

    /** For example {@code 100.4 F} as {@code 100.4 °F (38 °C)}. */
    String temperature(String line) {
        Matcher fahrenheit = FAHRENHEIT.matcher(line);
        if (fahrenheit.matches()) {
            return both(new BigDecimal(fahrenheit.group(1)), celsius(new BigDecimal(fahrenheit.group(1))));
        }
        Matcher celsius = CELSIUS.matcher(line);
        if (celsius.matches()) {
            return both(fahrenheit(new BigDecimal(celsius.group(1))), new BigDecimal(celsius.group(1)));
        }
        return line;
    }

    private static BigDecimal celsius(BigDecimal fahrenheit) {
        return fahrenheit
                .subtract(BigDecimal.valueOf(32))
                .multiply(BigDecimal.valueOf(5))
                .divide(BigDecimal.valueOf(9), 1, RoundingMode.HALF_UP);
    }

    private static BigDecimal fahrenheit(BigDecimal celsius) {
        return celsius.multiply(BigDecimal.valueOf(9))
                .divide(BigDecimal.valueOf(5), 1, RoundingMode.HALF_UP)
                .add(BigDecimal.valueOf(32));
    }

    private static String both(BigDecimal fahrenheit, BigDecimal celsius) {
        return plain(fahrenheit) + AmountWords.NO_BREAK + "°F" + AmountWords.NO_BREAK + "(" + plain(celsius)
                + AmountWords.NO_BREAK + "°C)";
    }

    private static String plain(BigDecimal number) {
        BigDecimal shortest = number.stripTrailingZeros();
        return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
    }
}
