package org.bonewright.measures.graft;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Graft;
import org.bonewright.casefile.GraftDonor;
import org.bonewright.casefile.Quantity;

/**
 * The volume in mL that a graft fills, stated or by what its donor site usually gives.
 *
 * <p>Donor sites give, packed (loose): anterior iliac crest 21 (26), posterior 24 (34), proximal
 * tibia 9 (18), from cadavers; a reamer in the femur about 40, from 25 to 75.
 */
final class GraftSupply {

  private static final Set<Graft.Kind> FILLING =
      EnumSet.of(
          Graft.Kind.AUTOGRAFT_CANCELLOUS,
          Graft.Kind.AUTOGRAFT_TRICORTICAL,
          Graft.Kind.REAMER_GRAFT,
          Graft.Kind.ALLOGRAFT,
          Graft.Kind.SUBSTITUTE);
  private static final Dimension ANTERIOR = donor(21, 26, "anterior iliac crest");
  private static final Dimension POSTERIOR = donor(24, 34, "posterior iliac crest");
  private static final Dimension TIBIA = donor(9, 18, "proximal tibia");
  private static final Dimension REAMED = donor(25, 75, "reamed femur");

  private GraftSupply() {}

  private static Dimension donor(double packed, double loose, String where) {
    return Dimension.assumed(packed, loose, "what a " + where + " usually gives");
  }

  /** Return whether a graft takes up room in a defect. */
  static boolean fills(Graft graft) {
    return FILLING.contains(graft.kind());
  }

  /**
   * Return the volume of one graft in mL; empty where it may be anything.
   *
   * @param planned whether it is still to be taken: then a donor gives no more than it usually does
   */
  static Optional<Dimension> of(Graft graft, boolean planned) {
    Optional<Dimension> site = graft.donor().flatMap(GraftSupply::usual);
    Optional<Quantity> stated = graft.volumeMl();
    if (stated.isEmpty()) {
      return site;
    }
    Dimension volume = Dimension.stated(stated.get(), "volume stated");
    boolean harvested = Biology.AUTOGRAFT.contains(graft.kind());
    if (!planned || !harvested) {
      return Optional.of(volume);
    }
    return graft.donor().isEmpty()
        ? Optional.of(fromAnywhere(volume))
        : Optional.of(site.map(usual -> capped(volume, usual)).orElse(volume));
  }

  /** What is planned beyond the loose volume of a donor may come down to its packed volume. */
  private static Dimension capped(Dimension volume, Dimension site) {
    return volume.max() <= site.max()
        ? volume
        : Dimension.assumed(Math.min(volume.min(), site.min()), site.max(), site.basis());
  }

  /** Where the donor is not stated it may be the one that gives least. */
  private static Dimension fromAnywhere(Dimension volume) {
    return volume.max() <= TIBIA.max()
        ? volume
        : Dimension.assumed(Math.min(volume.min(), TIBIA.min()), volume.max(), "donor not stated");
  }

  private static Optional<Dimension> usual(GraftDonor donor) {
    return switch (donor) {
      case ILIAC_ANTERIOR_LEFT, ILIAC_ANTERIOR_RIGHT -> Optional.of(ANTERIOR);
      case ILIAC_POSTERIOR_LEFT, ILIAC_POSTERIOR_RIGHT -> Optional.of(POSTERIOR);
      case PROXIMAL_TIBIA_LEFT, PROXIMAL_TIBIA_RIGHT -> Optional.of(TIBIA);
      case FEMUR_CANAL_LEFT, FEMUR_CANAL_RIGHT -> Optional.of(REAMED);
      case FIBULA_LEFT, FIBULA_RIGHT, BANK, OTHER -> Optional.empty();
    };
  }
}
