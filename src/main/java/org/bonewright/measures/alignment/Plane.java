package org.bonewright.measures.alignment;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Deformity;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Reduction;

/** A plane in which a bone can stand off. */
enum Plane {
  CORONAL("coronal", "Varus or valgus", "coronalDeg"),
  SAGITTAL("sagittal", "Bent to the front or back", "sagittalDeg"),
  ROTATION("rotation", "Turned about its length", "rotationDeg");

  private final String id;
  private final String title;
  private final String field;

  Plane(String id, String title, String field) {
    this.id = id;
    this.title = title;
    this.field = field;
  }

  String id() {
    return id;
  }

  String title() {
    return title;
  }

  /** Return the name of the field that states it. */
  String field() {
    return field;
  }

  /** Return what an operation left, in degrees with its sign. */
  Optional<Quantity> of(Reduction reduction) {
    return switch (this) {
      case CORONAL -> reduction.coronalDeg();
      case SAGITTAL -> reduction.sagittalDeg();
      case ROTATION -> reduction.rotationDeg();
    };
  }

  /** Return what was found on a day, in degrees with its sign. */
  Optional<Quantity> of(Deformity deformity) {
    return switch (this) {
      case CORONAL -> deformity.coronalDeg();
      case SAGITTAL -> deformity.sagittalDeg();
      case ROTATION -> deformity.rotationDeg();
    };
  }

  /** Return degrees without regard to the side. */
  static Dimension off(Quantity stated) {
    return Dimension.stated(stated, "").magnitude();
  }
}
