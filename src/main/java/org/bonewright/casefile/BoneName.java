package org.bonewright.casefile;

/** The long bones that Bonewright reviews. */
public enum BoneName {
  HUMERUS,
  FEMUR,
  TIBIA,
  RADIUS,
  ULNA,
  CLAVICLE
}
