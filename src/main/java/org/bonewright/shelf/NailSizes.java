package org.bonewright.shelf;

import java.util.List;
import org.bonewright.casefile.Between;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Material;
import org.bonewright.casefile.Meaning;

/**
 * Locked nails for one bone that are kept.
 *
 * @param bone the bone
 * @param material what they are made of
 * @param outerMm diameters in mm
 * @param lengthMm lengths in mm
 * @param boltMm diameters of their bolts in mm
 */
@Meaning("Locked nails for one bone that are kept.")
public record NailSizes(
    @Meaning("The bone.") BoneName bone,
    @Meaning("Material.") Material material,
    @Meaning("Diameters in mm.") @Between(min = 1.5, max = 18) List<Double> outerMm,
    @Meaning("Lengths in mm.") @Between(min = 80, max = 550) List<Double> lengthMm,
    @Meaning("Diameters of their bolts in mm.") @Between(min = 2, max = 8) List<Double> boltMm) {

  /** Copies the lists. */
  public NailSizes {
    outerMm = List.copyOf(outerMm);
    lengthMm = List.copyOf(lengthMm);
    boltMm = List.copyOf(boltMm);
  }
}
