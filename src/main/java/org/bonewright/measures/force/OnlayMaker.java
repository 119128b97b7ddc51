package org.bonewright.measures.force;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Scene;
import org.bonewright.mechanics.construct.OnlayStrut;

/**
 * Makes the sketch of a strut on the surface of the bone. Our conventions: one of which it is not
 * told on which side it lies, or that lies under a plate, or does not certainly cross the line, is
 * left out, so that the construct is rather too soft; wires hold it where they are said to. Sizes
 * that are not told: 10 to 18 mm wide and 3 to 6 mm thick (from memory).
 */
final class OnlayMaker {

  private static final Dimension WIDTH = Dimension.assumed(10, 18, "usual onlay strut");
  private static final Dimension WALL = Dimension.assumed(3, 6, "usual onlay strut");
  private static final double TURN = 360;

  private OnlayMaker() {}

  /**
   * Return the strut; empty where there is none that counts.
   *
   * @param facing direction around the bone from which azimuths are counted; empty where it is not
   *     told
   * @param plates the plates of the construct
   */
  static Optional<OnlaySketch> of(Scene scene, Optional<Double> facing, List<PlateSketch> plates) {
    return scene.construct().of(Strut.class).stream()
        .filter(strut -> strut.where() == Strut.Where.ONLAY)
        .findFirst()
        .flatMap(
            strut ->
                scene
                    .zone()
                    .centre()
                    .flatMap(
                        centre ->
                            facing.flatMap(
                                front ->
                                    strut
                                        .surface()
                                        .map(Direction::degrees)
                                        .map(side -> sketch(scene, strut, centre, side - front)))))
        .filter(strut -> strut.from().max() <= -1 && strut.to().min() >= 1)
        .filter(strut -> plates.stream().noneMatch(plate -> covers(plate, strut)));
  }

  private static boolean covers(PlateSketch plate, OnlaySketch strut) {
    double turned = Math.abs(plate.azimuth() - strut.azimuth()) % TURN;
    return Math.min(turned, TURN - turned) < OnlayStrut.OPPOSITE;
  }

  private static OnlaySketch sketch(Scene scene, Strut strut, Dimension centre, double azimuth) {
    Dimension from = stated(strut.fromMm()).minus(centre);
    Dimension to = stated(strut.toMm()).minus(centre);
    List<Dimension> wires =
        scene.construct().of(Cerclage.class).stream()
            .filter(wire -> wire.holds().equals(Optional.of(Cerclage.Holds.STRUT)))
            .flatMap(wire -> wire.atMm().stream())
            .map(at -> stated(at).minus(centre))
            .filter(at -> at.min() >= from.max() && at.max() <= to.min())
            .toList();
    return new OnlaySketch(
        azimuth,
        from,
        to,
        strut.outerMm().map(OnlayMaker::stated).orElse(WIDTH),
        strut.wallMm().map(OnlayMaker::stated).orElse(WALL),
        wires);
  }

  private static Dimension stated(Quantity quantity) {
    return Dimension.stated(quantity, "stated");
  }
}
