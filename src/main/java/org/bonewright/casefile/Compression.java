package org.bonewright.casefile;

import java.util.Optional;

/** How the line was compressed. */
public record Compression(
    @Meaning("The method.") Method method,
    @Meaning("Eccentric screws used for it.") @Between(min = 0, max = 10) Optional<Quantity> screws,
    @Meaning("Whether the plate was bent beforehand over the line.") Optional<Answer> prebent,
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
