package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.hold.PullOut;

/** Reads what each screw carries, its patch on the bone included. */
final class ScrewDemands {

  private ScrewDemands() {}

  static List<ScrewDemand> of(Answer answer) {
    List<ScrewColumn> columns = answer.joined().screws();
    Six[] patches = new Six[columns.size()];
    PatchStand[] stands = new PatchStand[columns.size()];
    Arrays.fill(patches, Six.NONE);
    Arrays.fill(stands, PatchStand.WHOLE);
    List<Joined.Place> places = answer.joined().patches();
    for (int i = 0; i < places.size(); i++) {
      int screw = places.get(i).screw();
      stands[screw] = answer.response().stands().get(i);
      patches[screw] = stands[screw].kept().plus(answer.patches().get(i));
    }
    List<ScrewDemand> demands = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      demands.add(demand(columns.get(i), answer, patches[i], stands[i]));
    }
    return demands;
  }

  private static ScrewDemand demand(
      ScrewColumn column, Answer answer, Six patch, PatchStand stand) {
    PlateScrew screw = column.screw();
    Shaft shaft = answer.response().reduced().fixed().shaft();
    Six neck = Six.NONE;
    double length = 0;
    if (column.neck().isPresent()) {
      neck = answer.force(column.neck().getAsInt());
      length = column.free();
    }
    double atPlate =
        Math.hypot(
            neck.aboutAway() - length * neck.across(), neck.aboutAcross() + length * neck.away());
    double atBone = Math.hypot(neck.aboutAway(), neck.aboutAcross());
    double moment = Math.max(atPlate, atBone);
    double area = Math.PI * screw.core() * screw.core() / 4;
    return new ScrewDemand(
        screw.plate(),
        screw.at(),
        neck.along() + patch.along(),
        // The screw points inward and the patch outward: across counts the other way round.
        Math.hypot(patch.away() - neck.away(), patch.across() + neck.across()),
        moment,
        32 * moment / (Math.PI * screw.core() * screw.core() * screw.core())
            + Math.abs(neck.along()) / area,
        capacity(screw, shaft),
        state(stand),
        Math.hypot(neck.away(), neck.across()) / (screw.major() * shaft.section().wall()),
        shaft.compressiveStrength());
  }

  /** Return the pull in N that a thread bears; empty where the bone's strength is not given. */
  static OptionalDouble capacity(PlateScrew screw, Shaft shaft) {
    if (shaft.shearStrength().isEmpty() || !(screw.pitch() > 0)) {
      return OptionalDouble.empty();
    }
    double engaged = shaft.section().wall() * (screw.near() + screw.far());
    return OptionalDouble.of(
        new PullOut(screw.major(), screw.core(), screw.pitch())
            .capacity(shaft.shearStrength().getAsDouble(), engaged));
  }

  private static String state(PatchStand stand) {
    Patch.State state =
        stand.lifted()
            ? Patch.State.LIFTED
            : stand.slid()
                ? Patch.State.SLIP
                : stand.tilted() ? Patch.State.TILT : Patch.State.STICK;
    return state.name().toLowerCase(Locale.ROOT);
  }
}
