package org.bonewright.measures;

/** What every plate measure says where there is no plate. */
final class Plates {

  private Plates() {}

  /** Return "none" where there certainly is no plate, else that the implants are not known. */
  static Reading noPlate(Scene scene) {
    return scene.certainly("plate-used", "no")
        ? new Reading.None("no plate in place")
        : new Reading.Unknown(scene.read("plate-used").missing());
  }
}
