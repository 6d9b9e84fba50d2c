package org.benchleaf.privacy;

import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import net.datafaker.Faker;
import org.benchleaf.message.Place;
import org.benchleaf.model.Confidential;

/**
 * A private fact made by chance, and the ways of mentioning it that must be found.
 *
 * @param kind what it is
 * @param secret as it stands in a case file
 * @param names the words of it that the author may be asked about
 * @param mentions thirty of the ways
 */
record SampleFact(Kind kind, Confidential.Secret secret, List<String> names, List<Mention> mentions) {

    static final int WAYS = 30;
    private static final PhoneNumberUtil TELEPHONES = PhoneNumberUtil.getInstance();
    private static final List<String> COUNTRIES = List.of("GB", "DE", "FR", "ES", "IT", "NL", "PL", "SE", "TR", "RU", "GR",
            "JP", "IL", "US", "HU", "EG", "KR", "CN");
    private static final Map<String, List<String>> CURRENCIES = Map.of("£", List.of("GBP", "pounds"),
            "$", List.of("USD", "dollars"), "€", List.of("EUR", "euros"), "¥", List.of("JPY", "yen"));
    private static final List<String> PLACES_OF_POSTCODES = List.of("en-GB", "de", "fr", "es", "nl", "en-CA", "pl", "sv");

    /** What facts there are. */
    enum Kind {
        PERSON, PLAIN_NAME, INITIALS, TITLED, PARTICLE, DOUBLE_NAME, TWO_FAMILY_NAMES, ONE_NAME, SEVERAL_OWNERS, COUPLE, ESTATE,
        COMPANY, PROVENANCE, TELEPHONE, POSTCODE, MONEY, INVENTORY_NUMBER, E_MAIL
    }

    /** A name, in the parts of which mentions are made. */
    private record Named(SampleLanguage language, String given, String particles, String family) {

        String whole() {
            return language.isFamilyFirst() ? family + given : given + " " + particles + family;
        }
    }

    static SampleFact of(Kind kind, SampleLanguage language, Random random) {
        Faker faker = language.names(random);
        Named one = named(language, faker, "");
        Named two = named(language, faker, "");
        return switch (kind) {
            case PERSON -> person(kind, secret("owner", Map.of("family", one.family(), "given", one.given())), one, random);
            case PLAIN_NAME -> person(kind, plain("owner", spaced(one)), one, random);
            case INITIALS -> initials(language, one, random);
            case TITLED -> person(kind, plain("owner", titled(one, random)), one, random);
            case PARTICLE -> particles(language, faker, random);
            case DOUBLE_NAME, TWO_FAMILY_NAMES -> language.isFamilyFirst()
                    ? person(kind, secret("owner", Map.of("family", one.family(), "given", one.given())), one, random)
                    : halves(kind, one, two, kind == Kind.DOUBLE_NAME ? "-" : " ", random);
            case ONE_NAME -> fact(kind, secret("owner", Map.of("family", one.family())), List.of(one.family()),
                    alone(one), random);
            case SEVERAL_OWNERS -> several(kind, plain("owner", spaced(one) + " " + language.and().strip() + " " + spaced(two)),
                    one, two, random);
            case COUPLE -> couple(language, one, two, random);
            case ESTATE -> person(kind, plain("owner", "the estate of the late " + spaced(one)), one, random);
            case COMPANY -> company(one, two, random);
            case PROVENANCE -> several(kind, plain("provenance", "By descent to " + spaced(one) + ", "
                    + (1850 + random.nextInt(150)) + "; bought from " + spaced(two) + " in 1961"), one, two, random);
            case TELEPHONE -> telephone(random);
            case POSTCODE -> postcode(random);
            case MONEY -> money(random);
            case INVENTORY_NUMBER -> inventory(random);
            case E_MAIL -> eMail(faker, random);
        };
    }

    private static Named named(SampleLanguage language, Faker faker, String particles) {
        return new Named(language, faker.name().firstName().strip(), particles, capitals(faker.name().lastName().strip()));
    }

