package org.benchleaf.derive.classes;

import java.util.Optional;
import org.benchleaf.model.PrintObject;
import org.benchleaf.quantity.Quantity;

/**
 * The size to which a piece is cut or torn, or of a sheet as it is bought.
 *
 * @param atMost whether it is that of the largest piece
 */
public record PieceSize(Quantity height, Quantity width, boolean atMost) {

    /** The size of all pieces; empty where a side of it is not known. */
    static Optional<PieceSize> of(Optional<Quantity> height, Optional<Quantity> width) {
        return height.flatMap(high -> width.map(wide -> new PieceSize(high, wide, false)));
    }

    static PieceSize of(PrintObject.SheetSize size) {
        return new PieceSize(size.height(), size.width(), false);
    }
}
