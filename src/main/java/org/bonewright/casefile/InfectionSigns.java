package org.bonewright.casefile;

import java.util.Optional;
import java.util.stream.Stream;

/** Signs of infection on one day, after the consensus definition of fracture-related infection. */
public record InfectionSigns(
    @Meaning("Sinus or fistula down to bone or implant.") Optional<Examination> sinus,
    @Meaning("Wound breakdown down to bone or implant.") Optional<Examination> woundBreakdown,
    @Meaning("Pus, draining or found at operation.") Optional<Examination> pus,
    @Meaning("Fever of 38.3 °C or more.") Optional<Examination> fever,
    @Meaning("Redness, warmth, swelling, pain that grows.") Optional<Examination> localSigns,
    @Meaning("New, lasting or growing wound discharge.") Optional<Examination> discharge,
    @Meaning("New effusion of a joint beside.") Optional<Examination> jointEffusion,
    @Meaning("C-reactive protein in mg/L.") @Between(min = 0, max = 600) Optional<Quantity> crpMgL,
    @Meaning("Erythrocyte sedimentation rate in mm/h.") @Between(min = 0, max = 200)
        Optional<Quantity> esrMmH,
    @Meaning("White cells, 10⁹ per litre.") @Between(min = 0, max = 200)
        Optional<Quantity> whiteCellsG9L,
    @Meaning("Lysis or loosening seen on film.") Optional<Examination> lysis,
    @Meaning("Sequestrum.") Optional<Examination> sequestrum,
    @Meaning("New periosteal bone away from the line.") Optional<Examination> periostealBone,
    @Meaning("Deep tissue and implant samples so far.") Optional<SampleResult> samples,
    @Meaning("Histology of deep tissue.") Optional<Histology> histology,
    @Meaning("Days without antibiotics before sampling.") @Between(min = 0, max = 3650)
        Optional<Quantity> antibioticFreeDays) {

  /** Return whether anything at all was looked for, whatever came of it. */
  public boolean tellsSomething() {
    return Stream.of(
            sinus,
            woundBreakdown,
            pus,
            fever,
            localSigns,
            discharge,
            jointEffusion,
            crpMgL,
            esrMmH,
            whiteCellsG9L,
            lysis,
            sequestrum,
            periostealBone,
            samples,
            histology,
            antibioticFreeDays)
        .anyMatch(Optional::isPresent);
  }

  /** What histology of deep tissue showed. */
  public enum Histology {
    NOT_DONE,
    NEGATIVE,
    /** More than five neutrophils per high-power field. */
    NEUTROPHILS_ABOVE_5,
    /** Organisms seen with a specific stain. */
    ORGANISMS,
    UNKNOWN
  }
}
