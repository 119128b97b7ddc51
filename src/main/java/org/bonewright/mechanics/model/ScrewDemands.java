package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Six;
import org.bonewright.mechanics.hold.PullOut;

/** Reads what each screw carries, its patch on the bone included. */
final class ScrewDemands {

  private ScrewDemands() {}

  static List<ScrewDemand> of(LoadPath.End end) {
    Response response = end.response();
    Map<Integer, Six> patches = response.patches(end.answer());
    List<ScrewDemand> demands = new ArrayList<>();
    List<ScrewColumn> columns = response.joined().screws();
    for (int i = 0; i < columns.size(); i++) {
      PatchStand stand = end.stands().getOrDefault(i, PatchStand.WHOLE);
      Six patch = stand.kept().plus(patches.getOrDefault(i, Six.NONE));
      demands.add(demand(columns.get(i), response, end.answer(), patch, stand));
    }
    return demands;
  }

  private static ScrewDemand demand(
      ScrewColumn column, Response response, Response.Answer answer, Six patch, PatchStand stand) {
    PlateScrew screw = column.screw();
    Six neck = Six.NONE;
    double length = 0;
    if (column.neck().isPresent()) {
      neck = response.force(answer, column.neck().getAsInt());
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
        32 * moment / (Math.PI * Math.pow(screw.core(), 3)) + Math.abs(neck.along()) / area,
        capacity(screw, response.fixed().shaft()),
        state(stand));
  }

  private static OptionalDouble capacity(PlateScrew screw, Shaft shaft) {
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
