package org.benchleaf.derive.hazard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.model.Reference;

/**
 * What a prepared solution, a material or any mixture can do, classified from its composition.
 *
 * <p>Where something is not known, what follows from the known parts is there all the same; it is never the whole.
 *
 * @param of solution or material id
 * @param parts the substances in it by their keys, each with its share by mass
 * @param unknown what is not known, with the reason and the remedy; empty if everything is known
 * @param signal {@code Danger}, {@code Warning} or empty
 * @param pictograms GHS numbers, such as {@code GHS02}
 * @param hazardStatements H codes, most severe first
 * @param named what statements name, by their codes: the sensitising substances of EUH208, the organs of H370 to H373 that are known
 * @param precautions P codes
 * @param grounds how each class came about, in words with its source key; both where two rules disagree
 * @param waste what kind of waste it becomes
 * @param incompatible which of its parts must not meet
 * @param access who may see and use it
 * @param firstAid what first aid belongs to it, keys of the table of first aid
 * @param wear codes of protective equipment for preparing it
 * @param cautions keys of the table of cautions that are due when it is prepared
 * @param subjects ids of what each of these cautions follows from, by its key; a caution that follows from the work names nothing
 */
public record Hazards(String of, Map<String, MassShare> parts, List<Unknown> unknown, Optional<String> signal,
        List<String> pictograms, List<String> hazardStatements, Map<String, List<String>> named,
        List<String> precautions, List<Ground> grounds,
        Waste waste, List<Clash> incompatible, Access access, List<String> firstAid, List<String> wear,
        List<String> cautions, Map<String, List<String>> subjects) {

    public Hazards {
        unknown = List.copyOf(unknown);
        pictograms = List.copyOf(pictograms);
        hazardStatements = List.copyOf(hazardStatements);
        precautions = List.copyOf(precautions);
        grounds = List.copyOf(grounds);
        incompatible = List.copyOf(incompatible);
        firstAid = List.copyOf(firstAid);
        wear = List.copyOf(wear);
        cautions = List.copyOf(cautions);
        subjects = Map.copyOf(subjects);
    }

    /** Whether every part, class and property that the answer rests on is known. */
    public boolean known() {
        return unknown.isEmpty();
    }

    /** Whether everything is known and no class follows from it. */
    public boolean isUnclassified() {
        return known() && hazardStatements.isEmpty();
    }

    /** What the table of access tells of it, where that asks for more than its classes or keeps it from the public. */
    public List<String> care() {
        return access.why().stream().filter(row -> row.withheld() || row.trainee() != Reference.Trainee.ALLOWED)
                .map(Reference.Access::why).distinct().toList();
    }

    /** Why a statement was given, in the order of asking. */
    public List<Ground> groundsOf(String statement) {
        return grounds.stream().filter(ground -> ground.statement().filter(statement::equals).isPresent()).toList();
    }

    /**
     * Something that is not known.
     *
     * @param about what it is about, such as {@code composition}, {@code fire} or {@code ph}
     * @param why the reason, a sentence
     * @param remedy what to do about it, a sentence
     */
    public record Unknown(String about, String why, String remedy) {
    }

    /**
     * Why a class was given or not given.
     *
     * @param of the class; empty where no class of that theme is given
     * @param statement its H code, if the class was given
     * @param because the reason, a sentence
     * @param source where the rule was read
     */
    public record Ground(Optional<String> of, Optional<String> statement, String because, String source) {

        /** The class with its code, or with "not" before it where it was not given; "none" where no class of a theme is given. */
        public String classification() {
            return of.map(name -> statement.map(code -> name + ", " + code).orElse("not " + name)).orElse("none");
        }

        /** Whether it gives its class. */
        public boolean isGiven() {
            return statement.isPresent();
        }
    }

    /**
     * What becomes of it.
     *
     * @param group key of the table of waste; empty if it is not known
     * @param why the reason, a sentence
     * @param drain whether the words about the drain may be printed: every part known, no class, weak, the pH inside the window
     */
    public record Waste(Optional<String> group, String why, boolean drain) {
    }

    /**
     * Two parts that must not meet.
     *
     * @param one key of the first substance
     * @param with key of the second
     * @param gives what comes of it, in a few words
     * @param why what happens and what to do
     * @param source where it was read
     */
    public record Clash(String one, String with, String gives, String why, String source) {
    }

    /**
     * Who may see and use it.
     *
     * @param trainee how far a trainee may go
     * @param withheld whether its recipe stays off public pages
     * @param why the rows of the table of access that say so
     */
    public record Access(Reference.Trainee trainee, boolean withheld, List<Reference.Access> why) {
        public Access {
            why = List.copyOf(why);
        }
    }
}
