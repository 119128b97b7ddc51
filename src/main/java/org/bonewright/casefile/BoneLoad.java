package org.bonewright.casefile;

import java.util.Optional;

/** What the bone bears at the fracture during one activity, with no limit to the load. */
@Meaning("What the bone bears at the fracture during one activity, with no limit to the load.")
public record BoneLoad(
    @Meaning("What is done.") String activity,
    @Meaning("Force that presses the bone together along its axis, in N.")
        @Between(min = 0, max = 20000)
        Quantity pressN,
    @Meaning("Bending moment in N·m.") @Between(min = 0, max = 300) Quantity bendingNm,
    @Meaning(
            "The side that bending puts under tension (lateral of a clavicle: above); absent: it may be any.")
        Optional<Direction> tensionSide,
    @Meaning("Torsion in N·m, whichever way round.") @Between(min = 0, max = 200)
        Quantity torsionNm,
    @Meaning("Where the numbers come from.") String source) {

  /** Most activities of one bone. */
  public static final int MOST = 5;

  /** Return whether it certainly loads the bone in no way. */
  public boolean isNothing() {
    return pressN.max() == 0 && bendingNm.max() == 0 && torsionNm.max() == 0;
  }
}