    /** The list of Italian names has "De rosa". */
    private static String capitals(String name) {
        return Pattern.compile("(?<= )\\p{Ll}").matcher(name).replaceAll(found -> found.group().toUpperCase(Locale.ROOT));
    }

    private static String spaced(Named one) {
        return one.language().isFamilyFirst() ? one.family() + " " + one.given() : one.whole();
    }

    private static String titled(Named one, Random random) {
        String title = one.language().titles().get(random.nextInt(one.language().titles().size()));
        return one.language().isFamilyFirst() ? one.family() + " " + one.given() : title + " " + one.whole();
    }

    private static SampleFact person(Kind kind, Confidential.Secret secret, Named one, Random random) {
        List<Mention> ways = new ArrayList<>(alone(one));
        ways.addAll(withGiven(one));
        return fact(kind, secret, List.of(one.family()), ways, random);
    }

    private static SampleFact initials(SampleLanguage language, Named one, Random random) {
        if (language.isFamilyFirst()) {
            return person(Kind.INITIALS, plain("owner", spaced(one)), one, random);
        }
        String first = initial(one.given()) + ". ";
        List<Mention> ways = new ArrayList<>(alone(one));
        ways.add(Mention.words("initial before", "by " + first + one.family() + " in June"));
        ways.add(Mention.words("initial behind", one.family() + ", " + first));
        ways.addAll(Mention.spellings(first + one.family()));
        return fact(Kind.INITIALS, plain("owner", first + one.family()), List.of(one.family()), ways, random);
    }

    private static SampleFact particles(SampleLanguage language, Faker faker, Random random) {
        Named one = named(language, faker, language.particles().get(random.nextInt(language.particles().size())));
        List<Mention> ways = new ArrayList<>(withGiven(one));
        ways.addAll(alone(one));
        if (!language.isFamilyFirst()) {
            ways.add(Mention.bare("particle and name", "of " + one.particles() + one.family() + " too"));
        }
        return fact(Kind.PARTICLE, plain("owner", spaced(one)), List.of(one.family(), one.particles() + one.family()), ways, random);
    }

    private static SampleFact halves(Kind kind, Named one, Named two, String between, Random random) {
        String family = one.family() + between + two.family();
        Named whole = new Named(one.language(), one.given(), "", family);
        List<Mention> ways = new ArrayList<>(withGiven(whole));
        ways.addAll(alone(whole));
        String title = one.language().titles().get(0);
        for (String half : List.of(one.family(), two.family())) {
            ways.add(Mention.words("half with a title", "by " + title + " " + half));
            ways.add(Mention.words("half with a given name", "by " + new Named(one.language(), one.given(), "", half).whole()));
        }
        ways.add(Mention.words("halves apart", one.given() + " " + one.family() + " " + two.family()));
        return fact(kind, secret("owner", Map.of("family", family, "given", one.given())),
                List.of(one.family(), two.family(), family), ways, random);
    }

    private static SampleFact several(Kind kind, Confidential.Secret secret, Named one, Named two, Random random) {
        List<Mention> ways = new ArrayList<>(alone(one));
        ways.addAll(withGiven(one));
        ways.addAll(alone(two));
        ways.addAll(withGiven(two));
        return fact(kind, secret, List.of(one.family(), two.family()), ways, random);
    }

    private static SampleFact couple(SampleLanguage language, Named one, Named two, Random random) {
        if (language.isFamilyFirst()) {
            return several(Kind.COUPLE, plain("owner", spaced(one) + " and " + spaced(two)), one, two, random);
        }
        Named other = new Named(language, two.given(), "", one.family());
        return several(Kind.COUPLE, plain("owner", one.given() + " and " + other.whole()), one, other, random);
    }

