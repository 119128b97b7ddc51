package org.bonewright.casefile.checking;

import java.util.Optional;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Strut;

/** A cerclage that holds a strut holds one on the bone, put in with it or before. */
final class HeldStrutsAreThere implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    for (Fitted<Cerclage> cerclage : contents.implants(Cerclage.class)) {
      if (cerclage.implant().holds().equals(Optional.of(Cerclage.Holds.STRUT))) {
        MetalInTheBone.during(cerclage.by(), contents)
            .filter(metal -> metal.implants().stream().noneMatch(HeldStrutsAreThere::isOnlay))
            .ifPresent(
                metal ->
                    objections.refuse(
                        cerclage.at().field("holds"),
                        "a cerclage that holds a strut, with no strut on the bone",
                        "an onlay strut, or a cerclage that holds a fragment or a wedge"));
      }
    }
  }

  private static boolean isOnlay(Fitted<?> fitted) {
    return fitted.implant() instanceof Strut strut && strut.where() == Strut.Where.ONLAY;
  }
}
