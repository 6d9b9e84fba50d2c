package org.benchleaf.privacy;

import java.util.regex.Pattern;

/** Decides whether digits that were found are the private number, and not part of a measurement. */
enum NumberEvidence implements Needle.Evidence {
    /** A sum, near a sign or word of money. */
    MONEY {
        @Override
        public boolean counts(Spot spot) {
            return spot.isWhole() && isOneSum(spot)
                    && isNearMoney(spot, spot.end() - spot.start() < TELLING_SUM ? NUMBER_REACH : MONEY_REACH);
        }
    },
    /** A telephone number, whatever of country and trunk stands before it. */
    TELEPHONE {
        @Override
        public boolean counts(Spot spot) {
            return followsOnlyCodes(spot) && !digitFollows(spot) && !Character.isLetter(signBefore(spot));
        }
    },
    /** The part of a telephone number that is dialled inside a town, by itself. */
    LOCAL_TELEPHONE {
        @Override
        public boolean counts(Spot spot) {
            return startOfNumber(spot) == spot.start() && TELEPHONE.counts(spot) && AS_DIALLED.matcher(spot.written()).matches();
        }
    },
    /** So few digits of a telephone number that only a word beside them tells what they are. */
    SHORT_TELEPHONE {
        @Override
        public boolean counts(Spot spot) {
            return LOCAL_TELEPHONE.counts(spot) && TELEPHONE_WORD.matcher(spot.around(NUMBER_REACH)).find();
        }
    },
    /** A number without letters, near a word that says that it numbers something. */
    NUMBERED {
        @Override
        public boolean counts(Spot spot) {
            return spot.isWhole() && NUMBER_WORD.matcher(spot.around(NUMBER_REACH)).find();
        }
    };

    /** Signs, codes and words of money; those that are words of other things too only beside digits. */
    static final Pattern CURRENCY =
            Pattern.compile("(?iu)\\p{Sc}|[円圓元원]|(?<!\\p{L})(?:GBP|USD|EUR|CHF|JPY|AUD|CAD|NZD|CNY|RMB|PLN|CZK|HUF|SEK|NOK|DKK|"
            + "BRL|KRW|INR|RUB|ILS|NIS|ZAR|HKD|MXN|UAH|RON|pounds?|sterling|"
            + "quid|guineas?|dollars?|euros?|francs?|franken|sfr|yen|yuan|rou?bles?|"
            + "rupees?|rs|kron(?:a|e|er|or)|kr|koruny?|korun|kč|zł|złot(?:y|ych|e)|forint|"
            + "reais|pesos?|shekels?|hryvnias?|liras?|lire|rand|руб(?:лей|ля|ль)?|грн)"
            + "(?!\\p{L})|(?<!\\p{L})Fr\\.?(?= ?\\d)|(?<=\\d |\\d)won(?!\\p{L})");
    private static final Pattern PAID =
            Pattern.compile("(?i)\\b(?:valued|valuation|worth|pric|paid|pay|insur|estimat|apprais|cost|sold|sale|"
            + "invoice|valor|precio|seguro|tasaci|wert|preis|prix|assur)");
    private static final Pattern TELEPHONE_WORD =
            Pattern.compile("(?iu)☎|電話|电话|전화|(?<!\\p{L})(?:tel|tél|tlf|telephone|téléphone|telefon|telefono|"
            + "teléfono|phone|ph|call|ring|dial|mobile|mob|cell|fax|handy|móvil|тел|телефон)(?!\\p{L})");
    private static final Pattern NUMBER_WORD = Pattern.compile(
            "(?i)#|№|\\b(?:no|nr|num|number|inv|inventory|acc|accession|box|lot|shelf|item|ref|bay|drawer|cat)\\b");
    /** A number of two digits stands in many sentences about prices by chance; of three, in few. */
    private static final int TELLING_SUM = 3;
    private static final int MONEY_REACH = 40;
    static final int NUMBER_REACH = 16;
    private static final Pattern AS_DIALLED = Pattern.compile("[\\d ()./\\u00A0\\u202F\\u2011\\u2013-]{1,16}");
    /** Signs that take no room between others. */
    private static final Pattern UNSEEN = Pattern.compile("\\p{Cf}");
    private static final Pattern SUM = Pattern.compile("\\d+([ ,.'’\\u00A0\\u2009\\u202F]\\d{3})*([.,]\\d{2})?");
    /** A number with a unit is measured, not paid. */
    private static final Pattern MEASURED = Pattern.compile("[ \\u00A0\\u2009\\u202F]?(?:[%°µ]|mm|cm|kg|mL|L\\b|g\\b|min|h\\b)");
    /** As in "011 972 0": a way out of the country, its code, and what is dialled inside it. */
    private static final int MOST_CODES = 7;

    /** Whether a sign or word of money, or of paying, stands near. */
    static boolean isNearMoney(Spot spot, int reach) {
        String around = spot.around(reach);
        return CURRENCY.matcher(around).find() || PAID.matcher(around).find();
    }

    /** Whether it is a number as people write sums of money, and not the decimals of a longer one. */
    private static boolean isOneSum(Spot spot) {
        boolean decimals = spot.start() > 1 && ".,".indexOf(spot.text().charAt(spot.start() - 1)) >= 0
                && Character.isDigit(spot.text().charAt(spot.start() - 2));
        String rest = spot.text().substring(spot.end(), Math.min(spot.text().length(), spot.end() + 4));
        return !decimals && SUM.matcher(UNSEEN.matcher(spot.written()).replaceAll("")).matches()
                && !rest.matches("(?s)[,.' \u00A0\u202F]\\d{3}.*")
                && !MEASURED.matcher(rest).lookingAt();
    }

    /** The sign before all digits that belong to the same number. */
    private static char signBefore(Spot spot) {
        int at = startOfNumber(spot);
        return at == 0 ? ' ' : spot.text().charAt(at - 1);
    }

    private static int startOfNumber(Spot spot) {
        int at = spot.start();
        for (int back = at - 1; back >= 0 && "0123456789 ()+-/.\u00A0\u2009\u202F\u2011".indexOf(spot.text().charAt(back)) >= 0; back--) {
            if (Character.isDigit(spot.text().charAt(back)) || "+(".indexOf(spot.text().charAt(back)) >= 0) {
                at = back;
            }
        }
        return at;
    }

    private static boolean followsOnlyCodes(Spot spot) {
        long digits = spot.text().substring(startOfNumber(spot), spot.start()).chars().filter(Character::isDigit).count();
        return digits <= MOST_CODES;
    }

    private static boolean digitFollows(Spot spot) {
        return spot.end() < spot.text().length() && Character.isLetterOrDigit(spot.text().charAt(spot.end()));
    }
}
