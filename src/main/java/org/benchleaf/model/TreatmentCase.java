package org.benchleaf.model;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.Place;

/**
 * One treatment as its case file states it.
 *
 * @param id the folder's name
 * @param title one line for the public
 * @param summary one or two sentences for the public
 * @param level for whom the step sheet is written
 * @param language BCP 47 tag of the words in the file
 * @param publication who may see what, and since when
 * @param object what was treated
 * @param condition damages, in the order written
 * @param tests spot tests
 * @param proposal what was proposed to the owner and agreed
 * @param instruments what measured
 * @param solutions what is prepared, in the order written
 * @param steps what is done, in the order written
 * @param results what was measured before and after
 * @param readDays when results were read, as far as it is known
 * @param trials treatments tried side by side
 * @param pictures photographs and drawings
 * @param reasons reasons recorded for departing from a rule
 * @param story the Markdown text
 * @param sources the publications on which it rests
 * @param translations the same words in other languages
 * @param workingsPrinted whether the preparation sheet has its workings on paper too
 * @param privateFields which private fields are filled in; their values never leave the reader
 * @param untold in the place of which values stands why there is none
 * @param place the head of the file
 */
public record TreatmentCase(String id, String title, String summary, Optional<Level> level, String language,
        Publication publication, PrintObject object, List<Damage> condition, List<SpotTest> tests, Proposal proposal,
        List<Instrument> instruments, List<Solution> solutions, List<Step> steps, List<Result> results,
        List<ReadDay> readDays, List<Trial> trials,
        List<Picture> pictures, List<Reason> reasons, Story story, CaseSources sources, List<Translation> translations,
        boolean workingsPrinted, Set<String> privateFields, Untold untold, Place place) {

    public TreatmentCase {
        condition = List.copyOf(condition);
        tests = List.copyOf(tests);
        instruments = List.copyOf(instruments);
        solutions = List.copyOf(solutions);
        steps = List.copyOf(steps);
        results = List.copyOf(results);
        readDays = List.copyOf(readDays);
        trials = List.copyOf(trials);
        pictures = List.copyOf(pictures);
        reasons = List.copyOf(reasons);
        translations = List.copyOf(translations);
        privateFields = Set.copyOf(privateFields);
    }

    /** The same case with its words in other languages. */
    public TreatmentCase with(List<Translation> others) {
        return new TreatmentCase(id, title, summary, level, language, publication, object, condition, tests, proposal,
                instruments, solutions, steps, results, readDays, trials, pictures, reasons, story, sources, others, workingsPrinted,
                privateFields, untold, place);
    }

    /** This case with another proposal. */
    public TreatmentCase with(Proposal other) {
        return new TreatmentCase(id, title, summary, level, language, publication, object, condition, tests, other,
                instruments, solutions, steps, results, readDays, trials, pictures, reasons, story, sources, translations, workingsPrinted,
                privateFields, untold, place);
    }

    /** When a result was read, as far as it is known. */
    public List<ReadDay> readDays(Result result) {
        return readDays.stream().filter(day -> day.result().equals(result.place())).toList();
    }

    /** What stands in the place of a value of a part of a step; empty if the value is given, or left out. */
    public Optional<MissingValue> untold(Part part, String key) {
        return steps.stream().filter(step -> step.parts().stream().anyMatch(one -> one == part)).findFirst()
                .flatMap(step -> untold.at("steps", steps.indexOf(step), part.word(), key));
    }

    /** The step of that id. */
    public Optional<Step> step(String id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }

    /** The solution of that id. */
    public Optional<Solution> solution(String id) {
        return solutions.stream().filter(solution -> solution.id().equals(id)).findFirst();
    }

    /** Whether the liquid of a bath is brought to a pH by the meter. */
    public boolean isBroughtToPh(Part.Bath bath) {
        return solution(bath.of()).map(Solution::recipe).filter(Recipe.Adjust.class::isInstance).isPresent();
    }

    /** The ids of the bought things that an id stands for: itself, or what a solution is made of, solutions followed to their end. */
    public Stream<String> matter(String id) {
        return matter(id, new HashSet<>());
    }

    private Stream<String> matter(String id, Set<String> seen) {
        return !seen.add(id) ? Stream.empty() : solution(id).map(solution -> solution.recipe().ingredients().stream()
                .flatMap(ingredient -> matter(ingredient, seen))).orElseGet(() -> Stream.of(id));
    }

    /** The medium of that id. */
    public Optional<Medium> medium(String id) {
        return object.media().stream().filter(medium -> medium.id().equals(id)).findFirst();
    }

    /** The damage of that id. */
    public Optional<Damage> damage(String id) {
        return condition.stream().filter(damage -> damage.id().filter(id::equals).isPresent()).findFirst();
    }
}
