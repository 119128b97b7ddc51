package org.bonewright.shelf;

import java.util.List;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.Material;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Plate;

/**
 * Plates of one generic size that are kept.
 *
 * @param family the size; it tells whether screws lock, and how far apart the holes are
 * @param material what they are made of
 * @param holes the numbers of holes that are kept
 */
@Meaning("Plates of one generic size that are kept.")
public record PlateSizes(
    @Meaning("Generic size; it tells whether screws lock, and how far apart the holes are.")
        Plate.Family family,
    @Meaning("Material.") Material material,
    @Meaning("The numbers of holes that are kept.") @Between(min = 2, max = 30)
        List<Integer> holes) {

  /** Copies the list. */
  public PlateSizes {
    holes = List.copyOf(holes);
  }
}
