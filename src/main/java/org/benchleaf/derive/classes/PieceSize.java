package org.benchleaf.derive.classes;

import java.util.Optional;
import org.benchleaf.model.PrintObject;
import org.benchleaf.quantity.Quantity;

/**
 * The size to which a piece is cut or torn, of a sheet as it is bought, or of what has to be large enough for such a one.
 */
public record PieceSize(Quantity height, Quantity width, Bound bound) {

    /** Whether it is the size itself, that of the largest piece, or the smallest that will do. */
    public enum Bound { EXACTLY, AT_MOST, AT_LEAST }

    /** The size of all pieces; empty where a side of it is not known. */
    static Optional<PieceSize> of(Optional<Quantity> height, Optional<Quantity> width) {
        return height.flatMap(high -> width.map(wide -> new PieceSize(high, wide, Bound.EXACTLY)));
    }

    static PieceSize of(PrintObject.SheetSize size) {
        return new PieceSize(size.height(), size.width(), Bound.EXACTLY);
    }

    /** The same for what has to be at least so large. */
    PieceSize atLeast() {
        return new PieceSize(height, width, Bound.AT_LEAST);
    }
}
