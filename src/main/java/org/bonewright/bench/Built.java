package org.bonewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.bench.BenchFile.Construct;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.mechanics.construct.Beside;
import org.bonewright.mechanics.construct.Compression;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.MetalPlate;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.section.HollowCircle;
import org.bonewright.mechanics.section.Material;
import org.bonewright.mechanics.section.Rectangle;

/** Builds a fixed bone from a bench file, or says everything that does not fit together. */
final class Built {

  private final Construct file;
  private final List<BenchPlate> plates = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  Built(Construct file) {
    this.file = file;
    file.plate().ifPresent(plates::add);
    plates.addAll(file.plates());
  }

  /** Return the fixed bone; empty where something does not fit. */
  Optional<FixedBone> bone() {
    if (file.plate().isPresent() && !file.plates().isEmpty()) {
      refuse("/plates", "both plate and plates", "plate for one, plates for several");
    }
    tube("/bone", file.bone().outerDiameter(), file.bone().innerDiameter());
    Optional<BuiltStrut> strut = file.strut().map(own -> new BuiltStrut(file, own));
    strut.ifPresent(own -> problems.addAll(own.problems(plates)));
    file.nail().ifPresent(n -> tube("/nail", n.outerDiameter(), n.innerDiameter()));
    for (int i = 0; i < plates.size(); i++) {
      check(plates.get(i), i);
    }
    BuiltScrews placed = new BuiltScrews(file, plates);
    List<PlateScrew> screws = placed.screws();
    problems.addAll(placed.problems());
    nail();
    Optional<BuiltFixator> fixator = file.fixator().map(f -> new BuiltFixator(file, f));
    fixator.ifPresent(outside -> problems.addAll(outside.problems()));
    BuiltLagScrews lags = new BuiltLagScrews(file, touching() && gap() == 0);
    problems.addAll(lags.problems());
    fracture();
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    BenchBone bone = file.bone();
    return Optional.of(
        new FixedBone(
            new Shaft(
                bone.material(),
                new HollowCircle(bone.outerDiameter(), bone.innerDiameter()),
                bone.proximalLength(),
                bone.distalLength(),
                optional(bone.shearStrength()),
                optional(bone.compressiveStrength())),
            new Fracture(gap(), filling()),
            plates.stream().map(Built::plate).toList(),
            screws,
            strut.flatMap(BuiltStrut::canal),
            file.nail().map(this::nail),
            file.preload()
                .filter(preload -> preload.force() > 0)
                .map(p -> new Compression(p.force(), p.eccentricity().orElse(0.0))),
            new Beside(
                fixator.map(BuiltFixator::fixator),
                lags.screws(),
                strut.flatMap(BuiltStrut::lying))));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  /** Return everything that does not fit, once the bone was asked for. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }

  private void refuse(String pointer, String found, String allowed) {
    problems.add(Problem.error(pointer, found, allowed));
  }

  private void tube(String pointer, double outer, double inner) {
    if (inner >= outer) {
      refuse(pointer + "/innerDiameter", "the number " + inner, "less than the outer diameter");
    }
  }

  private String pointer(int plate) {
    return file.plate().isPresent() ? "/plate" : "/plates/" + plate;
  }

  private void check(BenchPlate plate, int index) {
    if (plate.holeDiameter() >= plate.width()) {
      refuse(
          pointer(index) + "/holeDiameter",
          "the number " + plate.holeDiameter(),
          "less than the width of the plate");
    }
    for (int i = 1; i < plate.holes().size(); i++) {
      if (plate.holes().get(i) <= plate.holes().get(i - 1)) {
        refuse(
            pointer(index) + "/holes/" + i,
            "the number " + plate.holes().get(i),
            "levels that grow from hole to hole");
      }
    }
  }

  private static MetalPlate plate(BenchPlate plate) {
    return new MetalPlate(
        Material.isotropic(plate.young(), plate.poisson()),
        new Rectangle(plate.width(), plate.thickness()),
        plate.standoff().orElse(0.0),
        plate.holeDiameter(),
        plate.holes(),
        plate.azimuth().orElse(0.0));
  }

  private void nail() {
    file.nail()
        .ifPresent(
            nail -> {
              for (int i = 0; i < nail.bolts().size(); i++) {
                for (double at : nail.bolts().get(i).at()) {
                  inBone("/nail/bolts/" + i + "/at", "a bolt at " + at, at);
                }
              }
              for (int i = 0; i < nail.rests().size(); i++) {
                double at = nail.rests().get(i).at();
                inBone("/nail/rests/" + i + "/at", "a rest at " + at, at);
              }
            });
  }

  private void inBone(String pointer, String what, double at) {
    if (!BuiltScrews.inBone(file, at)) {
      refuse(pointer, what, "levels within the fragments, outside the gap");
    }
  }

  private MetalNail nail(BenchNail nail) {
    List<MetalNail.Bolt> bolts = new ArrayList<>();
    for (BenchNail.Bolts kind : nail.bolts()) {
      Material material =
          Material.isotropic(
              kind.young().orElse(nail.young()), kind.poisson().orElse(nail.poisson()));
      kind.at()
          .forEach(
              at ->
                  bolts.add(
                      new MetalNail.Bolt(
                          at,
                          kind.azimuth().orElse(0.0),
                          material,
                          kind.diameter(),
                          kind.angleStable().orElse(false),
                          kind.rigid().orElse(false),
                          kind.slides().orElse(false))));
    }
    return new MetalNail(
        Material.isotropic(nail.young(), nail.poisson()),
        new HollowCircle(nail.outerDiameter(), nail.innerDiameter()),
        bolts,
        nail.rests().stream().map(rest -> new MetalNail.Rest(rest.at(), rest.slack())).toList());
  }

  private double gap() {
    return file.gap().orElse(0.0);
  }

  private boolean layered() {
    return file.line().map(line -> line == Construct.Interface.LAYER).orElse(false);
  }

  private boolean bonded() {
    return file.line().map(line -> line == Construct.Interface.BONDED).orElse(false);
  }

  private boolean touching() {
    return file.contact().map(contact -> contact == Construct.Contact.UNILATERAL).orElse(false);
  }

  private void fracture() {
    if (layered() && file.layer().isEmpty()) {
      refuse("/layer", "nothing", "what the layer is made of");
    }
    if (!layered() && file.layer().isPresent()) {
      refuse("/layer", "a layer", "a layer only with interface layer");
    }
    if ((layered() || bonded()) && touching()) {
      refuse("/contact", "the word unilateral", "none, where a layer joins the ends");
    }
    if (file.preload().map(p -> p.force() > 0).orElse(false) && !(touching() && gap() == 0)) {
      refuse("/preload", "a preload", "a preload only with gap 0 and contact unilateral");
    }
    if (file.preload().map(p -> p.force() > 0).orElse(false) && plates.isEmpty()) {
      refuse("/preload", "a preload without a plate", "a plate across the fracture");
    }
  }

  private Filling filling() {
    if (layered()) {
      return file.layer()
          .<Filling>map(l -> new Filling.Layer(Material.isotropic(l.young(), l.poisson())))
          .orElseGet(Filling.Nothing::new);
    }
    if (bonded()) {
      return new Filling.Layer(file.bone().material());
    }
    return touching() ? new Filling.Touching(file.friction().orElse(0.0)) : new Filling.Nothing();
  }
}
