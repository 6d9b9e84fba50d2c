package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Confidential;

/** Makes what is looked for from the private values of one case. */
final class FactReader {

    static final String ORDINARY_WORDS = "ordinary words";
    static final String ALWAYS_NAMES = "always names";
    /** Fields that name people; free text there may hide a name. */
    private static final Set<String> NAMING = Set.of("owner", "former owner", "lender", "contact", "insurer", "agent",
            "provenance", Confidential.PEOPLE);
    private static final Set<String> NOT_LOOKED_FOR = Set.of("title", "year", "how", "from", "until");
    private static final Pattern E_MAIL = Pattern.compile("[\\p{L}\\d._%+-]{1,64}@[\\p{L}\\d.-]{1,250}");
    private static final Pattern TELEPHONE = Pattern.compile("(?<![\\p{L}\\d])(?:\\+|00)?\\(?\\d[\\d ()/.\\u00A0-]{5,24}\\d(?!\\p{L})");
    private static final Pattern POSTCODE = Pattern.compile("\\b[A-Z]{1,2}\\d[A-Z\\d]? ?\\d[A-Z]{2}\\b");
    private static final int FEWEST_TELEPHONE_DIGITS = 7;

    private final String caseId;
    private final Set<String> ordinary = new LinkedHashSet<>();
    private final Set<String> always = new LinkedHashSet<>();
    private final Messages messages = new Messages();
    private final List<Needle> needles = new ArrayList<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    private FactReader(String caseId) {
        this.caseId = caseId;
    }

    /**
     * What is looked for.
     *
     * @param needles folded spellings
     * @param texts whole values by the field they stand in, looked for in base64 and UTF-16
     * @param messages what the author has to answer or to write otherwise
     */
    record Facts(List<Needle> needles, Map<String, String> texts, Messages messages) {
    }

    static Facts read(String caseId, Confidential confidential) {
        FactReader reader = new FactReader(caseId);
        confidential.secrets().forEach(reader::answer);
        confidential.secrets().forEach(reader::read);
        return new Facts(List.copyOf(reader.needles), reader.texts, reader.messages);
    }

    private void answer(Confidential.Secret secret) {
        String word = secret.parts().getOrDefault("word", secret.parts().getOrDefault("", ""));
        if (secret.field().equals(ORDINARY_WORDS)) {
            ordinary.add(Folded.letters(word));
        } else if (secret.field().equals(ALWAYS_NAMES)) {
            always.add(Folded.letters(word));
        }
    }

    private void read(Confidential.Secret secret) {
        if (secret.field().equals(ORDINARY_WORDS) || secret.field().equals(ALWAYS_NAMES)) {
            return;
        }
        Map<String, String> parts = secret.parts();
        if (parts.containsKey("family")) {
            person(secret, NameParser.person(NameParser.words(parts.getOrDefault("given", "")),
                    NameParser.words(parts.get("family"))));
            texts.put((parts.getOrDefault("given", "") + " " + parts.get("family")).strip(), secret.field());
        }
        parts.forEach((key, text) -> {
            if (!NOT_LOOKED_FOR.contains(key) && !key.equals("family") && !key.equals("given")) {
                part(secret, key, text.strip());
            }
        });
    }

    private void part(Confidential.Secret secret, String key, String text) {
        texts.put(text, secret.field());
        boolean isNaming = key.isEmpty() && NAMING.contains(secret.field());
        switch (key.isEmpty() ? secret.field() : key) {
            case "organisation" -> organisation(secret, NameParser.words(text));
            case "telephone" -> telephone(secret, text);
            case "e-mail" -> eMail(secret, text);
            case "amount", "value" -> thing(secret, text, true);
            case "number" -> number(secret, text);
            case "person" -> names(secret, text, text);
            default -> {
                if (isNaming) {
                    naming(secret, text);
                } else {
                    thing(secret, text, false);
                }
            }
        }
    }

    /** A plain text where people are named: its numbers and addresses are taken out, and names must be left. */
    private void naming(Confidential.Secret secret, String text) {
        wholePhrase(secret, text);
        numbers(secret, text, false);
        String left = text;
        for (Matcher mail = E_MAIL.matcher(text); mail.find();) {
            eMail(secret, mail.group());
            left = left.replace(mail.group(), " ; ");
        }
        for (Matcher number = TELEPHONE.matcher(text); number.find();) {
            if (number.group().chars().filter(Character::isDigit).count() >= FEWEST_TELEPHONE_DIGITS) {
                telephone(secret, number.group());
                left = left.replace(number.group(), " ; ");
            }
        }
        for (Matcher code = POSTCODE.matcher(text); code.find();) {
            add(secret, code.group(), false, Spot::isWhole);
            left = left.replace(code.group(), " ; ");
        }
        if (secret.field().equals("provenance")) {
            left = NameWords.PROVENANCE_LINK.matcher(left).replaceAll(" ; ");
        }
        for (String segment : left.split("[;\\n|()]")) {
            String bare = segment.replaceAll("^[\\s,.:–—-]+|[\\s,:–—-]+$", "");
            if (!bare.isEmpty() && !isCode(bare)) {
                names(secret, bare, text);
            } else if (isCode(bare)) {
                add(secret, bare, false, Spot::isWhole);
            }
        }
    }

