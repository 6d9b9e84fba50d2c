package org.benchleaf.model;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.Holes;
import org.benchleaf.quantity.Quantity;

/**
 * The tables of hazards and care that come with the program, with the rows that a studio has added or replaced.
 *
 * @param substances by key
 * @param statements hazard and precautionary statements, by code
 * @param pictograms by code
 * @param equipment protective equipment, by code
 * @param rules how a mixture takes over a class, in the order of asking
 * @param cautions what to say and wear at which step
 * @param waste kinds of waste, the first that fits counts
 * @param firstAid what to do, by statement
 * @param labels sizes of labels, by growing bottle
 * @param claims words that promise too much
 * @param incompatible what must not meet
 * @param access who may do what with it
 * @param acute ways in for acute toxicity
 * @param precedence what a label leaves out, by H code
 * @param wordings sentences about hazards with holes, by key
 * @param limits on which the rules for hazards rest
 * @param publicCare what is told to readers outside the trade
 * @param things words by which the name of a thing tells what it may hold
 * @param compared materials that stand beside others of their kind
 * @param thesaurus identifiers of terms
 * @param layOut how many of each thing are laid out, by what it is in a step
 * @param shapes what things of the bench look like; of the rows that fit, the first counts
 * @param hazardClasses every class that a substance may be given, each with the codes of its statements
 * @param needs what work needs that a case does not name
 * @param notes how work around a class is done
 */
