package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/** What one set of films shows. */
public record Film(
    @Meaning("Which views.") View view,
    @Meaning("How lengths on the film were made true.") Optional<Calibration> calibrated,
    @Meaning("Callus.") Optional<Callus> callus,
    @Meaning("The fracture line.") Optional<Line> line,
    @Meaning("Width of the fracture line in mm, where it is widest.") @Between(min = 0, max = 200)
        Optional<Quantity> lineMm,
    @Meaning(
            "One score for each of four cortices: 1 no callus, 2 callus and line, 3 callus and no line.")
        @Between(min = 1, max = 3)
        List<Integer> cortices,
    @Meaning("Screws with a lucent rim, by implant and hole.") List<String> lucentScrews) {

  /** Which views were read. */
  public enum View {
    AP,
    LATERAL,
    AP_LATERAL,
    CT
  }

  /** How lengths were made true. */
  public enum Calibration {
    NO,
    BY_PLATE_SPACING,
    BY_MARKER,
    CT
  }

  /** Callus on the film. */
  public enum Callus {
    NONE,
    LITTLE,
    BRIDGING,
    ABUNDANT
  }

  /** The fracture line on the film. */
  public enum Line {
    VISIBLE,
    FADING,
    GONE
  }
}
