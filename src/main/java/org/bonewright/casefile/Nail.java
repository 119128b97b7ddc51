package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** An intramedullary nail with its bolts. */
@Kind("nail")
public record Nail(
    @Meaning("Name of the implant within its operation.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String id,
    @Meaning("Diameter in mm.") @Between(min = 1.5, max = 18) Optional<Quantity> outerMm,
    @Meaning("Bore in mm; 0 for a solid nail.") @Between(min = 0, max = 12)
        Optional<Quantity> boreMm,
    @Meaning("Length in mm.") @Between(min = 80, max = 550) Optional<Quantity> lengthMm,
    @Meaning("Material.") Optional<Material> material,
    @Meaning("From which end it was put in.") Optional<Entry> entry,
    @Meaning("Last reamer in mm; 0 when not reamed.") @Between(min = 0, max = 20)
        Optional<Quantity> reamedMm,
    @Meaning("Mode of locking.") Optional<Locking> locking,
    @Meaning("The bolts; an empty list means none.") Optional<List<Bolt>> bolts,
    @Meaning(
            "Bolts at the end that has fewer, where the record gives this number and not the"
                + " bolts.")
        @Between(min = 0, max = 6)
        Optional<Quantity> fewestBolts)
    implements Implant {

  /**
   * Return the same nail without the bolts at these places of its list, counted from 1. Once some
   * are out, the mode of locking that was stated with them holds no longer, nor does the number at
   * the weaker end.
   */
  public Nail withoutBolts(List<Integer> taken) {
    return new Nail(
        id,
        outerMm,
        boreMm,
        lengthMm,
        material,
        entry,
        reamedMm,
        taken.isEmpty() ? locking : Optional.empty(),
        bolts.map(all -> Places.without(all, taken)),
        taken.isEmpty() ? fewestBolts : Optional.empty());
  }

  /** From which end a nail goes in. */
  public enum Entry {
    ANTEGRADE,
    RETROGRADE
  }

  /** Mode of locking. */
  public enum Locking {
    STATIC,
    DYNAMIC,
    UNLOCKED
  }
}
