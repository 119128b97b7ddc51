package org.bonewright.measures.plate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Construct;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Material;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether steel and titanium are in the bone side by side. */
final class MetalsMixed implements Measure {

  private static final Set<Material> TITANIUM =
      EnumSet.of(Material.TITANIUM_UNALLOYED, Material.TITANIUM_ALLOY);

  @Override
  public Definition definition() {
    return new Definition(
        "metals-mixed",
        "Steel and titanium together",
        Definition.yesOrNo(),
        "yes when of the plates and nails in the bone at the end one is of titanium and one is not;"
            + " screws and bolts count as made of the metal of what they hold",
        List.of("operations/fixation/material"),
        "our convention; whether they touch has no field");
  }

  @Override
  public Reading take(Scene scene) {
    Construct construct = scene.construct();
    boolean titanium = false;
    boolean other = false;
    List<MissingFact> open = new ArrayList<>();
    int pieces = 0;
    for (Construct.Held held : construct.implants()) {
      if (held.implant() instanceof Plate || held.implant() instanceof Nail) {
        pieces++;
        Optional<Material> material = material(held.implant());
        titanium |= material.map(TITANIUM::contains).orElse(false);
        other |= material.map(m -> !TITANIUM.contains(m)).orElse(false);
        if (material.isEmpty()) {
          open.add(scene.missingInCase(held.path() + "/material", "Of which metal is it?"));
        }
      }
    }
    if (titanium && other) {
      return Reading.word("yes", "titanium beside another metal");
    }
    if (!construct.known()) {
      return Reading.unknown(scene.missing("fixation", "Which implants were put in?"));
    }
    return pieces < 2 || open.isEmpty()
        ? Reading.word("no", pieces < 2 ? "one piece at most" : "one metal")
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "not every metal is told",
            open.toArray(MissingFact[]::new));
  }

  private static Optional<Material> material(Implant implant) {
    return implant instanceof Plate plate
        ? plate.material()
        : implant instanceof Nail nail ? nail.material() : Optional.empty();
  }
}
