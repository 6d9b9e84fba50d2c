package org.benchleaf.privacy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/** Makes what is looked for from the private values of one case. */
final class FactReader {

    /** Fields that name people; free text there may hide a name. */
    private static final Set<String> NAMING = Set.of("owner", "former owner", "lender", "contact", "insurer", "agent",
            "provenance", Confidential.PEOPLE);
    private static final Set<String> NOT_LOOKED_FOR = Set.of("title", "year", "how", "from", "until");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern E_MAIL = Pattern.compile("[\\p{L}\\d._%+-]{1,64}@[\\p{L}\\d.-]{1,250}");
    private static final Pattern TELEPHONE = Pattern.compile("(?<![\\p{L}\\d])(?:\\+|00)?\\(?\\d[\\d ()/.\\u00A0-]{5,60}\\d(?!\\p{L})");
    /** What is put where something was taken out. */
    private static final String APART = " ; ";
    private static final Pattern EDGES = Pattern.compile("^[\\s,.:–—-]++|(?<![\\s,:–—-])[\\s,:–—-]++$");
    private static final Pattern CODE = Pattern.compile("^[\\p{Lu}./-]*+\\d[\\p{Lu}\\d./-]*+");
    private static final Pattern LETTER = Pattern.compile("\\p{L}");
    private static final Pattern DIGIT = Pattern.compile("\\d");
    private static final Pattern BLANK = Pattern.compile("\\s");
    private static final Pattern POSTCODE = Pattern.compile("\\b[A-Z]{1,2}\\d[A-Z\\d]? ?\\d[A-Z]{2}\\b");

    private final Confidential.Secret secret;
    private final Needles needles;
    private final NameForms names;
    private final NumberForms numbers;
    private final TelephoneForms telephones;
    private final SumForms sums;

    private FactReader(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
        this.names = new NameForms(secret, needles);
        this.numbers = new NumberForms(secret, needles);
        this.telephones = new TelephoneForms(secret, needles);
        this.sums = new SumForms(secret, needles);
    }

    static Needles read(String caseId, Confidential confidential) {
        Needles needles = new Needles(caseId, confidential);
        confidential.secrets().stream().filter(secret -> !Needles.isAnswer(secret))
                .forEach(secret -> new FactReader(secret, needles).read());
        return needles;
    }

    private void read() {
        Map<String, String> parts = secret.parts();
        if (parts.containsKey("family")) {
            names.person(NameParser.person(NameParser.words(parts.getOrDefault("given", "")),
                    NameParser.words(parts.get("family"))));
            needles.text(secret, parts.getOrDefault("given", "") + " " + parts.get("family"));
        }
        parts.forEach((key, text) -> {
            if (!NOT_LOOKED_FOR.contains(key) && !key.equals("family") && !key.equals("given")) {
                part(key, text.strip());
            }
        });
    }

    private void part(String key, String text) {
        needles.text(secret, text);
        boolean isNaming = key.isEmpty() && NAMING.contains(secret.field());
        switch (key.isEmpty() ? secret.field() : key) {
            case "organisation" -> organisation(NameParser.words(text));
            case "telephone" -> telephones.read(text);
            case "e-mail" -> eMail(text);
            case "amount", "value" -> thing(text, true);
            case "number" -> numbers.read(text);
            case "person" -> {
                if (!names(text)) {
                    wholePhrase(text);
                }
            }
            case "address" -> {
                thing(text, false);
                places(text);
            }
            default -> {
                if (isNaming) {
                    naming(text);
                } else {
                    thing(text, false);
                }
            }
        }
    }

    /** A plain text where people are named: its numbers and addresses are taken out, and names must be left. */
    private void naming(String text) {
        wholePhrase(text);
        sums.read(text, false);
        String left = withoutNumbers(withoutAddresses(text));
        if (secret.field().equals("provenance")) {
            left = NameWords.PROVENANCE_LINK.matcher(left).replaceAll(APART);
        }
        for (String segment : left.split("[;\\n|()]")) {
            String bare = EDGES.matcher(segment).replaceAll("");
            if (isCode(bare)) {
                add(bare, false, Spot::isWhole);
            } else if (!bare.isEmpty()) {
                names(bare);
            }
        }
    }

