package org.benchleaf.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.ClaimMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Finding;
import org.benchleaf.model.Library;
import org.benchleaf.model.Permission;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Result;
import org.benchleaf.model.TreatmentCase;

/** Looks in the words of a case for claims that nobody can keep or prove, and says what to write instead. */
final class ClaimChecks {

    /** The kind of claim that tells a strength without a number and its unit. */
    private static final String IN_WORDS = "strength";
    private static final Pattern YEAR = Pattern.compile(
            "^.{0,25}?(\\b(?:1\\d{3}|20\\d\\d)\\b(?!\\h*(?:[cm]?m|m?[Lgl]|kg|%|°|ppm)(?!\\p{L}))|century|centuries|siglo)",
            Pattern.DOTALL);
    private static final Pattern STRIP = Pattern.compile("(?i)\\bstrips?\\b|\\btest paper|\\bindicator paper|\\btira");
    private static final Pattern FINE_PH = Pattern.compile("(?i)\\bpH\\h*(?:of\\h*|was\\h*|is\\h*|read\\h*)?(\\d+[.,]\\d{2,})");

    /** Made once for all cases: each case is looked through for the same words, and making a pattern takes longer. */
    private static final Map<List<String>, Sought> SOUGHT = new ConcurrentHashMap<>();
    /** Far more claims than any studio words; a studio's own claims that are edited while a case is previewed add up. */
    private static final int MOST_SOUGHT = 500;

    private final TreatmentCase source;
    private final Reference reference;
    private final Messages messages;
    private final List<Finding> answered = new ArrayList<>();

    /**
     * The ways to word a claim, made ready to be looked for.
     *
     * @param words of each way, in small letters
     */
    private record Sought(Pattern pattern, List<List<String>> words) {

        static Sought of(List<String> ways) {
            return new Sought(ClaimChecks.pattern(ways), ways.stream().map(way -> List.of(small(way).split(" "))).toList());
        }

        /** Whether all words of one way stand somewhere: only then need the pattern, a hundred times slower, look for it. */
        boolean mayStandIn(String smallText) {
            return words.stream().anyMatch(way -> way.stream().allMatch(smallText::contains));
        }
    }

    private ClaimChecks(TreatmentCase source, Reference reference, Messages messages) {
        this.source = source;
        this.reference = reference;
        this.messages = messages;
    }

    /** Tells what claims too much, and returns what a recorded reason answers. */
    static List<Finding> review(TreatmentCase source, Library library, Messages messages) {
        ClaimChecks checks = new ClaimChecks(source, library.reference(), messages);
        List<Wording> wordings = Wordings.of(source);
        wordings.forEach(wording -> checks.check(wording, claim -> !claim.kind().equals(IN_WORDS)));
        wordings.forEach(checks::stripInWords);
        if (checks.keepsStrengthsIn()) {
            Stream.of(wordings.stream().filter(Wording::onPublicPage), Wordings.ofFacts(source).stream(),
                    GlossaryWords.naming(source, library.glossary())).flatMap(words -> words).forEach(checks::strength);
        }
        source.results().forEach(checks::strip);
        return checks.answered.stream().distinct().toList();
    }

    /** Whether there is, or will be, a public page that leaves strengths out. */
    private boolean keepsStrengthsIn() {
        return !source.publication().strengthsForPublic() && (source.publication().isAllowedBySource()
                || source.publication().permissions().stream().anyMatch(permission ->
                        permission.uses().contains(Permission.Use.TEXT) && permission.withdrawnOn().isEmpty()));
    }

    private void strength(Wording wording) {
        StrengthWords.in(wording.text(), reference).forEach(words ->
                tell("strengths-for-public", ClaimMessages.STRENGTH, words, "strength", wording, ""));
        check(wording, claim -> claim.kind().equals(IN_WORDS));
    }

    private void check(Wording wording, Predicate<Reference.ClaimWord> asked) {
        String small = small(wording.text());
        reference.claims().stream().filter(asked).filter(claim -> speaks(wording.language(), claim.language())).forEach(claim -> {
            if (SOUGHT.size() > MOST_SOUGHT) {
                SOUGHT.clear();
            }
            Sought sought = SOUGHT.computeIfAbsent(claim.words(), Sought::of);
            if (!sought.mayStandIn(small)) {
                return;
            }
            Matcher found = sought.pattern().matcher(wording.text());
            while (found.find()) {
                if (!isTurnedRound(claim, wording.text(), found.start()) && !isAnswered(claim, wording.text(), found)) {
                    tell(claim, found.group(), wording);
                }
            }
        });
    }