    private static SampleFact company(Named one, Named two, Random random) {
        boolean isPair = random.nextBoolean();
        String single = one.language().isFamilyFirst() ? one.whole() : one.family();
        String core = isPair ? one.family() + " & " + two.family() : single;
        String name = core + (isPair ? " Ltd" : List.of(" & Sons", " Gallery", " Trust", " GmbH").get(random.nextInt(4)));
        List<Mention> ways = new ArrayList<>(Mention.spellings(name));
        ways.add(Mention.words("whole", "bought of " + name + " in June"));
        ways.add(Mention.words("possessive", name + "'s stock"));
        ways.add(Mention.words("run together", "assets " + name.replaceAll("[^\\p{L}\\p{M}]+", "")));
        ways.add(Mention.words("underscores", "assets " + name.replaceAll("[^\\p{L}\\p{M}]+", "_")));
        ways.add(Mention.words("and for &", name.replace("&", "and")));
        ways.add(Mention.words("Messrs", "Messrs " + name));
        ways.add(Mention.bare("without its form", "by " + core + " in June"));
        ways.add(Mention.bare("its collection", "the " + core + " collection"));
        if (isPair) {
            ways.add(Mention.words("two of its words", "by " + one.family() + " and " + two.family() + " in June"));
            ways.add(Mention.words("hyphen", "by " + one.family() + "-" + two.family() + " in June"));
            ways.add(Mention.words("comma", "by " + one.family() + ", " + two.family() + " in June"));
        }
        return fact(Kind.COMPANY, secret("owner", Map.of("organisation", name)), List.of(one.family(), two.family()), ways, random);
    }

    /** Mentions of the family's name without a given name. */
    private static List<Mention> alone(Named one) {
        String name = one.family();
        List<Mention> ways = new ArrayList<>();
        for (String title : one.language().titles()) {
            ways.add(one.language().isFamilyFirst() ? Mention.words("with a title", "この紙は" + name + title + "のもの")
                    : Mention.words("with a title", "lent by " + title + " " + one.particles() + name + ", dry"));
        }
        if (one.language().isFamilyFirst() && name.codePointCount(0, name.length()) == 1) {
            return ways;
        }
        ways.add(Mention.bare("by itself", "The sheet of " + name + " was dry."));
        ways.add(Mention.bare("in a mark", "the <em>" + name + "</em> sheet"));
        ways.add(Mention.words("collection", "from the " + name + " collection"));
        ways.add(Mention.words("family", "the " + name + " family lent it"));
        ways.add(Mention.bare("in a script", "const owner" + capital(name) + " = 1;"));
        ways.add(new Mention("in a file's name", true,
                org.benchleaf.publish.SiteFile.text("assets/recto-" + name.replace(' ', '-') + ".txt", "x")));
        genitive(one).ifPresent(form -> ways.add(Mention.bare("genitive", "The sheet of " + form + " was dry.")));
        if (one.language().isLatin()) {
            ways.add(Mention.words("possessive", "It is " + name + "'s own."));
            ways.add(Mention.words("curly possessive", "It is " + name + "’s own."));
            ways.add(Mention.words("both of a couple", "Mr and Mrs " + one.particles() + name + " lent it"));
            ways.add(Mention.words("the family as a plural",
                    "The " + name + (name.matches(".*(?:s|x|z|ch|sh)") ? "es" : "s") + " lent it"));
        }
        return ways;
    }

    /** As in a grammar of each language (from memory); empty where there is none, or none without changing the name itself. */
    private static Optional<String> genitive(Named one) {
        String name = one.family();
        return switch (one.language()) {
            case GERMAN, SWEDISH, DUTCH -> Optional.of(name + "s").filter(form -> !name.matches(".*[sxzß]"));
            case RUSSIAN -> Optional.of(name + "а").filter(form -> name.matches(".*(?:ов|ев|ин|ын)"));
            case GREEK -> Optional.of(name.replaceFirst("ος$", "ου")).filter(form -> !form.equals(name));
            default -> Optional.empty();
        };
    }