    private String withoutAddresses(String text) {
        return E_MAIL.matcher(text).replaceAll(mail -> {
            eMail(mail.group());
            return APART;
        });
    }

    private String withoutNumbers(String text) {
        String left = TELEPHONE.matcher(text).replaceAll(number -> {
            if (number.group().chars().filter(Character::isDigit).count() < TelephoneForms.FEWEST_DIGITS) {
                return Matcher.quoteReplacement(number.group());
            }
            telephones.read(number.group());
            return APART;
        });
        return POSTCODE.matcher(left).replaceAll(code -> {
            add(code.group(), false, Spot::isWhole);
            return APART;
        });
    }

    /** A single word of letters and digits, such as a number of an agent's list. */
    private static boolean isCode(String text) {
        return CODE.matcher(text).matches();
    }

    /** The forms of the names in a text, if it can be broken into names; it tells whether it can. */
    private boolean names(String text) {
        Optional<List<Who>> all = NameParser.parse(text);
        if (all.isEmpty()) {
            needles.refuse(secret);
            return false;
        }
        for (Who who : all.get()) {
            if (who instanceof Who.Organisation organisation) {
                organisation(organisation.words());
            } else if (who instanceof Who.Person person) {
                names.person(person);
            }
        }
        return true;
    }

    private void organisation(List<String> words) {
        wholePhrase(String.join(" ", words));
        names.organisation(words);
    }

    private void eMail(String address) {
        add(address, true, spot -> true);
        for (String at : List.of("@", " at ", " arroba ")) {
            add(address.replace("@", at), false, spot -> true);
            add(address.replace("@", at).replace(".", " dot "), false, spot -> true);
        }
    }

    /** A thing, place, code or day: as it is written, the pieces between its commas, and the sums in it. */
    private void thing(String text, boolean money) {
        // A bare sum is digits like any others; only beside a sign or word of money does it tell what was paid.
        if (!text.matches("[\\d.,' \u00A0\\p{Sc}]+") || !money) {
            wholePhrase(text);
        }
        Arrays.stream(text.split("[,;/|]")).map(String::strip)
                .filter(part -> !part.equals(text) && part.length() > 2)
                .filter(part -> LETTER.matcher(part).find() && part.contains(" "))
                .forEach(part -> add(part, false, Spot::isWhole));
        // A day is no sum of money, and its year alone is nobody's secret.
        if (!DAY.matcher(text.strip()).matches()) {
            sums.read(text, money);
        }
    }

    /** The places of an address that are one word, as a town's name is; the author is asked about an ordinary word. */
    private void places(String text) {
        for (String part : text.split("[,;/|]")) {
            String letters = Folded.letters(part);
            boolean isPlace = letters.length() > 2 && !DIGIT.matcher(part).find() && !BLANK.matcher(part.strip()).find();
            if (isPlace && !part.strip().equals(text)) {
                needles.put(secret, letters, false, new NameEvidence(List.of(), needles.isLookedForAlone(secret, letters, true), 1));
            }
        }
    }

    private void wholePhrase(String text) {
        String letters = Folded.letters(text);
        boolean oneWord = !BLANK.matcher(text.strip()).find() && !DIGIT.matcher(letters).find();
        if (oneWord && !NAMING.contains(secret.field()) && NameWords.isOrdinary(letters)
                && !needles.isLookedForAlone(secret, letters, true)) {
            return;
        }
        boolean telling = DIGIT.matcher(text).find() || text.strip().split("\\s+").length > 2;
        boolean day = DAY.matcher(text).matches();
        boolean whole = telling && !day && letters.length() >= Needle.LONG_ENOUGH && !secret.field().equals(Confidential.PEOPLE);
        add(text, whole, letters.length() < Needle.LONG_ENOUGH || oneWord ? Spot::isWhole : spot -> true);
    }

    private void add(String text, boolean whole, Needle.Evidence evidence) {
        needles.put(secret, Folded.letters(text), whole, evidence);
    }
}
