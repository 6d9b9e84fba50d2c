package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;

/**
 * Reads a line that says what is in a bottle: {@code isopropanol 12 % m/m; acetone 8 % m/m; rest ethanol}. Nothing is
 * guessed: a share that does not say of what is a slip.
 */
final class BottleLine {

    private static final Pattern BETWEEN = Pattern.compile("[;\\n]");
    private static final Pattern AMOUNT = Pattern.compile("\\s(?=[<>≤≥]?\\s{0,8}[+-]?\\d)");
    private static final Pattern PARTS = Pattern.compile("^(\\d+(?:\\.\\d+)?)\\s*parts?(?:\\s+(m/m|v/v))?");
    private static final Pattern REST = Pattern.compile("(?i)^rest\\s++(.+)");
    private static final Dimension[] SHARES = {Dimension.MASS_FRACTION, Dimension.VOLUME_FRACTION,
        Dimension.MASS_PER_VOLUME, Dimension.AMOUNT_PER_VOLUME};

    /** How a share is counted. */
    enum Kind { MASS, VOLUME, PER_VOLUME, AMOUNT_PER_VOLUME, PARTS_BY_MASS, PARTS_BY_VOLUME, PARTS, REST, PURE }

    /**
     * One part as it was written.
     *
     * @param name as written
     * @param kind how its share is counted
     * @param low the least of it: per cent, g/L, mol/L or parts
     * @param high the most of it
     */
    record Item(String name, Kind kind, double low, double high) {
    }

    /**
     * Something that cannot be read.
     *
     * @param column where it stands, from 1
     * @param key of the sentence that says so
     * @param found the words
     */
    record Slip(int column, String key, String found) {
    }

    private final List<Item> items = new ArrayList<>();
    private final List<Slip> slips = new ArrayList<>();

    BottleLine(String line) {
        Matcher between = BETWEEN.matcher(line);
        int start = 0;
        while (between.find()) {
            read(line.substring(start, between.start()), start);
            start = between.end();
        }
        read(line.substring(start), start);
        checkWhole(line);
    }

    List<Item> items() {
        return items;
    }

    List<Slip> slips() {
        return slips;
    }

    private void read(String text, int start) {
        String item = text.strip();
        int column = start + 1 + text.indexOf(item);
        if (item.isEmpty()) {
            return;
        }
        Matcher rest = REST.matcher(item);
        if (rest.matches()) {
            items.add(new Item(rest.group(1), Kind.REST, 0, 0));
            return;
        }
        Matcher amount = AMOUNT.matcher(item);
        while (amount.find()) {
            Optional<Item> read = item(item.substring(0, amount.start()).strip(), item.substring(amount.end()).strip());
            if (read.isPresent()) {
                items.add(read.get());
                return;
            }
        }
        unreadable(item, column);
    }

    /** A name without a share, or one whose last words look like a share and are none. */
    private void unreadable(String item, int column) {
        Matcher amount = AMOUNT.matcher(item);
        if (amount.find()) {
            String tail = item.substring(amount.end());
            boolean bare = QuantityReader.read(tail, Dimension.MASS_FRACTION).slip()
                    .filter(QuantityReader.Slip.BARE_PERCENT::equals).isPresent();
            slips.add(new Slip(column + amount.end(), bare ? "bottle-bare-percent" : "bottle-share-unreadable", tail));
        } else {
            items.add(new Item(item, Kind.PURE, 0, 0));
        }
    }

    private static Optional<Item> item(String name, String amount) {
        Matcher parts = PARTS.matcher(amount);
        if (parts.matches()) {
            double number = Double.parseDouble(parts.group(1));
            Kind kind = parts.group(2) == null ? Kind.PARTS
                    : parts.group(2).equals("m/m") ? Kind.PARTS_BY_MASS : Kind.PARTS_BY_VOLUME;
            return Optional.of(new Item(name, kind, number, number));
        }
        for (Dimension dimension : SHARES) {
            Optional<Quantity> quantity = QuantityReader.read(amount, dimension).quantity();
            if (quantity.isPresent()) {
                return Optional.of(item(name, quantity.get()));
            }
        }
        return Optional.empty();
    }

    private static Item item(String name, Quantity share) {
        Kind kind = switch (share.dimension()) {
            case MASS_FRACTION -> Kind.MASS;
            case VOLUME_FRACTION -> Kind.VOLUME;
            case MASS_PER_VOLUME -> Kind.PER_VOLUME;
            default -> Kind.AMOUNT_PER_VOLUME;
        };
        double scale = share.unit().factor() / Unit.usual(share.dimension()).factor();
        return new Item(name, kind, share.low() * scale, share.high() * scale);
    }

    private void checkWhole(String line) {
        if (items.isEmpty() && slips.isEmpty()) {
            slips.add(new Slip(1, "bottle-empty", line));
        }
        items.stream().filter(item -> item.kind() == Kind.PURE && items.size() > 1).findFirst().ifPresent(item ->
                slips.add(new Slip(line.indexOf(item.name()) + 1, "bottle-without-share", item.name())));
        if (items.stream().filter(item -> item.kind() == Kind.REST).count() > 1) {
            slips.add(new Slip(line.toLowerCase(java.util.Locale.ROOT).lastIndexOf("rest") + 1, "bottle-two-rests", "rest"));
        }
        if (items.stream().anyMatch(item -> item.low() < 0 || item.high() < 0)) {
            slips.add(new Slip(1, "bottle-negative", line));
        }
        long parts = items.stream().filter(item -> item.kind().name().startsWith("PARTS")).count();
        if (parts > 0 && parts < items.size()) {
            slips.add(new Slip(1, "bottle-parts-mixed", line));
        }
        double least = items.stream().filter(item -> item.kind() == Kind.MASS || item.kind() == Kind.VOLUME)
                .mapToDouble(Item::low).sum();
        if (least > 100 + 1e-9) {
            slips.add(new Slip(1, "bottle-too-much", Reading.number(least) + " %"));
        }
    }
}
