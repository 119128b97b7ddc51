package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** What was found on one day. */
public record Finding(
    @Meaning("Day after the injury.") @Between(min = 0, max = 36500) Quantity day,
    @Meaning("The patient as a host.") Optional<Host> host,
    @Meaning("Signs of infection.") Optional<InfectionSigns> infection,
    @Meaning("Skin and scars.") Optional<Skin> skin,
    @Meaning("Foot or hand pulses.") Optional<Examination> pulses,
    @Meaning("Ankle-brachial pressure index.") @Between(min = 0, max = 3)
        Optional<Quantity> ankleBrachialIndex,
    @Meaning("Nerve function.") Optional<NerveState> nerve,
    @Meaning("Motion of the joints beside.") List<JointMotion> joints,
    @Meaning("Pain under load, 0 none to 10 worst.") @Between(min = 0, max = 10)
        Optional<Quantity> pain,
    @Meaning("Motion felt at the fracture.") Optional<Examination> motionAtSite,
    @Meaning("A false joint: free motion, a fluid cavity, or sealed canals on section images.")
        Optional<Examination> falseJoint,
    @Meaning("Union or not.") Optional<Diagnosis> diagnosis,
    @Meaning("Kind of nonunion.") Optional<Vitality> vitality,
    @Meaning("Bone missing along the axis, in mm.") @Between(min = 0, max = 400)
        Optional<Quantity> defectMm,
    @Meaning("How far the bone stands off.") Optional<Deformity> deformity,
    @Meaning("Percent of the circumference that is missing at the site.")
        @Between(min = 0, max = 100)
        Optional<Quantity> circumferenceMissingPercent,
    @Meaning("Suspicion of a tumour.") Optional<Examination> tumourSuspected,
    @Meaning("Radiation dose at the site, in Gy.") @Between(min = 0, max = 200)
        Optional<Quantity> radiationGy,
    @Meaning("Pattern of what is still not united, where it differs from the injury.")
        Optional<Injury.Pattern> pattern,
    @Meaning("What is still not united, where it differs from the injury.") Optional<Zone> zone,
    @Meaning("Films read on that day.") List<Film> films) {

  /** The skin over the site. */
  public enum Skin {
    INTACT,
    SOUND_SCAR,
    TETHERED_SCAR,
    GRAFTED,
    FLAP,
    OPEN
  }

  /** Union or not, as judged then. */
  public enum Diagnosis {
    UNITED,
    HEALING,
    DELAYED_UNION,
    NONUNION
  }

  /** Kind of nonunion. */
  public enum Vitality {
    HYPERTROPHIC,
    OLIGOTROPHIC,
    ATROPHIC,
    DEFECT,
    /** Looked at, and the kind could not be told. */
    UNCERTAIN
  }
}