public record Reference(Map<String, Substance> substances, Map<String, Statement> statements,
        Map<String, Pictogram> pictograms, Map<String, Equipment> equipment, List<MixtureRule> rules,
        Map<String, Caution> cautions, Map<String, WasteKind> waste, List<FirstAid> firstAid, List<LabelSize> labels,
        List<ClaimWord> claims, List<Incompatible> incompatible, List<Access> access,
        List<AcuteRoute> acute, Map<String, Precedence> precedence, Map<String, Wording> wordings, HazardLimits limits,
        PublicCare publicCare, ThingWords things, List<ComparedMaterial> compared, Thesaurus thesaurus,
        Map<String, LayOutRow> layOut, List<ThingShape> shapes, Map<String, Set<String>> hazardClasses, List<BenchNeed> needs,
        List<BenchNote> notes) {

    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");

    public Reference {
        rules = List.copyOf(rules);
        acute = List.copyOf(acute);
        firstAid = List.copyOf(firstAid);
        labels = List.copyOf(labels);
        claims = List.copyOf(claims);
        incompatible = List.copyOf(incompatible);
        access = List.copyOf(access);
        compared = List.copyOf(compared);
        shapes = List.copyOf(shapes);
        needs = List.copyOf(needs);
        notes = List.copyOf(notes);
    }

    /** The row that someone means who writes a key, a name, a synonym or a CAS number. */
    public Optional<Substance> substanceCalled(String words) {
        return Optional.ofNullable(substances.get(words))
                .or(() -> substances.values().stream().filter(row -> row.isCalled(words)).findFirst());
    }

    /** The keys, names and synonyms of its substances, in small letters. */
    public Stream<String> substanceNames() {
        return substances.values().stream().flatMap(row -> Stream.concat(Stream.of(row.key(), row.name().toLowerCase(Locale.ROOT)),
                row.synonyms().stream())).distinct();
    }

    /**
     * The sentence about hazards with this key, its holes filled; the key where the table lacks it, as only tables made by hand do.
     *
     * @param holes name, value, name, value, …
     */
    public String sentence(String key, Object... holes) {
        return Optional.ofNullable(wordings.get(key)).map(row -> Holes.fill(row.words(), holes)).orElse(key);
    }

    /** Parts of a sentence about hazards one after the other, as the language joins them. */
    public String joined(List<String> parts) {
        return parts.stream().reduce((before, next) -> sentence("parts-joined", "parts", before, "next", next)).orElse("");
    }

    /** The tables with another window of pH for the drain. */
    public Reference draining(HazardLimits.Limit window) {
        return new Reference(substances, statements, pictograms, equipment, rules, cautions, waste, firstAid, labels, claims,
                incompatible, access, acute, precedence, wordings, limits.draining(window), publicCare, things, compared, thesaurus,
                layOut, shapes, hazardClasses, needs, notes);
    }

    /**
     * An official statement.
     *
     * @param code such as {@code H225} or {@code P305+P351+P338}
     * @param official the wording of the law, with … and brackets where it leaves words to whoever labels the bottle
     * @param text the wording to print, with these words filled in
     * @param rank the order of importance on a label, 1 first
     * @param pictogram shown with a hazard statement; empty if none is
     * @param signal word that goes with a hazard statement; empty if none does
     * @param precautions P codes that go with a hazard statement
     * @param source where the wording was read
     * @param edition of the law that the wording belongs to
     */
    public record Statement(String code, String official, String text, int rank, Optional<String> pictogram,
            Optional<String> signal, List<String> precautions, String source, String edition) {

        private static final String OPEN = "…";
        private static final String ORGANS = "organs";

        public Statement {
            precautions = List.copyOf(precautions);
        }

        /**
         * The words to print on one label.
         *
         * @param named what statements name there, by their codes: substances in the open place of the wording, or organs
         */
        public String naming(Map<String, List<String>> named) {
            String words = String.join(", ", named.getOrDefault(code, List.of()));
            if (words.isEmpty()) {
                return text;
            }
            return official.contains(OPEN) ? official.replace(OPEN, words) : text.replace(ORGANS, ORGANS + " (" + words + ")");
        }

        /** The same statement with other words to print. */
        public Statement worded(String words) {
            return new Statement(code, official, words, rank, pictogram, signal, precautions, source, edition);
        }

        /** The same statement in the official wording of another language, in which every place is filled. */
        Statement inWordsOf(String wording) {
            return new Statement(code, wording, wording, rank, pictogram, signal, precautions, source, edition);
        }
    }

    /**
     * A pictogram.
     *
     * @param code such as {@code GHS02}
     * @param name its symbol in words, such as {@code flame}
     * @param meaning what it stands for, in plain words
     * @param svg the drawing, a whole {@code svg} element
     * @param source where its description was read
     */
    public record Pictogram(String code, String name, String meaning, String svg, String source) {
    }

    /**
     * Something to wear or to work under.
     *
     * @param code such as {@code GLV}
     * @param name in words
     * @param kind what it protects: {@code hands}, {@code eyes}, {@code breath}, {@code body}, {@code air}, {@code light}
     * @param strictness within its kind, 1 the least
     * @param also words in the name or the traits of a tool that is such equipment
     * @param words for the sheet
     * @param source where they were read
     */
    public record Equipment(String code, String name, String kind, int strictness, List<String> also, String words,
            String source) {
        public Equipment {
            also = List.copyOf(also);
        }
    }

    /** Codes of the protective equipment that a tool is, by its name and traits; none for anything else. */
    public List<String> worn(Material material) {
        String told = plain(material.name() + " " + String.join(" ", material.traits()));
        return !material.kind().equals("tool") ? List.of() : equipment.values().stream()
                .filter(one -> one.also().stream().anyMatch(word -> told.contains(plain(word)))).map(Equipment::code).toList();
    }

    /** In lower case, with one blank around each word. */
    private static String plain(String text) {
        return " " + NO_WORD.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip() + " ";
    }

    /** Of these codes the strictest of each kind, in the order of the table. */
    public List<String> strictest(Collection<String> codes) {
        Map<String, Equipment> worn = new LinkedHashMap<>();
        equipment.values().stream().filter(one -> codes.contains(one.code())).forEach(one ->
                worn.merge(one.kind(), one, (had, now) -> now.strictness() > had.strictness() ? now : had));
        return equipment.keySet().stream().filter(code -> worn.containsValue(equipment.get(code))).toList();
    }

    /**
     * A caution and when it is due. Every kind of condition that is named must hold; of each, one word is enough.
     *
     * @param key the caution's own key
     * @param level {@code danger} or {@code care}
     * @param name what it is in two to four words; empty where a studio wrote none
     * @param words what can happen
     * @param doFirst what to do about it
     * @param wear codes of protective equipment
     * @param turn of which there is one in a class, so that its stations take turns; empty where several may do it at once
     * @param at the pieces of a class's work that it is for; none where it is for all the work of a step
     * @param when when it is due
     * @param source where it was read
     */
    public record Caution(String key, String level, Optional<String> name, String words, String doFirst,
            List<String> wear, Optional<String> turn, Set<Handling> at, When when, String source) {
        public Caution {
            wear = List.copyOf(wear);
            at = Set.copyOf(at);
        }
    }

    /**
     * When a caution is due.
     *
     * @param steps kinds of step, in words
     * @param parts parts of a step
     * @param statements H codes of what the step uses
     * @param substances keys of substances that the step uses
     * @param traits traits of materials that the step uses
     * @param words looked for in lower case in what the step uses, its media, damages and instruction
     * @param atLeast the least amount of liquid that the step uses
     */
    public record When(Set<String> steps, Set<String> parts, Set<String> statements, Set<String> substances,
            Set<String> traits, Set<String> words, Optional<Quantity> atLeast) {
        public When {
            steps = Set.copyOf(steps);
            parts = Set.copyOf(parts);
            statements = Set.copyOf(statements);
            substances = Set.copyOf(substances);
            traits = Set.copyOf(traits);
            words = Set.copyOf(words);
        }
    }

    /**
     * A kind of waste. Of those that fit, the first of the table counts.
     *
     * @param key the kind's own key, which substances name
     * @param name of the kind, in words
     * @param statements H codes that make it so
     * @param cautions keys of cautions that bring it, whatever is prepared
     * @param phBelow the pH below which it is so; empty if the pH does not decide
     * @param phAbove the pH above which it is so; empty if the pH does not decide
     * @param neverWith keys of the kinds that must not come into the same bottle
     * @param bottle what it is collected in, in words
     * @param words the usual words about it
     * @param drain the words about the drain, for what has every part known and a pH inside the window; empty where
     *     it never goes there
     * @param source where they were read
     */
    public record WasteKind(String key, String name, Set<String> statements, Set<String> cautions,
            Optional<Quantity> phBelow, Optional<Quantity> phAbove, Set<String> neverWith, Optional<String> bottle,
            String words, Optional<String> drain, String source) {
        public WasteKind {
            statements = Set.copyOf(statements);
            cautions = Set.copyOf(cautions);
            neverWith = Set.copyOf(neverWith);
        }

        /** Whether what has these H codes, whose parts become these kinds and which has this pH, becomes such waste. */
        public boolean takes(Collection<String> codes, Collection<String> kinds, Optional<Quantity> ph) {
            boolean byPh = phBelow.isPresent() || phAbove.isPresent();
            if (byPh && ph.isPresent()) {
                return phBelow.filter(limit -> ph.get().low() < limit.value()).isPresent()
                        || phAbove.filter(limit -> ph.get().high() > limit.value()).isPresent();
            }
            return kinds.contains(key) || codes.stream().anyMatch(statements::contains);
        }
    }

    /**
     * A sentence about hazards.
     *
     * @param key the sentence's own key
     * @param words the sentence, with holes such as {@code {substance}}
     * @param remedy what to do about it; empty where nothing is to be done
     */
    public record Wording(String key, String words, Optional<String> remedy) {
    }

    /**
     * Two groups of substances that must not meet.
     *
     * @param key the row's own key
     * @param between the two groups, as {@code reacts as} names them, or keys of substances
     * @param gives what comes of it, in a few words
     * @param words what happens and what to do, for whoever has both before them
     * @param source where it was read
     */
    public record Incompatible(String key, List<String> between, String gives, String words, String source) {
        public Incompatible {
            between = List.copyOf(between);
        }

        /** Whether this stands between two substances, whichever comes first. */
        public boolean parts(Substance one, Substance other) {
            return isOf(between.get(0), one) && isOf(between.get(1), other)
                    || isOf(between.get(1), one) && isOf(between.get(0), other);
        }

        private static boolean isOf(String group, Substance substance) {
            return substance.key().equals(group) || substance.reactsAs().contains(group);
        }
    }

    /** How far a trainee may go. */
    public enum Trainee {
        ALLOWED, SUPERVISED, REFUSED;

        /** As a row writes it. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * Who may do what. Every kind of condition that is named must hold; of each, one is enough.
     *
     * @param key the row's own key
     * @param substances keys of substances
     * @param statements H codes of the mixture
     * @param groups groups of substances, as {@code reacts as} names them
     * @param from the least share by mass of such a substance; empty if any counts
     * @param ph whether it holds by the pH alone counting as corrosive, whatever a test shows
     * @param moreThan the amount of the mixture from which on it counts
     * @param usedBy kinds of step or parts of a step
     * @param trainee how far a trainee may go
     * @param withheld whether the recipe stays off public pages
     * @param instead what the trade uses instead
     * @param why the reason, in words
     * @param source where it was read
     */
    public record Access(String key, Set<String> substances, Set<String> statements, Set<String> groups,
            Optional<Quantity> from, boolean ph, Optional<Quantity> moreThan, Set<String> usedBy, Trainee trainee,
            boolean withheld, Optional<String> instead, String why, String source) {
        public Access {
            substances = Set.copyOf(substances);
            statements = Set.copyOf(statements);
            groups = Set.copyOf(groups);
            usedBy = Set.copyOf(usedBy);
        }
    }

    /**
     * First aid in the usual words.
     *
     * @param where in the eyes, on the skin and so on, as a key of the interface words
     * @param statements H codes that it belongs to
     * @param cautions keys of cautions that it belongs to
     * @param words what to do
     * @param source where they were read
     */
    public record FirstAid(String where, Set<String> statements, Set<String> cautions, String words, String source) {
        public FirstAid {
            statements = Set.copyOf(statements);
            cautions = Set.copyOf(cautions);
        }
    }

    /**
     * How large a label is.
     *
     * @param upTo the largest bottle that it is for
     * @param height of the label, the shorter side
     * @param width of the label, the longer side
     * @param pictogram side of a pictogram's frame
     * @param xHeight height of a small x
     * @param source where the sizes were read
     */
    public record LabelSize(Quantity upTo, Quantity height, Quantity width, Quantity pictogram, Quantity xHeight,
            String source) {
    }

    /**
     * Words that promise too much.
     *
     * @param language BCP 47 tag of the words
     * @param words as they are looked for; letter case does not matter
     * @param kind {@code promise}, {@code safety}, {@code age}, {@code authenticity} or {@code strength}
     * @param unless words which, standing directly before, turn it round, such as {@code not}
     * @param answered words which, anywhere in the same sentence, answer it, such as {@code in our opinion}
     * @param instead what to write
     * @param source where the advice was read
     */
    public record ClaimWord(String language, List<String> words, String kind, List<String> unless,
            List<String> answered, String instead, String source) {
        public ClaimWord {
            words = List.copyOf(words);
            unless = List.copyOf(unless);
            answered = List.copyOf(answered);
        }
    }
}