    /** A single word of letters and digits, such as a number of an agent's list. */
    private static boolean isCode(String text) {
        return text.matches("[\\p{Lu}\\d./-]*\\d[\\p{Lu}\\d./-]*");
    }

    private void names(Confidential.Secret secret, String names, String whole) {
        Optional<List<Who>> all = NameParser.parse(names);
        if (all.isEmpty()) {
            messages.add(LeakMessages.NOT_NAMES.at(secret.place(), "field", secret.field()));
            wholePhrase(secret, whole);
            return;
        }
        for (Who who : all.get()) {
            if (who instanceof Who.Person person) {
                person(secret, person);
            } else if (who instanceof Who.Organisation organisation) {
                organisation(secret, organisation.words());
            }
        }
    }

    private void person(Confidential.Secret secret, Who.Person person) {
        List<String> given = person.given().stream().map(Folded::letters).filter(name -> !name.isEmpty()).toList();
        String family = stem(String.join(" ", person.family()));
        boolean others = !secret.field().equals(Confidential.PEOPLE);
        family(secret, given, family, person.family().size(), isLookedForAlone(secret, family, given.isEmpty()), false);
        for (String half : String.join(" ", person.family()).split("[\\s‐‑-]+")) {
            String letters = stem(half);
            if (letters.length() > 2 && !letters.equals(family)) {
                boolean alone = letters.length() >= Needle.LONG_ENOUGH && !NameWords.isOrdinary(letters);
                family(secret, given, letters, 1, alone, false);
            }
        }
        given.stream().skip(1).filter(name -> name.length() > 2).forEach(middle ->
                family(secret, given.subList(0, 1), middle, 1, false, false));
        if (!person.particles().isEmpty()) {
            String whole = Folded.letters(String.join("", person.particles())) + family;
            family(secret, given, whole, person.particles().size() + person.family().size(), true, false);
        }
        if (!given.isEmpty()) {
            joined(secret, given, person, others);
        }
    }

    /** Names in either order, also run together as in the name of a file. */
    private void joined(Confidential.Secret secret, List<String> given, Who.Person person, boolean others) {
        String family = Folded.letters(String.join("", person.family()));
        String particles = Folded.letters(String.join("", person.particles()));
        String all = String.join("", given);
        for (String names : new LinkedHashSet<>(List.of(all + family, family + all, given.get(0) + family,
                family + given.get(0), all + particles + family, particles + family + all,
                given.get(0) + particles + family))) {
            if (names.length() > family.length() + 1) {
                boolean isLong = names.length() >= Needle.LONG_ENOUGH;
                put(secret, names, others && isLong, isLong && names.charAt(0) < 0x80
                        ? spot -> true : new NameEvidence(List.of(), true, given.size() + person.family().size() + 1));
            }
        }
    }

    private void family(Confidential.Secret secret, List<String> given, String letters, int words, boolean alone, boolean whole) {
        put(secret, letters, whole, new NameEvidence(given, alone, words));
    }

    /** Whether a name by itself counts; asks the author if it is an ordinary word too and was not answered for. */
    private boolean isLookedForAlone(Confidential.Secret secret, String letters, boolean isSingle) {
        if (always.contains(letters)) {
            return true;
        }
        if (ordinary.contains(letters)) {
            return false;
        }
        if (NameWords.isOrdinary(letters)) {
            messages.add(LeakMessages.ORDINARY_WORD.at(secret.place(), "field", secret.field()));
            return true;
        }
        return letters.length() > 2 || letters.length() == 2 && letters.charAt(0) > 0x2E80 || isSingle && letters.length() > 1;
    }

    /** The part that stays when the name is declined: in Greek and Russian the ending changes. */
    private static String stem(String name) {
        String letters = Folded.letters(name);
        String stem = letters.isEmpty() || !NameEvidence.isInflected(letters.charAt(0)) ? letters
                : letters.replaceFirst("(?:ος|οσ|ησ|ασ|ου|η|α|ο|ии|ыи|ои|ая|яя|а|я|и|ь|о)$", "");
        return stem.length() >= 4 ? stem : letters;
    }

    /** An organisation: its whole name, each two of its own words, and a single own word. */
    private void organisation(Confidential.Secret secret, List<String> words) {
        wholePhrase(secret, String.join(" ", words));
        List<String> own = words.stream().filter(word -> !Folded.letters(word).isEmpty()
                && !NameWords.COMPANIES.contains(Folded.letters(word)) && !NameWords.JOINS.contains(word)
                && !NameWords.PARTICLES.contains(Folded.letters(word))).toList();
        String core = Folded.letters(String.join("", own));
        if (own.size() > 1) {
            put(secret, core, false, new NameEvidence(List.of(), true, own.size() + 2));
            for (int at = 0; at + 1 < own.size(); at++) {
                put(secret, Folded.letters(own.get(at) + own.get(at + 1)), false, new NameEvidence(List.of(), true, 3));
            }
        } else if (!core.isEmpty()) {
            put(secret, core, false, new NameEvidence(List.of(), isLookedForAlone(secret, core, true), 1));
        }
    }

