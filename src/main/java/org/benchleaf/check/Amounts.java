package org.benchleaf.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.QuantityReader.Reading;
import org.benchleaf.quantity.QuantityReader.Slip;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/** Reads quantities and answers each slip with a question. */
final class Amounts {

    /** A hundred years. */
    private static final int LONGEST_WEEKS = 5200;

    /** Words that some keys take before a number; where they are refused, the key takes none. */
    private static final Pattern STATED = Pattern.compile("^\\s*+(?:about|less than|more than)\\s");

    /** What is said of such words where a key may take them. */
    static final String OR_STATED = ", with 'about' or 'less than' before it where that was said";

    private Amounts() {
    }

    /** The quantity written, in one of the dimensions wanted; empty, with a message, if it is not one. */
    static Optional<Quantity> read(Node.Scalar written, List<Dimension> wanted, Messages messages) {
        List<Reading> slipped = new ArrayList<>();
        for (Dimension dimension : wanted) {
            Reading reading = QuantityReader.read(written.text(), dimension);
            if (reading.quantity().isPresent()) {
                reading.quantity().ifPresent(quantity -> reviewTime(quantity, written, messages));
                return reading.quantity();
            }
            slipped.add(reading);
        }
        // With several dimensions allowed, "of another dimension" only means that it is not this one.
        Reading telling = slipped.stream().filter(reading -> reading.slip().get() != Slip.OTHER_DIMENSION).findFirst()
                .orElse(slipped.get(0));
        messages.add(message(telling, written, wanted));
        return Optional.empty();
    }

    /** A time longer than any studio lasts would be laid out day by day until the calendar ends. */
    private static void reviewTime(Quantity quantity, Node.Scalar written, Messages messages) {
        if (quantity.unit().dimension() == Dimension.TIME && quantity.highIn(Unit.WEEK) > LONGEST_WEEKS) {
            messages.add(FormMessages.OUT_OF_RANGE.at(written.place(), "found", written.text(), "low", 0,
                    "high", LONGEST_WEEKS + " wk"));
        }
    }

    /** The quantity written, whatever it measures. */
    static Optional<Quantity> readAny(Node.Scalar written, Messages messages) {
        Reading reading = QuantityReader.read(written.text());
        if (reading.slip().isPresent()) {
            messages.add(message(reading, written, List.of(Dimension.LENGTH)));
        }
        return reading.quantity();
    }

    private static Message message(Reading reading, Node.Scalar written, List<Dimension> wanted) {
        Place place = place(reading, written);
        String found = reading.found();
        String dimensions = wanted.stream().map(Dimension::words).collect(Collectors.joining(" or "));
        String usual = example(wanted.get(0));
        return switch (reading.slip().orElseThrow()) {
            case EMPTY -> FormMessages.NOTHING_WRITTEN.at(written.place());
            case DECIMAL_COMMA -> FormMessages.DECIMAL_COMMA.at(place, "found", written.text(),
                    "remedy", withoutComma(written.text()));
            case BARE_PERCENT -> FormMessages.BARE_PERCENT.at(place, "found", found);
            case COLON_RATIO -> colonRatio(place, found);
            case HOUSEHOLD_MEASURE -> FormMessages.HOUSEHOLD_MEASURE.at(place, "found", found);
            case NO_UNIT -> FormMessages.NO_UNIT.at(place, "found", found, "wanted", dimensions, "usual", usual);
            case UNKNOWN_UNIT -> FormMessages.UNKNOWN_UNIT.at(place, "found", found,
                    "remedy", unitRemedy(found, wanted));
            case OTHER_DIMENSION -> FormMessages.OTHER_DIMENSION.at(place, "found", written.text(),
                    "wanted", dimensions, "usual", usual);
            case RANGE_BACKWARDS -> FormMessages.RANGE_BACKWARDS.at(place, "found", found);
            case BEYOND_LIMITS -> beyondLimits(written, wanted);
            case NOT_A_NUMBER -> FormMessages.NOT_A_NUMBER.at(place, "found", written.text(), "wanted", dimensions,
                    "usual", usual, "stated", wanted.contains(Dimension.TIME) && !STATED.matcher(written.text()).find() ? OR_STATED : "",
                    "said", written.text().strip());
        };
    }

