package org.bonewright.drawing.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.Cuts;
import org.bonewright.bone.ledger.InsideMetal;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.FailureMode;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Pin;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Words;

/** A bone as it stands, in short sentences without a full stop. */
public final class InWords {

  private final Standing standing;

  /** Make one for a bone as it stands. */
  public InWords(Standing standing) {
    this.standing = standing;
  }

  /** Return where the zone is. */
  public String zone() {
    FractureZone zone = standing.zone();
    String length =
        zone.length()
            .map(l -> l.max() == 0 ? "closed" : l.numbers() + " mm long")
            .orElse("length not recorded");
    if (!standing.levels().fromLandmark() || zone.centre().isEmpty()) {
      return "zone " + length + ", level not recorded";
    }
    Dimension centre = zone.centre().get();
    return "zone " + length + ", its middle at " + centre.numbers() + " mm";
  }

  /** Return every implant in the bone, one sentence each. */
  public List<String> metal() {
    List<String> all = new ArrayList<>();
    for (Standing.Metal metal : standing.metal()) {
      if (metal.implant() instanceof Nail nail) {
        all.add(nail(metal, nail));
      } else if (metal.implant() instanceof ExternalFixator fixator) {
        all.add(metal.path() + ": fixator, " + at(metal.path(), "pin", count(fixator)));
      } else if (metal.implant() instanceof LagScrew) {
        all.add(metal.path() + ": lag screw" + level(metal.path()));
      } else if (metal.implant() instanceof Strut strut) {
        all.add(strut(metal, strut));
      } else if (metal.implant() instanceof Cerclage cerclage) {
        String at = numbers(cerclage.atMm());
        all.add(
            metal.path()
                + ": cerclage, "
                + (at.isEmpty() ? "levels not recorded" : "loops at " + at + " mm as recorded"));
      }
    }
    standing.plates().forEach(laid -> all.add(plate(laid)));
    standing.pieces().forEach(piece -> all.add(piece(piece)));
    standing
        .scene()
        .subject()
        .caseFile()
        .bone()
        .otherImplants()
        .forEach(other -> all.add(other.what() + ", not part of this history"));
    return all;
  }

  private static Optional<Integer> count(ExternalFixator fixator) {
    return fixator.pins().map(List<Pin>::size);
  }

  private String nail(Standing.Metal metal, Nail nail) {
    return metal.path()
        + ": nail"
        + nail.outerMm().map(d -> " " + number(d) + " mm thick").orElse(", thickness not recorded")
        + nail.lengthMm().map(l -> ", " + number(l) + " mm long").orElse("")
        + ", "
        + at(metal.path(), "bolt", nail.bolts().map(List<Bolt>::size))
        + standing.nailBroke(metal).map(InWords::broken).orElse("");
  }

  private static String broken(FailureMode mode) {
    return switch (mode) {
      case NAIL_BROKEN_MID_SHAFT -> "; broken in mid-shaft";
      case NAIL_BROKEN_AT_BOLT_HOLE -> "; broken at a bolt hole";
      default -> "; broken, at which level is not recorded";
    };
  }

  private String at(String path, String what, Optional<Integer> count) {
    if (count.isEmpty()) {
      return what + "s not recorded";
    }
    if (count.get() == 0) {
      return "no " + what + "s";
    }
    List<String> levels =
        filled(path).stream()
            .flatMap(track -> track.level().stream().map(l -> l.numbers() + state(track.state())))
            .toList();
    int lost = filled(path).size() - levels.size();
    String known =
        levels.isEmpty()
            ? ""
            : plural(what, levels.size()) + " at " + String.join(", ", levels) + " mm";
    String unknown =
        lost == 0 ? "" : lost + " " + plural(what, lost) + " whose level is not recorded";
    return known + (known.isEmpty() || unknown.isEmpty() ? "" : ", ") + unknown;
  }

  private static String plural(String what, int count) {
    return count == 1 ? what : what + "s";
  }

  private List<Track> filled(String path) {
    return standing.tracks().stream()
        .filter(d -> d.old().filled() && d.old().track().implant().equals(path))
        .map(d -> d.old().track())
        .toList();
  }

  private String level(String path) {
    return filled(path).stream()
        .findFirst()
        .map(
            track ->
                track.level().map(l -> " at " + l.numbers() + " mm").orElse(", level not recorded")
                    + ", "
                    + standing.surfaces().name(track.direction()))
        .orElse("");
  }

  private String strut(Standing.Metal metal, Strut strut) {
    return metal.path()
        + ": strut "
        + (strut.where() == Strut.Where.ONLAY
            ? "on the bone, " + standing.surfaces().name(strut.surface())
            : "in the canal")
        + ", from "
        + number(strut.fromMm())
        + " to "
        + number(strut.toMm())
        + " mm as recorded";
  }