    private static List<Mention> withGiven(Named one) {
        List<Mention> ways = new ArrayList<>(Mention.spellings(one.whole()));
        String name = one.particles() + one.family();
        if (one.language().isFamilyFirst()) {
            ways.add(Mention.words("with a space", one.family() + " " + one.given()));
            ways.add(Mention.words("given first", one.given() + " " + one.family()));
            ways.add(Mention.words("in a sentence", "この紙は" + one.whole() + "のものです"));
            ways.add(Mention.words("title behind all", one.whole() + one.language().titles().get(0)));
            return ways;
        }
        String initial = initial(one.given());
        ways.add(Mention.words("given first", "lent by " + one.whole() + " in June"));
        ways.add(Mention.words("family first", one.family() + ", " + one.given()));
        ways.add(Mention.words("family first, no comma", one.family() + " " + one.given()));
        ways.add(Mention.words("title and all", one.language().titles().get(0) + " " + one.whole()));
        ways.add(Mention.words("estate", "the estate of the late " + one.whole()));
        ways.add(Mention.words("with another", one.given() + one.language().and() + "Zuzu " + name));
        ways.add(Mention.words("run together", "assets/" + one.given() + one.family()));
        ways.add(Mention.words("underscores", "file " + one.given() + "_" + one.family()));
        ways.add(Mention.words("a name between", one.given() + " Zuzu " + name));
        if (one.language().isLatin()) {
            ways.add(Mention.words("initial", "by " + initial + ". " + name + " in June"));
            ways.add(Mention.words("initial without a stop", "by " + initial + " " + name + " in June"));
            ways.add(Mention.words("initial behind", one.family() + ", " + initial + "."));
            ways.add(Mention.words("initial between", one.given() + " Q. " + name));
            ways.add(Mention.words("possessive of all", one.whole() + "’s sheet"));
            ways.add(Mention.words("camel case", "owner" + capital(one.given()) + capital(one.family())));
        }
        return ways;
    }

    private static SampleFact telephone(Random random) {
        String country = COUNTRIES.get(random.nextInt(COUNTRIES.size()));
        PhoneNumber example = TELEPHONES.getExampleNumber(country);
        long ten = 10_000;
        PhoneNumber number = new PhoneNumber().mergeFrom(example)
                .setNationalNumber(example.getNationalNumber() / ten * ten + random.nextInt((int) ten));
        String international = TELEPHONES.format(number, PhoneNumberFormat.INTERNATIONAL);
        String national = TELEPHONES.format(number, PhoneNumberFormat.NATIONAL);
        String e164 = TELEPHONES.format(number, PhoneNumberFormat.E164);
        List<Mention> ways = new ArrayList<>();
        for (String written : List.of(international, national, e164, TELEPHONES.format(number, PhoneNumberFormat.RFC3966),
                TELEPHONES.formatOutOfCountryCallingNumber(number, "FR"), TELEPHONES.formatOutOfCountryCallingNumber(number, "US"),
                "00" + e164.substring(1), international.replace(' ', '.'), international.replace(' ', '-'),
                international.replace(" ", ""), national.replaceAll("[\\s()-]+", ""), national.replaceAll("[\\s()-]+", "/"),
                international.replace(' ', '\u00A0'), "(" + international + ")")) {
            ways.add(Mention.words("format " + ways.size(), "Call " + written + " today"));
        }
        String own = random.nextBoolean() ? international : national;
        ways.addAll(Mention.spellings(own));
        return fact(Kind.TELEPHONE, secret("contact", Map.of("telephone", own)), List.of(), ways, random);
    }

    private static SampleFact postcode(Random random) {
        Locale place = Locale.forLanguageTag(PLACES_OF_POSTCODES.get(random.nextInt(PLACES_OF_POSTCODES.size())));
        String code = new Faker(place, random).address().zipCode();
        List<Mention> ways = new ArrayList<>(Mention.spellings(code));
        for (String words : List.of("14 Mill Lane, %s", "in %s Ashwick", "(%s)", "postcode %s.", "%s, by post", "D-%s Ort", "at %s; dry",
                "%s/2", "the %s area", "“%s”", "to: %s", "%s", "house at %s")) {
            ways.add(Mention.words("in an address " + ways.size(), String.format(words, code)));
        }
        return fact(Kind.POSTCODE, secret("address", Map.of("postcode", code)), List.of(), ways, random);
    }