    /** The limits of the kind that was written: of several allowed ones, and where any may be, its unit tells which. */
    private static Message beyondLimits(Node.Scalar written, List<Dimension> wanted) {
        Dimension dimension = Stream.concat(wanted.stream(), Stream.of(Dimension.values()))
                .filter(one -> QuantityReader.read(written.text(), one).slip().filter(Slip.BEYOND_LIMITS::equals)
                        .isPresent()).findFirst().orElseThrow();
        String unit = unit(dimension);
        return FormMessages.BEYOND_LIMITS.at(written.place(), "found", written.text(),
                "low", lowLimit(dimension), "high", limit(dimension.most()) + unit,
                "dimension", dimension.words(), "reason", dimension.reason());
    }

    /** Of a kind that has a lowest amount of its own, this one. */
    private static String lowLimit(Dimension dimension) {
        return dimension.lowest() > -dimension.most() ? plain(dimension.lowest()) : limit(dimension.least());
    }

    private static String limit(double number) {
        return number >= 0.1 && number < 1e6 ? plain(number) : String.format(Locale.ROOT, "%.0e", number)
                .replaceFirst("e([+-])0?", "e$1").replace("+", "");
    }

    /** Inside a scalar on one line the slip itself is underlined; quotes and folded lines only the whole. */
    private static Place place(Reading reading, Node.Scalar written) {
        boolean exact = written.plain() && written.place().length() == written.text().length();
        int length = reading.slip().get() == Slip.UNKNOWN_UNIT ? reading.found().length()
                : written.text().length() - reading.offset();
        return exact && reading.offset() > 0 && reading.offset() < written.text().length()
                ? written.place().shifted(reading.offset(), length) : written.place();
    }

    private static String withoutComma(String text) {
        String point = text.replaceAll("(?<=\\d),(?=\\d)", ".");
        return text.matches(".*\\d,\\d{3}(\\D.*)?")
                ? "Write '" + point + "' or '" + text.replaceAll("(?<=\\d),(?=\\d)", "") + "', whichever is meant."
                : "Write '" + point + "', with a point.";
    }

    static Message colonRatio(Place place, String found) {
        String[] parts = found.strip().split("[:\\s]+");
        return FormMessages.COLON_RATIO.at(place, "found", found, "all", "one in " + parts[1], "more", parts[0] + " to " + parts[1],
                "whole", parts[1], "sum", parts[0] + " + " + parts[1]);
    }

    private static String example(Dimension wanted) {
        String symbol = Unit.usual(wanted).symbol();
        return wanted == Dimension.ACIDITY ? "pH 8.5"
                : wanted == Dimension.COUNT || wanted == Dimension.NUMBER ? "3" : "20 " + symbol;
    }

    private static String unitRemedy(String found, List<Dimension> wanted) {
        List<String> fitting = Stream.of(Unit.values()).filter(unit -> wanted.contains(unit.dimension()))
                .map(Unit::symbol).filter(symbol -> !symbol.isEmpty()).toList();
        return Nearest.to(found, fitting).or(() -> Nearest.to(found, spellings(wanted)))
                .map(near -> "Did you mean '" + near + "'?")
                .orElse("Write one of: " + String.join(", ", fitting) + ".");
    }

    /** Of what is asked for alone: a minute is no slip of the finger for an inch. */
    private static List<String> spellings(List<Dimension> wanted) {
        return Unit.spellings().stream().filter(spelling -> Unit.spelled(spelling).map(Unit::dimension).filter(wanted::contains)
                .isPresent()).toList();
    }

    static String unit(Dimension dimension) {
        return Unit.usual(dimension).symbol().isEmpty() || dimension == Dimension.ACIDITY ? ""
                : " " + Unit.usual(dimension).symbol();
    }

    static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