    /** In small letters by way of capitals, so that letters which differ in either alone are the same. */
    private static String small(String text) {
        return text.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    private static boolean speaks(String language, String claimLanguage) {
        return language.equals(claimLanguage) || language.startsWith(claimLanguage + "-");
    }

    private static Pattern pattern(List<String> claims) {
        return Pattern.compile(claims.stream().map(words -> Pattern.quote(words).replace(" ", "\\E[\\s\\u00A0-]+\\Q"))
                .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}-])(?:", ")(?![\\p{L}\\p{N}]|-\\p{L})")),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Whether words such as "not" stand directly before the claim. */
    private static boolean isTurnedRound(Reference.ClaimWord claim, String text, int start) {
        String before = text.substring(Math.max(0, start - 40), start).toLowerCase(Locale.ROOT).stripTrailing();
        return claim.unless().stream().anyMatch(word -> endsWith(before, word));
    }

    private static boolean endsWith(String before, String word) {
        return before.matches("(?s).*(^|[^\\p{L}])" + Pattern.quote(word) + "( (be|been|a|an|the|quite|as|es|está|una?|el|la))?$");
    }

    private boolean isAnswered(Reference.ClaimWord claim, String text, Matcher found) {
        if (claim.kind().equals("age") && !YEAR.matcher(text.substring(found.end())).find()) {
            return true;
        }
        boolean evident = source.object().madeEvidence().isPresent() || source.object().opinion();
        return claim.kind().equals("age") && evident || claim.answered().stream().anyMatch(
                sentence(text, found.start()).toLowerCase(Locale.ROOT)::contains);
    }

    private static String sentence(String text, int at) {
        int from = at;
        while (from > 0 && !endsAt(text, from - 1)) {
            from--;
        }
        int to = at;
        while (to < text.length() && !endsAt(text, to)) {
            to++;
        }
        return text.substring(from, to);
    }

    /** A stop ends a sentence where a space follows; within a number it does not. */
    private static boolean endsAt(String text, int at) {
        return ".!?".indexOf(text.charAt(at)) >= 0
                && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
    }

    private void tell(Reference.ClaimWord claim, String words, Wording wording) {
        if (claim.kind().equals(IN_WORDS)) {
            tell("strengths-for-public", ClaimMessages.STRENGTH, words, "strength", wording, "");
            return;
        }
        ClaimMessages message = switch (claim.kind()) {
            case "promise" -> ClaimMessages.PROMISE;
            case "safety" -> ClaimMessages.SAFETY;
            case "age" -> ClaimMessages.AGE;
            default -> ClaimMessages.AUTHENTICITY;
        };
        String rule = message == ClaimMessages.PROMISE || message == ClaimMessages.SAFETY ? "no-promises"
                : "dating-has-evidence";
        tell(rule, message, words, "claim", wording, claim.instead());
    }

    private void tell(String rule, ClaimMessages message, String words, String hole, Wording wording, String instead) {
        String shown = words.replaceAll("[\\s\\h]+", " ");
        Optional<Reason> reason = source.reasons().stream().filter(one -> one.rule().equals(rule)).findFirst();
        if (reason.isPresent()) {
            answered.add(new Finding(rule, Optional.empty(), wording.where() + " says '" + shown + "'.",
                    Optional.of(reason.get().why()), false, Finding.Standing.ANSWERED));
        } else {
            messages.add(message.at(written(words, wording.place()), "where", wording.where(), hole, shown,
                    "instead", instead));
        }
    }

    /** Where the words stand in the file: the first line from the known place on that holds them. */
    private static Place written(String words, Place place) {
        Pattern pattern = Pattern.compile("(?<![\\p{L}])" + Pattern.quote(words), Pattern.CASE_INSENSITIVE
                | Pattern.UNICODE_CASE);
        for (int line = Math.max(1, place.line()); line <= place.text().lineCount(); line++) {
            Matcher found = pattern.matcher(place.text().line(line));
            if (found.find()) {
                return new Place(place.text(), line, found.start() + 1, words.length(), "");
            }
        }
        return place;
    }

    private void stripInWords(Wording wording) {
        Matcher fine = FINE_PH.matcher(wording.text());
        while (fine.find()) {
            if (STRIP.matcher(sentence(wording.text(), fine.start())).find()) {
                messages.add(ClaimMessages.STRIP_WORDS_TOO_FINE.at(written(fine.group(), wording.place()),
                        "where", wording.where(), "value", fine.group(1)));
            }
        }
    }

    private void strip(Result result) {
        if (!(result instanceof Result.Readings readings) || !STRIP.matcher(readings.method()).find()) {
            return;
        }
        Optional<Double> fine = Stream.concat(readings.before().stream(), readings.after().stream())
                .filter(value -> Math.abs(value * 10 - Math.rint(value * 10)) > 1e-6).findFirst();
        fine.ifPresent(value -> messages.add(ClaimMessages.STRIP_TOO_FINE.at(readings.place(), "measure",
                readings.measure().word(), "value", value)));
    }
}
