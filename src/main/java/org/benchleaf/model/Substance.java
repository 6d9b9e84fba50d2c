package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.quantity.Quantity;

/**
 * One row of the table of substances: what it is, how it is classified and what limits apply to it.
 *
 * @param key how materials refer to it, such as {@code calcium hydroxide}
 * @param name in words
 * @param synonyms other names that people write
 * @param cas registry number; empty for things that are no single substance
 * @param form {@code liquid}, {@code solid}, {@code solution}, {@code gas} or {@code dust}
 * @param molarMass mass of one mole
 * @param density of the liquid, at 20 °C unless it says otherwise
 * @param vapourPressure at 20 °C unless it says otherwise
 * @param viscosity kinematic, at 40 °C, for the danger of swallowing
 * @param hazards whether its hazards are known, shown to be none, or not known
 * @param because what shows that there are none, or why they are not known
 * @param classes how the substance is classified; empty unless its hazards are known
 * @param notes of the law beside its entry, such as {@code P} or {@code 11}
 * @param benzene what of it the supplier states, for note P
 * @param toxicityUnknown ways in of which no acute toxicity is known: {@code mouth}, {@code skin}, {@code breath}
 * @param suppliedInWater whether it is only known dissolved in water
 * @param fire what is known of its fire
 * @param exposure limits for the air of a workplace
 * @param saturated its saturated solution in water
 * @param acidity what it does to the pH of water
 * @param lowReserve a test that shows that its solutions do not burn as their pH suggests
 * @param waste the kind of waste it becomes, a key of the table of waste
 * @param reactsAs groups of the table of what must not meet
 * @param gloves what gloves hold it off
 * @param note what the reader must know beside it
 * @param source where the row comes from
 * @param edition of that source
 */
