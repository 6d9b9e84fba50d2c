package org.benchleaf.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.message.ClaimMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Result;
import org.benchleaf.model.Story;
import org.benchleaf.model.TreatmentCase;

/** Looks in the words of a case for claims that nobody can keep or prove, and says what to write instead. */
final class ClaimChecks {

    private static final Pattern YEAR = Pattern.compile(
            "^.{0,25}?(\\b1\\d{3}\\b|\\b20\\d\\d\\b|century|centuries|siglo)", Pattern.DOTALL);
    private static final Pattern STRIP = Pattern.compile("(?i)\\bstrips?\\b|\\btest paper|\\bindicator paper|\\btira");

    private final TreatmentCase source;
    private final List<Reference.ClaimWord> claims;
    private final Messages messages;

    /** Words of the case, with where they stand. */
    private record Wording(String where, String text, String language, Place place) {
    }

    private ClaimChecks(TreatmentCase source, Reference reference, Messages messages) {
        this.source = source;
        this.claims = reference.claims();
        this.messages = messages;
    }

    static void review(TreatmentCase source, Reference reference, Messages messages) {
        ClaimChecks checks = new ClaimChecks(source, reference, messages);
        checks.wordings().forEach(checks::check);
        source.results().forEach(checks::strip);
    }

    private List<Wording> wordings() {
        List<Wording> all = new ArrayList<>();
        String language = source.language();
        all.add(new Wording("The title", source.title(), language, source.place()));
        all.add(new Wording("The summary", source.summary(), language, source.place()));
        source.steps().forEach(step -> {
            String words = step.instruction() + ". " + step.see().orElse("") + ". " + step.until().orElse("") + ". "
                    + step.aim().orElse("");
            all.add(new Wording("Step '" + step.id() + "'", words, language, step.place()));
        });
        source.pictures().forEach(picture -> all.add(new Wording("Picture '" + picture.id() + "'",
                picture.alt() + ". " + picture.caption(), language, picture.place())));
        story(source.story(), language, source.place(), all);
        source.translations().forEach(translation -> {
            String tongue = translation.language();
            all.add(new Wording("The title", translation.title(), tongue, translation.place()));
            all.add(new Wording("The summary", translation.summary(), tongue, translation.place()));
            translation.steps().forEach((id, words) -> all.add(new Wording("Step '" + id + "'", words.instruction()
                    + ". " + words.see().orElse("") + ". " + words.until().orElse(""), tongue, translation.place())));
            translation.pictures().forEach((id, words) -> all.add(new Wording("Picture '" + id + "'",
                    words.alt() + ". " + words.caption(), tongue, translation.place())));
            story(translation.story(), tongue, translation.place(), all);
        });
        return all;
    }

    private static void story(Story story, String language, Place place, List<Wording> all) {
        story.sections().forEach(section -> all.add(new Wording("The story", section.heading() + ". "
                + section.html().replaceAll("<[^>]*>", " ").replace("&amp;", "&").replace("&quot;", "\"")
                .replace("&#39;", "'"), language, place)));
    }

    private void check(Wording wording) {
        claims.stream().filter(claim -> speaks(wording.language(), claim.language())).forEach(claim -> {
            Matcher found = pattern(claim).matcher(wording.text());
            while (found.find()) {
                if (!isTurnedRound(claim, wording.text(), found.start()) && !isAnswered(claim, wording.text(), found)) {
                    tell(claim, found.group(), wording);
                }
            }
        });
    }

    private static boolean speaks(String language, String claimLanguage) {
        return language.equals(claimLanguage) || language.startsWith(claimLanguage + "-");
    }

    private static Pattern pattern(Reference.ClaimWord claim) {
        return Pattern.compile(claim.words().stream().map(words -> Pattern.quote(words).replace(" ", "\\E[\\s\\u00A0-]+\\Q"))
                .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}-])(?:", ")(?![\\p{L}\\p{N}])")),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Whether words such as "not" stand directly before the claim. */
    private static boolean isTurnedRound(Reference.ClaimWord claim, String text, int start) {
        String before = text.substring(Math.max(0, start - 40), start).toLowerCase(Locale.ROOT).stripTrailing();
        return claim.unless().stream().anyMatch(word -> before.matches("(?s).*(^|[^\\p{L}])" + Pattern.quote(word)
                + "( (be|been|a|an|the|quite|as|es|está|una?|el|la))?$"));
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
        while (from > 0 && ".!?".indexOf(text.charAt(from - 1)) < 0) {
            from--;
        }
        int to = at;
        while (to < text.length() && ".!?".indexOf(text.charAt(to)) < 0) {
            to++;
        }
        return text.substring(from, to);
    }

    private void tell(Reference.ClaimWord claim, String words, Wording wording) {
        ClaimMessages message = switch (claim.kind()) {
            case "promise" -> ClaimMessages.PROMISE;
            case "safety" -> ClaimMessages.SAFETY;
            case "age" -> ClaimMessages.AGE;
            default -> ClaimMessages.AUTHENTICITY;
        };
        String rule = message == ClaimMessages.PROMISE || message == ClaimMessages.SAFETY ? "no-promises"
                : "dating-has-evidence";
        if (source.reasons().stream().noneMatch(reason -> reason.rule().equals(rule))) {
            String shown = words.replaceAll("\\s+", " ");
            messages.add(message.at(written(words, wording.place()), "where", wording.where(), "claim", shown,
                    "instead", claim.instead()));
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

    private void strip(Result result) {
        if (!(result instanceof Result.Readings readings) || !STRIP.matcher(readings.method()).find()) {
            return;
        }
        Optional<Double> fine = java.util.stream.Stream.concat(readings.before().stream(), readings.after().stream())
                .filter(value -> Math.abs(value * 10 - Math.rint(value * 10)) > 1e-6).findFirst();
        fine.ifPresent(value -> messages.add(ClaimMessages.STRIP_TOO_FINE.at(readings.place(), "measure",
                readings.measure(), "value", value)));
    }
}
