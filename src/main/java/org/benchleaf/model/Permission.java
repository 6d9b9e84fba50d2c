package org.benchleaf.model;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.Place;

/**
 * One written permission.
 *
 * @param uses what it allows
 * @param from in which role the giver gave it, such as {@code owner}; never a name
 * @param on the day it was given
 * @param covers what it covers and in which ways; without a thing every thing, without a way every way
 * @param note what else was agreed, in free words, which no program can keep; empty if nothing
 * @param until the last day on which it holds
 * @param withdrawnOn the day it was taken back
 */
public record Permission(Set<Use> uses, String from, LocalDate on, Set<Covered> covers, String note,
        Optional<LocalDate> until, Optional<LocalDate> withdrawnOn, Place place) {

    /** What a permission can allow. */
    public enum Use {
        /** The treatment itself. */
        TREATMENT,
        /** Taking a sample. */
        SAMPLING,
        /** The sheets for trainees. */
        TEACHING,
        /** The public text. */
        TEXT,
        /** The pictures. */
        PICTURES
    }

    /** What a permission can be narrowed to: things that are made of a case, and ways in which they reach people. */
    public enum Covered {
        CASE_STUDY, STEP_SHEET, PREPARATION_SHEET, RESULTS, PICTURES, DATA,
        /** A site that anybody can read. */
        WEB,
        /** Paper, from any of the sites. */
        PRINT,
        /** A training site, which only those who are taught can read. */
        TEACHING_ON_SITE;

        private static final Set<Covered> WAYS = EnumSet.of(WEB, PRINT, TEACHING_ON_SITE);

        /** The words in the case file. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** What these words name; empty if nothing. */
        public static Optional<Covered> of(String words) {
            return Stream.of(values()).filter(covered -> covered.words().equals(words)).findFirst();
        }

        boolean isWay() {
            return WAYS.contains(this);
        }
    }

    public Permission {
        uses = Set.copyOf(uses);
        covers = Set.copyOf(covers);
    }

    /** Whether it allows a use on a day: from the day it was given to its last day, and before it was withdrawn. */
    public boolean inForce(Use use, LocalDate day) {
        return uses.contains(use) && !day.isBefore(on) && until.map(last -> !day.isAfter(last)).orElse(true)
                && withdrawnOn.map(day::isBefore).orElse(true);
    }

    /** Whether it covers a thing or a way: it was named, or no other of its sort was. */
    public boolean covers(Covered wanted) {
        return covers.contains(wanted) || covers.stream().noneMatch(named -> named.isWay() == wanted.isWay());
    }
}
