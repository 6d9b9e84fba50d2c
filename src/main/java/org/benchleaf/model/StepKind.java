package org.benchleaf.model;

import java.util.List;
import java.util.Optional;

/** The verbs of the trade: what kind of thing a step does. Rules speak of these. */
public enum StepKind {
    EXAMINATION("examination"),
    TESTING("testing"),
    SAMPLING("sampling"),
    PHOTOGRAPHY("photography"),
    SURFACE_CLEANING("surface cleaning"),
    MOULD_REMOVAL("mould removal"),
    CONSOLIDATION("consolidation"),
    FIXING("fixing"),
    TEMPORARY_BRIDGING("temporary bridging"),
    BACKING_REMOVAL("backing removal"),
    TAPE_REMOVAL("tape removal"),
    POULTICING("poulticing"),
    GEL_CLEANING("gel cleaning"),
    SUCTION("suction"),
    HUMIDIFICATION("humidification"),
    PREWETTING("prewetting"),
    WASHING("washing"),
    LOCAL_WET_TREATMENT("local wet treatment"),
    BLEACHING("bleaching"),
    LIGHT_BLEACHING("light bleaching"),
    CHELATION("chelation"),
    PHYTATE_TREATMENT("phytate treatment"),
    ALKALIZATION("alkalization"),
    CARBONATION("carbonation"),
    RINSING("rinsing"),
    RESIZING("resizing"),
    DRYING("drying"),
    FLATTENING("flattening"),
    MENDING("mending"),
    INFILLING("infilling"),
    LINING("lining"),
    INLAYING("inlaying"),
    LEAF_CASTING("leaf casting"),
    PARING("paring"),
    EQUILIBRATION("equilibration"),
    MEASURING("measuring"),
    AGEING("ageing"),
    HOUSING("housing");

    private final String word;

    StepKind(String word) {
        this.word = word;
    }

    /** The word as written in a case file. */
    public String word() {
        return word;
    }

    /** The kind written with that word. */
    public static Optional<StepKind> of(String word) {
        return List.of(values()).stream().filter(kind -> kind.word.equals(word)).findFirst();
    }
}
