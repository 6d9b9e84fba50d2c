package org.benchleaf.compose.part;

import java.util.List;

/**
 * One result of a case as other cases are compared with it: strings only, for it is kept with the card of its case.
 *
 * @param measure as the case file names it
 * @param kind decides what is compared: {@code ph} by the kind of measurement, {@code method} by the words of the method,
 *     {@code colour} by formula, light, observer and geometry, {@code size} by the tool, {@code reserve} by its origin
 * @param like what two results of one kind must have in common to be compared
 * @param unit of the numbers; empty if they have none
 * @param apart why it is compared with none, by the key of its words; empty if it may be compared
 * @param because the author's own reason, or how it was read where it is told in words; may be empty
 * @param reaches the numbers; empty if there are none
 * @param address where the case tells it, a path with an anchor
 * @param file path of the file that holds the same numbers; empty if there is none that may be given out
 */
public record Evidence(String measure, String kind, String like, String unit, String apart, String because,
        List<Reach> reaches, String address, String file) {

    public Evidence {
        reaches = List.copyOf(reaches);
    }

    /**
     * What readings of one time, one spot or one direction reach from and to.
     *
     * @param of {@code before}, {@code after}, {@code along}, {@code across}, {@code sheet}, or the name of a spot
     * @param form {@code one}, {@code about}, {@code less} or {@code more}
     * @param count how many readings; empty if that is not told or does not apply
     * @param low the least, a plain number; empty if it is not told
     * @param middle their mean, or the one number there is; empty if it is not told
     * @param high the most; empty if it is not told
     * @param read what the numbers were worked out from, or what they add up to; empty if they are the readings themselves
     */
    public record Reach(String of, String form, String count, String low, String middle, String high, List<Read> read) {

        public Reach {
            read = List.copyOf(read);
        }

        public Reach(String of, String form, String count, String low, String middle, String high) {
            this(of, form, count, low, middle, high, List.of());
        }

        /** One number alone. */
        public static Reach one(String of, String number) {
            return new Reach(of, "one", "", "", number, "");
        }

        /** The same numbers with what stands behind them. */
        public Reach with(List<Read> behind) {
            return new Reach(of, form, count, low, middle, high, behind);
        }

        /** The sum of counts; empty if they are none. */
        public String total() {
            return read.stream().filter(one -> one.column().equals(Read.TOTAL)).map(Read::number).findFirst().orElse("");
        }

        /** The numbers that are told, as they are drawn. */
        public List<Double> numbers() {
            return List.of(low, middle, high).stream().filter(number -> !number.isEmpty()).map(Double::parseDouble).toList();
        }
    }

    /**
     * A number behind those of a reach.
     *
     * @param column its column in a file, such as {@code L before}
     * @param unit may be empty
     * @param number a plain number
     */
    public record Read(String column, String unit, String number) {

        /** The column of the sum of counts. */
        public static final String TOTAL = "total";
    }

    /** Whether it may stand beside results of other cases. */
    public boolean isComparable() {
        return apart.isEmpty() && !reaches.isEmpty();
    }

    /** How many readings its numbers rest on, as far as that is told; a number of which it is not told counts as one. */
    public int readings() {
        return reaches.stream().mapToInt(reach -> reach.count().isEmpty() ? 1 : Integer.parseInt(reach.count())).sum();
    }
}
