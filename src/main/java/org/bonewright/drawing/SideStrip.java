package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Strut;
import org.bonewright.drawing.words.InWords;
import org.bonewright.drawing.words.Levels;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Words;

/** Draws the bone from the side, near end left, with a row of signs for each implant. */
final class SideStrip {

  private final Standing standing;
  private final Extent extent;
  private final Profile profile;
  private final Sheet sheet;
  private final StripRows rows;

  SideStrip(Standing standing) {
    this.standing = standing;
    this.extent = Extent.of(standing);
    Bone bone = standing.scene().subject().caseFile().bone();
    Scale scale = Scale.of(Sheet.LEFT, extent.from(), extent.to());
    this.profile =
        new Profile(
            scale,
            0,
            Upwards.of(standing),
            bone.side(),
            standing.scene().bone(),
            standing.levels().fromLandmark());
    this.sheet = new Sheet(scale);
    this.rows = new StripRows(standing);
  }

  Picture picture() {
    String title = Captions.title(standing.scene().subject(), "Side strip");
    sheet.heading(title, view() + "; " + Drawing.origin(standing), standing.scene().subject());
    double gridTop = sheet.y();
    rowsAbove();
    body();
    sheet.goTo(sheet.y() + 12);
    double axis = sheet.y();
    sheet.goTo(axis + 28);
    Rows below = new Rows(profile.scale(), sheet.y());
    rows.metal().forEach(below::add);
    rows.other().forEach(below::add);
    rows.oldTracks().forEach(below::add);
    sheet.goTo(axis);
    sheet.axis(gridTop, below.bottom());
    sheet.add(below.marks());
    sheet.uses(below.used());
    sheet.goTo(below.bottom());
    notes();
    sheet.foot();
    return sheet.picture(
        Drawing.id(standing, View.STRIP),
        title,
        Drawing.words(
            standing, title + ". " + view() + "; " + Drawing.origin(standing), sheet.notes()));
  }

  private String view() {
    if (Upwards.told(standing).isEmpty()) {
      return "near end left; which surface is up is not recorded";
    }
    return "near end left, "
        + standing.surfaces().name(profile.up())
        + " surface up, seen from "
        + standing.surfaces().name(profile.viewer());
  }

  private void rowsAbove() {
    Rows above = new Rows(profile.scale(), sheet.y());
    rows.plates().forEach(above::add);
    rows.zone().ifPresent(above::add);
    sheet.add(above.marks());
    sheet.uses(above.used());
    sheet.goTo(above.bottom() + 12);
  }

  private void body() {
    double least = profile.scale().units(profile.bone().outerAtShaft().max() / 2 + 3);
    Bounds bounds = Bounds.of(body(profile), least);
    Profile placed = profile.at(sheet.y() - bounds.top());
    List<Mark> drawn = body(placed);
    sheet.add(drawn);
    legend(drawn);
    ends(placed);
    sheet.goTo(sheet.y() - bounds.top() + bounds.bottom());
  }

  /** What stands in the bone itself and in no row must be told too. */
  private void legend(List<Mark> drawn) {
    Map.of(
            Ink.OLD, Key.OLD_ROD,
            Ink.NAIL, Key.NAIL,
            Ink.UNSURE, Key.UNSURE,
            Ink.BONE_GUESSED, Key.GUESSED,
            Ink.OTHER, Key.OTHER)
        .forEach(
            (ink, key) -> {
              if (drawn.stream().anyMatch(mark -> shows(mark, ink))) {
                sheet.uses(key);
              }
            });
  }

  private static boolean shows(Mark mark, Ink ink) {
    if (mark instanceof Mark.Thing thing) {
      return thing.marks().stream().anyMatch(part -> shows(part, ink));
    }
    return (mark instanceof Mark.Outline outline && outline.ink().equals(ink))
        || (mark instanceof Mark.Disc disc && disc.ink().equals(ink))
        || (mark instanceof Mark.Box box && box.ink().equals(ink));
  }

  private List<Mark> body(Profile at) {
    StripBone tube = new StripBone(at, extent.from(), extent.to(), extent.whole());
    StripMetal metal = new StripMetal(at, standing);
    Bone bone = standing.scene().subject().caseFile().bone();
    List<Mark> marks = new ArrayList<>();
    marks.add(tube.tube(extent.whole() ? bone.sections() : List.of()));
    // The bone is broken here, not the metal that crosses it: metal covers the zone.
    tube.zone(standing.zone()).ifPresent(marks::add);
    bone.otherImplants().forEach(other -> metal.other(other).ifPresent(marks::add));
    each(Nail.class)
        .forEach(
            nail ->
                NailSpan.of(standing, nail, extent)
                    .flatMap(span -> metal.nail(nail, span))
                    .ifPresent(marks::add));
    each(Strut.class).forEach(strut -> metal.strut(strut).ifPresent(marks::add));
    CutLevels.of(standing)
        .forEach(
            (cut, level) -> {
              double reach = at.radius(level.middle()) + 3;
              double x = at.x(level.middle());
              marks.add(
                  new Mark.Thing(
                      "cut",
                      "",
                      "bone cut out here",
                      List.of(Mark.Outline.line(Ink.CUT, x, at.y(reach), x, at.y(-reach)))));
            });
    standing.tracks().stream()
        .filter(drilled -> !drilled.old().filled())
        .forEach(drilled -> metal.track(drilled).ifPresent(marks::add));
    standing.plates().stream()
        .sorted(Comparator.comparingDouble(laid -> depth(at, laid)))
        .forEach(laid -> marks.addAll(new StripPlate(at, standing, laid).marks()));
    standing.tracks().stream()
        .filter(drilled -> drilled.old().filled() && !isPlateScrew(drilled))
        .forEach(drilled -> metal.track(drilled).ifPresent(marks::add));
    each(ExternalFixator.class).forEach(fixator -> marks.addAll(metal.frame(fixator)));
    each(Cerclage.class).forEach(cerclage -> marks.addAll(metal.cerclage(cerclage)));
    marks.addAll(metal.pieces());
    return marks;
  }

