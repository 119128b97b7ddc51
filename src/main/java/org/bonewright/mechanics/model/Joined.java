package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bonewright.mechanics.construct.FixedBone;
import org.bonewright.mechanics.construct.Fracture.Filling;
import org.bonewright.mechanics.construct.MetalNail;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.PlateScrew.Head;
import org.bonewright.mechanics.frame.Frame;
import org.bonewright.mechanics.frame.Link;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.frame.SolvedFrame;
import org.bonewright.mechanics.frame.Vector;
import org.bonewright.mechanics.section.HollowCircle;

/** A fixed bone laid into a frame, with its patches in some state, ready for loads. */
final class Joined {

  private final SolvedFrame frame;
  private final BoneLine bone;
  private final List<PlateLine> plates;
  private final List<ScrewColumn> screws;
  private final Map<Integer, OptionalInt> patches;
  private final Map<Integer, Link> patchLinks;
  private final Link ends;

  private Joined(
      SolvedFrame frame,
      BoneLine bone,
      List<PlateLine> plates,
      List<ScrewColumn> screws,
      Map<Integer, OptionalInt> patches,
      Map<Integer, Link> patchLinks,
      Link ends) {
    this.frame = frame;
    this.bone = bone;
    this.plates = plates;
    this.screws = screws;
    this.patches = patches;
    this.patchLinks = patchLinks;
    this.ends = ends;
  }

  /**
   * Join everything.
   *
   * @param fixed the fixed bone
   * @param stands how the patches stand, by index of the screw; those not named are whole
   * @param closed whether the ends of the bone are to be held together all round, as a spring that
   *     neither parts nor slips
   * @return empty if something could move without resistance
   */
  static Optional<Joined> of(FixedBone fixed, Map<Integer, PatchStand> stands, boolean closed) {
    Frame frame = new Frame();
    HollowCircle tube = fixed.shaft().section();
    List<Double> levels =
        Stream.concat(
                fixed.screws().stream().map(PlateScrew::at),
                fixed.nail().stream().flatMap(n -> n.bolts().stream()).map(MetalNail.Bolt::at))
            .toList();
    BoneLine bone = new BoneLine(frame, fixed, levels);
    List<PlateLine> plates = new ArrayList<>();
    for (int i = 0; i < fixed.plates().size(); i++) {
      int plate = i;
      List<PlateScrew> own = fixed.screws().stream().filter(s -> s.plate() == plate).toList();
      plates.add(new PlateLine(frame, fixed.plates().get(i), tube.outer(), own));
    }
    StrutLine strut = new StrutLine(frame, fixed.strut(), fixed.screws());
    List<ScrewColumn> columns = new ArrayList<>();
    Map<Integer, OptionalInt> patches = new TreeMap<>();
    Map<Integer, Link> patchLinks = new TreeMap<>();
    for (int i = 0; i < fixed.screws().size(); i++) {
      PlateScrew screw = fixed.screws().get(i);
      PlateLine plate = plates.get(screw.plate());
      columns.add(ScrewColumn.of(frame, screw, plate, fixed.shaft(), bone, strut));
      if (screw.head() instanceof Head.Pressed pressed && pressed.force() > 0) {
        PatchStand stand = stands.getOrDefault(i, PatchStand.WHOLE);
        Link link = patch(fixed, screw, pressed, plate, bone, stand);
        patchLinks.put(i, link);
        patches.put(i, stand.lifted() ? OptionalInt.empty() : OptionalInt.of(frame.link(link)));
      }
    }
    fixed.nail().ifPresent(inside -> NailLine.lay(frame, inside, fixed.shaft(), bone));
    Link ends = ends(fixed, bone, closed);
    if (closed || fixed.fracture().filling() instanceof Filling.Layer) {
      frame.link(ends);
    }
    return frame
        .hold(bone.held())
        .map(solved -> new Joined(solved, bone, plates, columns, patches, patchLinks, ends));
  }

  private static Link patch(
      FixedBone fixed,
      PlateScrew screw,
      Head.Pressed pressed,
      PlateLine plate,
      BoneLine bone,
      PatchStand stand) {
    double outer = fixed.shaft().section().outer();
    Vector at = plate.outward().times(outer / 2).plus(BoneLine.ALONG.times(screw.at()));
    return new Patch(pressed, fixed.shaft().material())
        .link(
            bone.at(screw.at()),
            plate.node(screw.at()),
            at,
            Turned.screw(plate.outward()),
            stand.tilted(),
            stand.slid());
  }

  private static Link ends(FixedBone fixed, BoneLine bone, boolean closed) {
    HollowCircle tube = fixed.shaft().section();
    Six springs = Six.NONE;
    if (closed) {
      springs = new BoneEnds(tube, fixed.shaft().material().young(), 0).closed();
    } else if (fixed.fracture().filling() instanceof Filling.Layer layer) {
      double thick = fixed.fracture().layer();
      double young = layer.material().young();
      double shear = layer.material().shear();
      springs =
          new Six(
              young * tube.area() / thick,
              shear * tube.area() / thick,
              shear * tube.area() / thick,
              shear * tube.torsion() / thick,
              young * tube.weak() / thick,
              young * tube.weak() / thick);
    }
    return Link.springs(
        bone.proximalEnd(),
        bone.distalEnd(),
        new Vector(0, 0, 0),
        Turned.plate(new Vector(1, 0, 0)),
        springs);
  }

  /** Return the frame. */
  SolvedFrame frame() {
    return frame;
  }

  /** Return the nodes on the axis of the bone. */
  BoneLine bone() {
    return bone;
  }

  /** Return the plates. */
  List<PlateLine> plates() {
    return plates;
  }

  /** Return the screws. */
  List<ScrewColumn> screws() {
    return screws;
  }

  /** Return the index of the link of each patch that still touches, by index of its screw. */
  Map<Integer, OptionalInt> patches() {
    return patches;
  }

  /** Return the place and axes of each patch, by index of its screw. */
  Map<Integer, Link> patchLinks() {
    return patchLinks;
  }

  /** Return the pair of bone ends: along the bone, towards the plate, across. */
  Link ends() {
    return ends;
  }
}