  private String plate(Standing.Laid laid) {
    StringBuilder text = new StringBuilder(laid.metal().path() + ": plate");
    text.append(laid.placed().plate().holes().map(n -> " of " + n + " holes").orElse(""));
    text.append(", ").append(standing.surfaces().name(laid.placed().plate().surface()));
    standing
        .level(laid, 1)
        .ifPresentOrElse(
            level -> text.append(", hole 1 at ").append(level.numbers()).append(" mm"),
            () -> text.append(", level not recorded"));
    if (laid.placed().plate().screws().isEmpty()) {
      text.append("; screws not recorded");
    }
    holes(text, laid, "; screws in holes ", hole -> isScrew(laid, hole, false));
    holes(text, laid, "; locking screws in holes ", hole -> isScrew(laid, hole, true));
    holes(
        text,
        laid,
        "; lag screw in hole ",
        hole -> laid.placed().isFilled(hole) && laid.placed().screwIn(hole).isEmpty());
    holes(text, laid, "; plugged ", hole -> laid.placed().plate().plugged().contains(hole));
    if (laid.placed().plate().screws().isPresent()) {
      holes(
          text,
          laid,
          "; open ",
          hole -> !laid.placed().isFilled(hole) && !laid.placed().plate().plugged().contains(hole));
    }
    for (ScrewRow.State state : ScrewRow.State.values()) {
      if (state != ScrewRow.State.SOUND) {
        holes(text, laid, ";" + state(Optional.of(state)) + " ", hole -> isNow(laid, hole, state));
      }
    }
    laid.broken().ifPresent(hole -> text.append("; broken at hole ").append(hole));
    return text.toString();
  }

  private static boolean isNow(Standing.Laid laid, int hole, ScrewRow.State state) {
    return laid.placed().screwIn(hole).flatMap(ScrewRow::state).equals(Optional.of(state));
  }

  /** Return what became of a screw, bolt or pin, with a space before; empty where it is sound. */
  public static String state(Optional<ScrewRow.State> state) {
    return state.filter(s -> s != ScrewRow.State.SOUND).map(s -> " " + Words.of(s)).orElse("");
  }

  private static boolean isScrew(Standing.Laid laid, int hole, boolean locking) {
    return laid.placed()
        .screwIn(hole)
        .map(row -> (row.type() == ScrewRow.Type.LOCKING) == locking)
        .orElse(false);
  }

  private static void holes(
      StringBuilder text, Standing.Laid laid, String what, IntPredicate which) {
    String found =
        laid.placed()
            .allHoles()
            .filter(which)
            .mapToObj(Integer::toString)
            .collect(Collectors.joining(", "));
    if (!found.isEmpty()) {
      text.append(what).append(found);
    }
  }

  private static String piece(InsideMetal piece) {
    return piece.path()
        + ": left behind, "
        + piece.piece().orElse("")
        + piece.level().map(l -> ", at " + number(l) + " mm as recorded").orElse("");
  }

  /** Return the empty tracks, one sentence for each implant that left some. */
  public List<String> oldTracks() {
    Map<String, List<Track>> byImplant = new LinkedHashMap<>();
    standing.tracks().stream()
        .filter(drilled -> !drilled.old().filled())
        .map(drilled -> drilled.old().track())
        .forEach(t -> byImplant.computeIfAbsent(t.implant(), i -> new ArrayList<>()).add(t));
    return byImplant.entrySet().stream().map(e -> empty(e.getKey(), e.getValue())).toList();
  }

  private String empty(String implant, List<Track> tracks) {
    Map<String, List<String>> bySurface = new LinkedHashMap<>();
    for (Track track : tracks) {
      String number = track.name().substring(implant.length()).strip();
      String what = number.isEmpty() ? "" : number + " ";
      bySurface
          .computeIfAbsent(standing.surfaces().name(track.direction()), s -> new ArrayList<>())
          .add(
              track
                  .level()
                  .map(l -> what + "at " + l.numbers() + " mm")
                  .orElse(what + "at an unknown level"));
    }
    return implant
        + ": "
        + bySurface.entrySet().stream()
            .map(e -> String.join(", ", e.getValue()) + " (" + e.getKey() + ")")
            .collect(Collectors.joining("; "));
  }

  /** Return the pieces of bone cut out so far. */
  public List<String> cuts() {
    return standing.scene().ledger().cuts().before(standing.scene().ledger().rounds()).stream()
        .map(InWords::cut)
        .toList();
  }

  private static String cut(Cuts.Cut cut) {
    return "bone from "
        + cut.from().numbers()
        + " to "
        + cut.to().numbers()
        + " mm cut out, closed by "
        + cut.closed().numbers()
        + " mm";
  }

  /** Return what is in the bone but has no known place, so that it is not drawn. */
  public List<String> unplaced() {
    return new Unplaced(standing).names();
  }

  static String numbers(List<Quantity> all) {
    return all.stream().map(InWords::number).collect(Collectors.joining(", "));
  }

  static String number(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }
}
