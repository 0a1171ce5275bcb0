package cyclepacket.safety;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a text is a date in some spelling: in digits or with the month's name, in any order, with any marks. */
final class BirthDateSpelling {
    private static final String BETWEEN_DIGITS_AND_LETTERS = "(?<=\\d)(?=[a-z])|(?<=[a-z])(?=\\d)";

    /** Letters that tell the months apart, by definition. */
    private static final int SHORTEST_MONTH = 3;

    private static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

    private final LocalDate date;

    BirthDateSpelling(LocalDate date) {
        this.date = date;
    }

    boolean matches(String text) {
        List<String> words = words(text);
        if (words.size() == 1) {
            return isRunTogether(words.get(0));
        }
        if (words.size() != 3) {
            return false;
        }
        for (int[] order : ORDERS) {
            if (isYear(words.get(order[0])) && isMonth(words.get(order[1])) && isDay(words.get(order[2]))) {
                return true;
            }
        }
        return false;
    }

    private static List<String> words(String text) {
        StringBuilder plain = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .codePoints()
                .forEach(c -> plain.append(Character.isDigit(c) ? String.valueOf(Character.digit(c, 10)) : letter(c)));
        List<String> words = new ArrayList<>();
        for (String part : plain.toString().strip().split("\\s+")) {
            for (String word : part.split(BETWEEN_DIGITS_AND_LETTERS)) {
                if (!word.matches("|st|nd|rd|th|of|t")) {
                    words.add(word);
                }
            }
        }
        return words;
    }

    private static String letter(int codePoint) {
        return Character.isLetter(codePoint) ? Character.toString(codePoint) : " ";
    }

    /** Only with leading zeros: without them a short number of the clinic could be taken for a date. */
    private boolean isRunTogether(String digits) {
        String day = String.format(Locale.ROOT, "%02d", date.getDayOfMonth());
        String month = String.format(Locale.ROOT, "%02d", date.getMonthValue());
        for (String year : List.of(fourDigits(), twoDigits())) {
            String[] parts = {year, month, day};
            for (int[] order : ORDERS) {
                if (digits.equals(parts[order[0]] + parts[order[1]] + parts[order[2]])) {
                    return true;
                }
            }
        }
        return false;
    }

    private String fourDigits() {
        return String.format(Locale.ROOT, "%04d", date.getYear());
    }

    private String twoDigits() {
        return fourDigits().substring(2);
    }

    private boolean isYear(String word) {
        return word.equals(fourDigits()) || word.equals(twoDigits());
    }

    private boolean isMonth(String word) {
        String name = date.getMonth().name().toLowerCase(Locale.ROOT);
        return number(word).map(month -> month == date.getMonthValue()).orElse(false)
                || (word.length() >= SHORTEST_MONTH && name.startsWith(word));
    }

    private boolean isDay(String word) {
        return number(word).map(day -> day == date.getDayOfMonth()).orElse(false);
    }

    private static Optional<Integer> number(String word) {
        return word.matches("\\d{1,2}") ? Optional.of(Integer.parseInt(word)) : Optional.empty();
    }
}
