package org.benchleaf.model;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * What a class has in hand: spare, vessels, stock, and how long what is bought takes to come.
 *
 * @param spare what is made and cut over and above
 * @param vessels in which solutions are made
 * @param cans in which waste is collected, by the key of its kind
 * @param stock what stands on the shelf, by the material's id
 * @param supplies how materials are bought, by id
 * @param closed days on which nobody works besides those of the studio
 * @param bench the bench along which the stations work; empty if the class does not say
 * @param room what the room gives, and what things that are shared draw from it
 */
public record ClassStores(Spare spare, List<Vessel> vessels, Map<String, Can> cans, Map<String, Stock> stock,
        Map<String, Supply> supplies, List<LocalDate> closed, Optional<BenchSpace> bench, Room room) {

    /** The word by which the buffers of the meter are bought and laid out, which no material is. */
    public static final String BUFFERS = "buffers";


    public ClassStores {
        vessels = List.copyOf(vessels);
        cans = new LinkedHashMap<>(cans);
        stock = new LinkedHashMap<>(stock);
        supplies = new LinkedHashMap<>(supplies);
        closed = List.copyOf(closed);
    }

    /**
     * Spare by the kind of what is used.
     *
     * @param liquids share of what is drawn from a bottle; nothing is added to a tray that is filled to a mark
     * @param leftInBottle what stays in each station's bottle
     * @param pieces share of what is laid or cut; whole pieces, one at least
     * @param sheets practice sheets over and above
     * @param baths fillings of a tray over and above
     */
    public record Spare(Quantity liquids, Optional<Quantity> leftInBottle, Quantity pieces, int sheets, int baths) {
    }

    /** A vessel in which solutions are made, what it holds and how many there are. */
    public record Vessel(String kind, Quantity holds, int count) {
    }

    /** In what waste of a kind is collected: what one holds when it is full, and where it stands, in the words of the class. */
    public record Can(Quantity holds, Optional<String> stands) {
    }

    /** How long the bench is in all, and how much of it a station takes. */
    public record BenchSpace(Quantity there, Quantity each, Place place) {
    }

    /**
     * What a room gives.
     *
     * @param limits the most that may be drawn of each at once; of what is not named nothing is known
     * @param draws what one of a thing draws while a station has it, by the thing's word
     */
    public record Room(Map<RoomLoad, Quantity> limits, Map<String, Map<RoomLoad, Quantity>> draws, Place place) {
        public Room {
            limits = Map.copyOf(limits);
            draws = Collections.unmodifiableMap(new LinkedHashMap<>(draws));
        }
    }

    /** So much of a material on the shelf. */
    public record Stock(Quantity amount, Place place) {
    }

    /** How a material is bought: what a pack holds, and how many working days it takes to come. */
    public record Supply(Quantity pack, int delivery, Place place) {
    }
}