    private static SampleFact money(Random random) {
        String sign = List.copyOf(new java.util.TreeSet<>(CURRENCIES.keySet())).get(random.nextInt(CURRENCIES.size()));
        String code = CURRENCIES.get(sign).get(0);
        String word = CURRENCIES.get(sign).get(1);
        int sum = random.nextBoolean() ? 20 + random.nextInt(980) : 1000 + random.nextInt(90_000);
        String plain = Integer.toString(sum);
        String commas = String.format(Locale.ROOT, "%,d", sum);
        List<Mention> ways = new ArrayList<>();
        for (String text : List.of(sign + plain, sign + " " + plain, plain + " " + sign, code + " " + plain, plain + " " + code,
                plain + " " + word, sign + commas, sign + commas.replace(',', '.'), sign + commas.replace(',', ' '),
                sign + commas.replace(',', '\u202F'), sign + commas.replace(',', '’'), sign + commas + ".00", "valued at " + plain,
                "insured for " + commas, "worth about " + plain, "paid " + plain + " for it", "sold at " + commas,
                "an estimate of " + plain)) {
            ways.add(Mention.words("sum " + ways.size(), "It was " + text + " then"));
        }
        String own = sign + (random.nextBoolean() ? plain : commas);
        ways.addAll(Mention.spellings(own));
        return fact(Kind.MONEY, plain("value", own), List.of(), ways, random);
    }

    private static SampleFact inventory(Random random) {
        int a = 1880 + random.nextInt(140);
        int b = 1 + random.nextInt(60);
        int c = 1 + random.nextInt(400);
        String suffix = List.of("", "a", "b", "r").get(random.nextInt(4));
        String base = switch (random.nextInt(4)) {
            case 0 -> a + "." + b + "." + c;
            case 1 -> "E." + c + "-" + a;
            case 2 -> "MS " + (100 + c);
            default -> "TQ" + a + "/" + c;
        };
        String number = base + suffix;
        List<Mention> ways = new ArrayList<>(Mention.spellings(number));
        for (String words : List.of("Inv. no. %s", "inventory number %s.", "(%s)", "%s, recto", "accession %s", "see %s for it",
                "No. %s", "object %s", "%s: dry", "shelf mark %s", "=%s=", "item %s of it")) {
            ways.add(Mention.words("a number " + ways.size(), String.format(words, number)));
        }
        ways.add(Mention.words("without suffix", "Inv. no. " + base));
        ways.add(Mention.words("other signs", "no. " + number.replaceAll("[./ -]", "_")));
        ways.add(Mention.words("spaces", "no. " + number.replaceAll("[./-]", " ")));
        return fact(Kind.INVENTORY_NUMBER, secret("number", Map.of("number", number)), List.of(), ways, random);
    }

    private static SampleFact eMail(Faker faker, Random random) {
        String address = new Faker(Locale.ENGLISH, random).internet().emailAddress().toLowerCase(Locale.ROOT);
        List<Mention> ways = new ArrayList<>(Mention.spellings(address));
        for (String words : List.of("write to %s", "<a href='mailto:%s'>x</a>", "(%s)", "mail: %s.", "%s;", "“%s”", "to %s, please",
                "cc %s", "%s,", "from %s", "=%s", "[%s]")) {
            ways.add(Mention.words("an address " + ways.size(), String.format(words, address)));
        }
        ways.add(Mention.words("in words", address.replace("@", " at ").replace(".", " dot ")));
        ways.add(Mention.words("in brackets", address.replace("@", " [at] ").replace(".", " [dot] ")));
        return fact(Kind.E_MAIL, secret("contact", Map.of("e-mail", address)), List.of(), ways, random);
    }

    /** Thirty of the ways, each way in turn if there are fewer. */
    private static SampleFact fact(Kind kind, Confidential.Secret secret, List<String> names, List<Mention> ways, Random random) {
        java.util.Collections.shuffle(ways, random);
        return new SampleFact(kind, secret, names, List.copyOf(ways.subList(0, Math.min(WAYS, ways.size()))));
    }

    private static String initial(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT);
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace(" ", "").replace("-", "");
    }

    private static Confidential.Secret plain(String field, String text) {
        return Confidential.Secret.plain(field, text, Place.file("case.md"));
    }

    private static Confidential.Secret secret(String field, Map<String, String> parts) {
        return new Confidential.Secret(field, parts, Place.file("case.md"));
    }
}
