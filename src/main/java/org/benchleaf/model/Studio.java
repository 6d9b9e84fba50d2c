package org.benchleaf.model;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * Who publishes, and what they work with.
 *
 * @param name of the studio
 * @param about one or two sentences for the site
 * @param does what it does, a line each, for those who do not know it
 * @param people who works there, a line each, as they wish to be named in public
 * @param contact how it can be reached, a line each
 * @param web address of the site on the web; empty if it has none
 * @param licence of what the site says beside its cases, as its SPDX identifier; empty if none is stated
 * @param demo whether everything is invented, which the site then says
 * @param languages BCP 47 tags, the first one the site's own
 * @param days on which the studio works
 * @param opens when work begins
 * @param closes when work ends
 * @param roomVolume of the room in which solvents are used; empty, like the two after it, if nobody recorded it
 * @param airChanges of that room
 * @param temperature of that room
 * @param trays inner sizes
 * @param glassware what measures volumes
 * @param balances what measures masses
 * @param publishing where its sheets stand
 * @param takeAlong what of a case can be taken away from the site
 * @param fonts in which its pages are shown
 * @param emergency what to do and whom to call, in the studio's own words
 * @param waste how waste is handled, in the studio's own words
 */
public record Studio(String name, String about, List<String> does, List<String> people, List<String> contact,
        Optional<String> web, Optional<String> licence, boolean demo, List<String> languages, Set<DayOfWeek> days,
        LocalTime opens, LocalTime closes, Optional<Quantity> roomVolume, Optional<Quantity> airChanges,
        Optional<Quantity> temperature,
        List<Tray> trays, List<Vessel> glassware, List<Balance> balances, Publishing publishing,
        Set<TakeAlong> takeAlong, Fonts fonts, String emergency, String waste, Place place) {

    public Studio {
        does = List.copyOf(does);
        people = List.copyOf(people);
        contact = List.copyOf(contact);
        languages = List.copyOf(languages);
        days = Set.copyOf(days);
        trays = List.copyOf(trays);
        glassware = List.copyOf(glassware);
        balances = List.copyOf(balances);
        takeAlong = Set.copyOf(takeAlong);
    }

    /** The site's own language; English where none is stated. */
    public String language() {
        return languages.isEmpty() ? "en" : languages.get(0);
    }

    /** Where step and preparation sheets stand. */
    public enum Publishing {
        /** With everything else, where anybody can read them. */
        ONE_SITE,
        /** In a training site of their own. */
        APART;

        /** The words in the studio's file. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /** A form in which pages can be taken away from the site. */
    public enum TakeAlong {
        /** Each page as one file that needs no other. */
        ONE_FILE,
        /** Each sheet that is worked from, laid out on paper. */
        PDF,
        /** A case, and all cases, as a book. */
        EPUB,
        /** A case, and the whole site, as a packed folder. */
        ZIP,
        /** The whole site, kept on a device by its browser. */
        INSTALLED;

        /** The words in the studio's file. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /** In which letters pages are shown. */
    public enum Fonts {
        /** In those that the site brings along. */
        OF_THE_SITE,
        /** In those that the reader's device has. */
        OF_THE_DEVICE;

        /** The words in the studio's file. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /** A tray, measured inside. */
    public record Tray(String id, Quantity height, Quantity width, Quantity depth) {
    }

    /**
     * A vessel that measures.
     *
     * @param kind such as {@code measuring cylinder}, {@code graduated pipette}, {@code volumetric flask}
     * @param volume nominal
     * @param grade accuracy class
     * @param tolerance of the full volume; empty if the standard's is taken
     */
    public record Vessel(String kind, Quantity volume, String grade, Optional<Quantity> tolerance) {
    }

    /** A balance: the most it carries and its smallest step. */
    public record Balance(String id, Quantity most, Quantity step) {
    }
}
