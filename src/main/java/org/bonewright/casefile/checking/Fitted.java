package org.bonewright.casefile.checking;

import org.bonewright.casefile.Implant;

/**
 * An implant with its place in the file and the operation that puts it in.
 *
 * @param implant the implant
 * @param at its place in the file
 * @param by the operation that puts it in
 */
record Fitted<T extends Implant>(T implant, At at, Procedure by) {

  /** Return its full name: operation and implant with a slash between. */
  String name() {
    return by.operation().id() + "/" + implant.id();
  }

  /** Return whether it is an implant of this kind. */
  boolean isA(Class<? extends Implant> kind) {
    return kind.isInstance(implant);
  }

  /** Return it as an implant of this kind. */
  <S extends Implant> Fitted<S> as(Class<S> kind) {
    return new Fitted<>(kind.cast(implant), at, by);
  }
}