  private static double depth(Profile at, Standing.Laid laid) {
    return laid.placed().plate().surface().map(at::depth).orElse(0.0);
  }

  private static boolean isPlateScrew(Standing.Drilled drilled) {
    Track.Kind kind = drilled.old().track().kind();
    return kind == Track.Kind.PLATE_SCREW || kind == Track.Kind.LOCKING_PLATE_SCREW;
  }

  private List<Standing.Metal> each(Class<?> type) {
    return standing.metal().stream().filter(m -> type.isInstance(m.implant())).toList();
  }

  /** Write the name of the near end, and how far the far end is uncertain. */
  private void ends(Profile at) {
    if (!extent.whole()) {
      sheet.note("The bone goes on beyond both ends of the drawing.");
      return;
    }
    double y = at.middle();
    List<String> name =
        Captions.lines(Levels.nearEnd(standing.scene().boneName()), 10.5, Sheet.LEFT - 24);
    for (int i = 0; i < name.size(); i++) {
      sheet.add(
          List.of(new Mark.Label(8, y + 4 + 13 * i, name.get(i), 10.5, Mark.Anchor.START, false)));
    }
    extent
        .farEnd()
        .ifPresent(
            end -> {
              sheet.note(
                  "The far end of the bone is not known better than "
                      + end.numbers()
                      + " mm; drawn at the middle.");
            });
  }

  private void notes() {
    for (Standing.Laid laid : standing.plates()) {
      Plate plate = laid.placed().plate();
      boolean drawn = new PlateForm(standing, laid).span().isPresent();
      if (drawn && plate.surface().isEmpty()) {
        sheet.note(laid.metal().path() + ": surface not recorded; drawn on top.");
      }
      if (drawn && new PlateForm(standing, laid).isGuessed()) {
        sheet.note(laid.metal().path() + ": size not recorded; width and thickness are a guess.");
      }
      if (plate.screws().isEmpty()) {
        sheet.note(laid.metal().path() + ": its screws are not recorded.");
      }
    }
    for (Standing.Metal nail : each(Nail.class)) {
      sheet.note(nail.path() + ": its level is not recorded; drawn " + drawnFrom(nail) + ".");
    }
    if (!each(ExternalFixator.class).isEmpty()) {
      sheet.note("The distance of a fixator's bars from the bone is not recorded; drawn outside.");
    }
    if (rows.other().stream().flatMap(row -> row.entries().stream()).anyMatch(this::isPiece)) {
      sheet.note("How deep a piece left behind lies is not recorded; drawn in the middle.");
    }
    ThreadLeft.sentences(standing).forEach(text -> sheet.note(text + "."));
    standing.tracks().stream()
        .map(drilled -> drilled.old().track())
        .filter(track -> track.level().isPresent() && track.direction().isEmpty())
        .map(Track::implant)
        .distinct()
        .forEach(
            implant -> sheet.note(implant + ": direction of screws not recorded; drawn upright."));
    Optional.of(new InWords(standing).unplaced())
        .filter(missing -> !missing.isEmpty())
        .ifPresent(
            missing ->
                sheet.note("Not drawn, level not known: " + String.join("; ", missing) + "."));
    if (standing.plates().stream().anyMatch(laid -> laid.broken().isPresent())) {
      sheet.uses(Key.BROKEN);
    }
    failure().ifPresent(sheet::note);
  }

  private boolean isPiece(Rows.Entry entry) {
    return entry.key() == Key.PIECE;
  }

  private String drawnFrom(Standing.Metal nail) {
    if (!extent.whole()) {
      return "all through, its ends are not shown";
    }
    return "from the end at which it went in"
        + (((Nail) nail.implant()).lengthMm().isPresent() ? "" : ", to its last bolt");
  }

  private Optional<String> failure() {
    return standing
        .scene()
        .operation()
        .outcome()
        .flatMap(outcome -> outcome.mode())
        .map(mode -> "What became of it: " + Words.of(mode) + ".");
  }
}
