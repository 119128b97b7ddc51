package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** A plate with its screws. Holes are numbered from the near end of the bone, beginning with 1. */
@Kind("plate")
public record Plate(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Generic size, which gives spacing, width and thickness.") Optional<Family> family,
    @Meaning("Material.") Optional<Material> material,
    @Meaning("The surface it lies on.") Optional<Direction> surface,
    @Meaning("Number of holes.") @Between(min = 1, max = 30) Optional<Integer> holes,
    @Meaning("Length in mm.") @Between(min = 15, max = 500) Optional<Quantity> lengthMm,
    @Meaning("Thickness in mm.") @Between(min = 0.5, max = 12) Optional<Quantity> thicknessMm,
    @Meaning("Width in mm.") @Between(min = 3, max = 40) Optional<Quantity> widthMm,
    @Meaning("Distance between neighbouring holes in mm.") @Between(min = 4, max = 40)
        Optional<Quantity> spacingMm,
    @Meaning("Widest distance between plate and bone in mm.") @Between(min = 0, max = 30)
        Optional<Quantity> standOffMm,
    @Meaning("Where it lies along the bone.") Optional<Placement> place,
    @Meaning("The screws, by hole; holes not named are open.") Optional<List<ScrewRow>> screws,
    @Meaning(
            "Cortices that the screws grip on the side that has fewer, where the record gives this"
                + " number and not the holes.")
        @Between(min = 0, max = 40)
        Optional<Quantity> fewestCortices,
    @Meaning("Holes closed with a plug.") @Between(min = 1, max = 30) List<Integer> plugged)
    implements Implant {

  /**
   * Return the same plate without the screws of these holes. How many cortices were gripped on the
   * weaker side is not known any more once some are out.
   */
  public Plate withoutScrews(List<Integer> taken) {
    return new Plate(
        id,
        family,
        material,
        surface,
        holes,
        lengthMm,
        thicknessMm,
        widthMm,
        spacingMm,
        standOffMm,
        place,
        screws.map(rows -> rows.stream().map(row -> row.without(taken)).toList()),
        taken.isEmpty() ? fewestCortices : Optional.empty(),
        plugged);
  }

  /** Generic plate sizes. */
  public enum Family {
    LARGE_FRAGMENT_BROAD(16),
    LARGE_FRAGMENT_BROAD_LOCKING(18),
    LARGE_FRAGMENT_NARROW(16),
    LARGE_FRAGMENT_NARROW_LOCKING(18),
    SMALL_FRAGMENT(12),
    SMALL_FRAGMENT_LOCKING(13),
    RECONSTRUCTION(12),
    ONE_THIRD_TUBULAR(12),
    SEMI_TUBULAR(16),
    SHAFT_STRENGTH_2_7(10);

    private final double spacingMm;

    Family(double spacingMm) {
      this.spacingMm = spacingMm;
    }

    /** Return the usual distance between neighbouring holes in mm; from memory. */
    public double spacingMm() {
      return spacingMm;
    }
  }
}
