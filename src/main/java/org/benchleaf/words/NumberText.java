package org.benchleaf.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.calculate.Digits;
import org.benchleaf.model.CalendarSpan;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** The {@link Digits} of a language, with its days, its clock and the numbers in its running text. */
public final class NumberText extends Digits {

    private static final Pattern LONG_NUMBER = Pattern.compile("(?<![\\p{L}\\d.])\\d++\\.\\d{6,}+(?:[eE]-?\\d++)?+");

    private final Words words;

    private NumberText(Words words) {
        super(words.say("number.decimal-mark").charAt(0), words.counted("unit.weeks"));
        this.words = words;
    }

    /** The number texts of a language. */
    public static NumberText in(Words words) {
        return new NumberText(words);
    }

    /** A quantity as an instrument shows it: rounded to the instrument's smallest step, with its decimals. */
    public Amount shownBy(Quantity quantity, Quantity step) {
        Decimal smallest = Decimal.of(step.to(quantity.unit()).value());
        BigDecimal one = new BigDecimal(smallest.plain());
        BigDecimal steps = BigDecimal.valueOf(quantity.value()).divide(one, 0, RoundingMode.HALF_UP);
        Decimal shown = Decimal.read(steps.multiply(one).toPlainString()).rounded(Math.max(0, smallest.scale()));
        return new Amount(plain(shown), symbol(quantity.unit()));
    }

    /** A text with every number of more than six digits cut to six; what else it says stays. */
    public String shortened(String text) {
        Matcher number = LONG_NUMBER.matcher(text);
        StringBuilder shown = new StringBuilder();
        while (number.find()) {
            number.appendReplacement(shown, plain(sixDigits(Double.parseDouble(number.group()))));
        }
        return number.appendTail(shown).toString();
    }

    /** A written text with the space before each unit made narrow and unbreakable. */
    public String spaced(String text) {
        return UnitSpaces.in(text);
    }

    /** A time in the units a person would say; of a range that begins at nothing its end alone, as the most. */
    @Override
    public Amount duration(Quantity time) {
        return time.low() == 0 && time.high() > 0
                ? new Amount(words.say("hand.at-most", "amount", super.duration(Quantity.of(time.high(), time.unit())).text()), "")
                : super.duration(time);
    }

    /** The same time for a program: {@code PT20M}; the high end of a range. */
    public String iso(Quantity time) {
        return Duration.ofSeconds(Math.round(time.highIn(Unit.SECOND))).toString();
    }

    /** A day with its month spelled. */
    public String date(LocalDate day) {
        return words.say("date.day", "day", day.getDayOfMonth(), "month", words.say("month." + day.getMonthValue()),
                "year", day.getYear());
    }

    /** A month with its year, or a year. */
    public String span(CalendarSpan span) {
        return span.month().map(month -> words.say("date.month", "month", words.say("month." + month.getValue()), "year", span.year()))
                .orElseGet(() -> String.valueOf(span.year()));
    }

    /** A day with its weekday and its month spelled. */
    public String weekday(LocalDate day) {
        return words.say("date.weekday", "weekday", words.say("weekday." + day.getDayOfWeek().getValue()), "date", date(day));
    }

    /** A time of day on the clock of 24 hours. */
    public String clock(LocalTime time) {
        return String.format(Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
    }
}