    private void eMail(Confidential.Secret secret, String address) {
        add(secret, address, true, spot -> true);
        add(secret, address.replace("@", " at ").replace(".", " dot "), false, spot -> true);
    }

    private void telephone(Confidential.Secret secret, String written) {
        String national = national(written);
        if (national.length() >= FEWEST_TELEPHONE_DIGITS - 1) {
            put(secret, national, true, NumberEvidence.TELEPHONE);
        }
    }

    /** The digits of the national number without its trunk 0: ITU-T E.164 has codes of countries of one to three digits. */
    private static String national(String written) {
        String plain = written.strip();
        String digits = Folded.letters(plain.replace("(0)", "")).replaceAll("\\D", "");
        if (plain.startsWith("+") || plain.startsWith("00")) {
            digits = digits.replaceFirst("^00", "");
            boolean two = digits.matches("(?:2[07]|3[0-469]|4[013-9]|5[1-8]|6[0-6]|8[1246]|9[0-58]).*");
            digits = digits.substring(digits.startsWith("1") || digits.startsWith("7") ? 1 : two ? 2 : Math.min(3, digits.length()));
        }
        return digits.replaceFirst("^0", "");
    }

    private void number(Confidential.Secret secret, String text) {
        String letters = Folded.letters(text);
        String bare = letters.replaceFirst("(?<=\\d)[a-z]{1,2}$", "");
        for (String spelling : new LinkedHashSet<>(List.of(letters, bare))) {
            boolean telling = spelling.length() >= 5 && (spelling.matches(".*\\D.*") || text.matches(".*\\d\\D+\\d.*"));
            put(secret, spelling, spelling.length() >= Needle.LONG_ENOUGH,
                    telling || spelling.matches(".*\\D.*") ? Spot::isWhole : NumberEvidence.NUMBERED);
        }
    }

    /** A thing, place, code or day: as it is written, the pieces between its commas, and the sums in it. */
    private void thing(Confidential.Secret secret, String text, boolean money) {
        if (!text.matches("[\\d.,' \u00A0]+") || !money) {
            wholePhrase(secret, text);
        }
        Arrays.stream(text.split("[,;/|]")).map(String::strip)
                .filter(part -> !part.equals(text) && part.length() > 2)
                .filter(part -> part.matches(".*\\p{L}.*") && part.contains(" "))
                .forEach(part -> add(secret, part, false, Spot::isWhole));
        numbers(secret, text, money);
    }

    private void wholePhrase(Confidential.Secret secret, String text) {
        String letters = Folded.letters(text);
        boolean oneWord = !text.strip().matches(".*\\s.*") && !letters.matches(".*\\d.*");
        if (oneWord && !NAMING.contains(secret.field()) && NameWords.isOrdinary(letters)
                && !isLookedForAlone(secret, letters, true)) {
            return;
        }
        boolean telling = text.matches("(?s).*\\d.*") || text.strip().split("\\s+").length > 2;
        boolean day = text.matches("\\d{4}-\\d{2}-\\d{2}");
        boolean whole = telling && !day && letters.length() >= Needle.LONG_ENOUGH && !secret.field().equals(Confidential.PEOPLE);
        add(secret, text, whole, letters.length() < Needle.LONG_ENOUGH || oneWord ? Spot::isWhole : spot -> true);
    }

    private static final Pattern NUMBER = Pattern.compile("\\d(?:[\\d ,.'’\\u00A0\\u2009\\u202F]*\\d)?");

    /** Sums: of two digits and more where an amount stands, elsewhere of four and more. */
    private void numbers(Confidential.Secret secret, String text, boolean money) {
        boolean amount = money || text.matches("(?s).*[£$€¥₽₹].*")
                || secret.field().toLowerCase(Locale.ROOT).matches(".*(?:value|price|paid|cost|valuation|estimate|insured).*");
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            String whole = number.group().replaceFirst("[.,]00$", "");
            String digits = Folded.letters(whole);
            if (digits.length() >= (amount ? 2 : 4)) {
                put(secret, digits, false, NumberEvidence.MONEY);
            }
        }
    }

    private void add(Confidential.Secret secret, String text, boolean whole, Needle.Evidence evidence) {
        put(secret, Folded.letters(text), whole, evidence);
    }

    private void put(Confidential.Secret secret, String letters, boolean whole, Needle.Evidence evidence) {
        // A value of signs alone, such as a dash for "none", has no letters to look for.
        if (!letters.isEmpty()) {
            needles.add(new Needle(letters, caseId, secret.field(), whole, evidence));
        }
    }
}
