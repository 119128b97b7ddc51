package org.bonewright.casefile.checking;

import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;

/** A piece of bone is transported on an external fixator or a nail. */
final class TransportHasACarrier implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Procedure procedure : contents.procedures()) {
      if (procedure.operation().transport().isPresent()) {
        MetalInTheBone.after(procedure, contents)
            .filter(
                metal ->
                    metal.implants().stream()
                        .noneMatch(f -> f.isA(ExternalFixator.class) || f.isA(Nail.class)))
            .ifPresent(
                metal ->
                    objections.refuse(
                        procedure.at().field("transport"),
                        "transport of bone with " + metal.inWords() + " in the bone",
                        "an external fixator or a nail to carry it"));
      }
    }
  }
}
