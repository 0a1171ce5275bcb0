package cyclepacket.page;

import com.ibm.icu.text.DateFormat;
import com.ibm.icu.text.DecimalFormat;
import com.ibm.icu.text.DecimalFormatSymbols;
import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.NumberFormat;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.ULocale;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Optional;

/** Any language that ICU's data know. */
final class IcuTongue implements Tongue {
    /** Doses have at most three places; ICU would round a fourth. */
    private static final int MOST_PLACES = 6;

    private final ULocale locale;
    private final DecimalFormat numbers;

    /**
     * @param tag a language tag, for example {@code es-US}
     * @param grouping what stands between thousands, where the locale's own sign can be misread
     */
    IcuTongue(String tag, Optional<String> grouping) {
        locale = ULocale.forLanguageTag(tag);
        if (ULocale.getAvailableLocales().length == 0 || locale.getLanguage().isEmpty()) {
            throw new TemplateFault(tag + " is no language that ICU's data know");
        }
        numbers = (DecimalFormat) NumberFormat.getNumberInstance(locale);
        numbers.setMaximumFractionDigits(MOST_PLACES);
        grouping.ifPresent(sign -> {
            DecimalFormatSymbols symbols = numbers.getDecimalFormatSymbols();
            symbols.setGroupingSeparatorString(sign);
            numbers.setDecimalFormatSymbols(symbols);
        });
    }

    @Override
    public String number(BigDecimal number) {
        return numbers.format(number);
    }

    @Override
    public String weekday(LocalDate date) {
        return format("EEEE", date);
    }

    @Override
    public String shortWeekday(LocalDate date) {
        return format("EEE", date);
    }

    @Override
    public String date(LocalDate date) {
        return format("dMMMM", date);
    }

    @Override
    public String dateAndYear(LocalDate date) {
        return format("yMMMMd", date);
    }

    @Override
    public String day(LocalDate date) {
        return format("EEEEdMMMM", date);
    }

    @Override
    public String twelve(LocalTime time) {
        Date at = Date.from(time.atDate(LocalDate.EPOCH).toInstant(ZoneOffset.UTC));
        return skeleton("hmma").format(at);
    }

    @Override
    public String plural(BigDecimal number) {
        return PluralRules.forLocale(locale).select(number.doubleValue());
    }

    @Override
    public String all(List<String> names) {
        return ListFormatter.getInstance(locale, ListFormatter.Type.AND, ListFormatter.Width.WIDE)
                .format(names);
    }

    @Override
    public String times(List<String> times) {
        return all(times);
    }

    @Override
    public String either(List<String> names) {
        return ListFormatter.getInstance(locale, ListFormatter.Type.OR, ListFormatter.Width.WIDE)
                .format(names);
    }

    private String format(String skeleton, LocalDate date) {
        return skeleton(skeleton)
                .format(Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant()));
    }

    private DateFormat skeleton(String skeleton) {
        DateFormat format = DateFormat.getInstanceForSkeleton(skeleton, locale);
        format.setTimeZone(TimeZone.GMT_ZONE);
        return format;
    }
}