public record Substance(String key, String name, List<String> synonyms, Optional<String> cas, String form,
        Optional<Quantity> molarMass, Optional<Measured> density, Optional<Measured> vapourPressure,
        Optional<Measured> viscosity, Answer hazards, Optional<String> because, List<HazardClass> classes,
        Set<String> notes, Optional<Quantity> benzene, Set<String> toxicityUnknown, boolean suppliedInWater,
        Optional<Fire> fire,
        List<ExposureLimit> exposure, Optional<Saturated> saturated, Optional<Acidity> acidity, Optional<LowReserve> lowReserve,
        Optional<String> waste,
        Set<String> reactsAs, Optional<Gloves> gloves, Optional<String> note, String source, String edition) {

    /** A capital that only begins a word; "EDTA", "C9" and the "(I)" of mercury(I) keep theirs. */
    private static final Pattern BEGINS_WORD = Pattern.compile("(?<!\\p{L})\\p{Lu}(?=\\p{Ll})");
    private static final Pattern CATEGORY = Pattern.compile(" (\\d[A-C]?)(?= |$)");

    public Substance {
        synonyms = List.copyOf(synonyms);
        classes = List.copyOf(classes);
        notes = Set.copyOf(notes);
        toxicityUnknown = Set.copyOf(toxicityUnknown);
        exposure = List.copyOf(exposure);
        reactsAs = Set.copyOf(reactsAs);
    }

    /** Its name as it stands within a sentence: "ethanol", "2-phenylphenol", "EDTA disodium salt", "mercury(I) chloride". */
    public String within() {
        return BEGINS_WORD.matcher(name).replaceAll(capital -> capital.group().toLowerCase(Locale.ROOT));
    }

    /** Whether someone who writes this means the row: its key, name, a synonym or its CAS number, in any letter case. */
    boolean isCalled(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        return Stream.of(Stream.of(key, name), synonyms.stream(), cas.stream()).flatMap(one -> one)
                .anyMatch(one -> one.toLowerCase(Locale.ROOT).equals(wanted));
    }

    /** The same row in other words; whatever finds it by its name now still does. */
    Substance told(String words, Optional<String> why, List<ExposureLimit> limits, Optional<Gloves> held, Optional<String> beside,
            String of) {
        return new Substance(key, words, Stream.concat(synonyms.stream(), Stream.of(name)).distinct().toList(), cas, form, molarMass,
                density, vapourPressure, viscosity, hazards, why, classes,
                notes, benzene, toxicityUnknown, suppliedInWater, fire, limits, saturated, acidity, lowReserve, waste, reactsAs, held,
                beside, source, of);
    }

    /** What is known of something: it is there, it was shown not to be there, or nobody has said. */
    public enum Answer {
        KNOWN, NONE, UNKNOWN;

        /** As a row writes it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A measured property.
     *
     * @param value with its unit
     * @param at the temperature; empty where the usual one is meant
     * @param source where it was read
     */
    public record Measured(Quantity value, Optional<Quantity> at, String source) {
    }

    /**
     * One class of hazard.
     *
     * @param name such as {@code Skin Irrit. 2}; the way in or the organ in brackets
     * @param statement its H code
     * @param from the share by mass from which a mixture is in the class; empty if the general limits apply
     * @param below the share by mass from which another class takes over
     * @param estimate the acute toxicity estimate; empty if the one of the category is taken
     * @param factor how often it counts for life in water (M factor); empty if not stated
     * @param minimum whether the law gives it as the least class, so that a supplier may be stricter
     * @param organs what it damages, for damage to organs; empty where that is not known
     * @param source where the class comes from
     */
    public record HazardClass(String name, String statement, Optional<Quantity> from, Optional<Quantity> below,
            Optional<Quantity> estimate, Optional<Double> factor, boolean minimum, Optional<Organs> organs, String source) {

        /** Whether it is the same kind of class and as grave or graver: a category of a lower number, or the same. */
        public boolean isAtLeast(HazardClass other) {
            return kind().equals(other.kind()) && category().compareTo(other.category()) <= 0;
        }

        private String kind() {
            return CATEGORY.matcher(name).replaceFirst("");
        }

        private String category() {
            Matcher category = CATEGORY.matcher(name);
            return category.find() ? category.group(1) : "";
        }
    }

    /** The organs that a substance damages, in words, and where that was read. */
    public record Organs(List<String> words, String source) {
        public Organs {
            words = List.copyOf(words);
        }
    }

    /**
     * Fire; each of it may be missing.
     *
     * @param flashPoint of the pure liquid, the lowest published
     * @param boilingPoint of the pure liquid
     * @param lowerLimit of flammability in air; a range where published values differ
     * @param upperLimit of flammability in air
     * @param source where they come from
     */
    public record Fire(Optional<Quantity> flashPoint, Optional<Quantity> boilingPoint, Optional<Quantity> lowerLimit,
            Optional<Quantity> upperLimit, String source) {
    }

    /**
     * A limit for the air of a workplace.
     *
     * @param kind such as {@code 8 h average}
     * @param limit in ppm or mg/m³
     * @param where the country and list it belongs to
     * @param source where it was read
     */
    public record ExposureLimit(String kind, Quantity limit, String where, String source) {
    }

    /** The saturated solution in water: how much is dissolved by mass, and its pH. */
    public record Saturated(Quantity share, Quantity ph, String source) {
    }

    /**
     * What the substance does to the pH of water, as far as an equilibrium needs it.
     *
     * @param is what it is
     * @param per how many hydroxide ions or protons a strong one gives; how many sodium, ammonium or like ions a salt holds
     * @param acids how many molecules of the acid a salt holds
     * @param constants pK of each proton of the acid, or of the acid that belongs to the base or salt, the first given off first
     * @param base pK of the acid that belongs to the base of an ammonium salt; empty for all others
     * @param source where they were read
     */
    public record Acidity(Kind is, int per, int acids, List<Double> constants, List<Double> base, String source) {

        public Acidity {
            constants = List.copyOf(constants);
            base = List.copyOf(base);
        }

        /** What a substance is to the pH of water. */
        public enum Kind {
            STRONG_BASE, STRONG_ACID, WEAK_BASE, WEAK_ACID, SALT,
            /** The salt of a weak base. */
            AMMONIUM_SALT,
            /** It changes nothing. */
            NEUTRAL,
            /** No solution of it is strongly acid or alkaline, but its pH cannot be worked out. */
            NOT_EXTREME,
            /** Its solutions may have any pH. */
            NOT_KNOWN;

            /** As a row writes it. */
            public String word() {
                return name().toLowerCase(Locale.ROOT).replace('_', ' ');
            }
        }
    }

    /** What gloves hold it off, in words, and where that was read. */
    public record Gloves(String words, String source) {
    }
}
