package org.bonewright.measures.plate;

import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What every plate measure says where there is no plate. */
public final class Plates {

  private Plates() {}

  /** Return "none" where there certainly is no plate, else that the implants are not known. */
  public static Reading noPlate(Scene scene) {
    return scene.certainly("plate-used", "no")
        ? new Reading.None("no plate in place")
        : new Reading.Unknown(scene.read("plate-used").missing());
  }
}
