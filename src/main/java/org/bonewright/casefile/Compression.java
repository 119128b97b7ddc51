package org.bonewright.casefile;

import java.util.Optional;

/** How the line was compressed. */
public record Compression(
    @Meaning("The method.") Method method,
    @Meaning("Eccentric screws used for it.") @Between(min = 0, max = 10) Optional<Quantity> screws,
    @Meaning("Whether the plate was bent beforehand over the line.") Optional<Answer> prebent,
    @Meaning(
            "Distance in mm that the bent plate kept from the bone over the line before compression.")
        @Between(min = 0, max = 15)
        Optional<Quantity> prebendMm,
    @Meaning("Gap in mm that compression had to close.") @Between(min = 0, max = 200)
        Optional<Quantity> gapBeforeMm,
    @Meaning("Whether compression came before the first locking screw.")
        Optional<Answer> beforeLocking) {

  /** How a line is compressed. */
  public enum Method {
    NONE,
    LAG_SCREW,
    ECCENTRIC_SCREWS,
    TENSION_DEVICE,
    CLAMP,
    NAIL_BACKSLAP,
    FIXATOR
  }
}
