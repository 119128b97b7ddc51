package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.Cerclage;
import org.bonewright.casefile.ExternalFixator;
import org.bonewright.casefile.LagScrew;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.ScrewRow;
import org.bonewright.casefile.Strut;
import org.bonewright.drawing.words.InWords;
import org.bonewright.drawing.words.Standing;

/** What stands in the rows above and below the bone. */
final class StripRows {

  private final Standing standing;

  StripRows(Standing standing) {
    this.standing = standing;
  }

  /** Return one row for each plate, those of earlier operations first. */
  List<Rows.Row> plates() {
    List<Rows.Row> rows = new ArrayList<>();
    for (Standing.Laid laid : standing.plates()) {
      List<Rows.Entry> entries = new ArrayList<>();
      standing.eachHole(
          laid,
          (level, hole) ->
              entries.add(
                  new Rows.Entry(level, key(laid, hole), text(laid, hole), over(laid, hole))));
      if (!entries.isEmpty()) {
        rows.add(
            new Rows.Row(
                laid.metal().path(),
                "plate, " + standing.surfaces().name(laid.placed().plate().surface()),
                entries));
      }
    }
    return rows;
  }

  private static Key key(Standing.Laid laid, int hole) {
    if (laid.placed().plate().plugged().contains(hole)) {
      return Key.PLUGGED;
    }
    Optional<ScrewRow> row = laid.placed().screwIn(hole);
    if (row.isEmpty()) {
      return laid.placed().isFilled(hole) ? Key.LAG : Key.OPEN;
    }
    return switch (row.get().type()) {
      case CORTICAL -> Key.CONVENTIONAL;
      case CANCELLOUS -> Key.CANCELLOUS;
      case LOCKING -> Key.LOCKING;
    };
  }

  private Optional<Standing.Drilled> drilled(Standing.Laid laid, int hole) {
    return standing.tracks().stream()
        .filter(d -> d.own() && d.old().track().name().equals(laid.holeName(hole)))
        .findFirst();
  }

  private List<Key> over(Standing.Laid laid, int hole) {
    return drilled(laid, hole).map(StripRows::over).orElse(List.of());
  }

  private static List<Key> over(Standing.Drilled drilled) {
    return ThreadLeft.isCertain(drilled) ? List.of(Key.TAKEN) : List.of();
  }

  private static String left(Standing.Drilled drilled) {
    String left = ThreadLeft.inBoth(drilled);
    return left.isEmpty() ? "" : ": " + left;
  }

  private String text(Standing.Laid laid, int hole) {
    String state =
        InWords.state(laid.placed().screwIn(hole).flatMap(ScrewRow::state))
            + drilled(laid, hole).map(StripRows::left).orElse("");
    String broken = laid.broken().equals(Optional.of(hole)) ? " broken here" : "";
    return hole + state + broken;
  }

  /** Return the rows of nails, fixators, lag screws, loops, struts and pieces. */
  List<Rows.Row> metal() {
    List<Rows.Row> rows = new ArrayList<>();
    for (Standing.Metal metal : standing.metal()) {
      List<Rows.Entry> entries = filled(metal.path());
      if (metal.implant() instanceof Nail) {
        add(
            rows,
            metal.path(),
            standing.nailBroke(metal).isPresent() ? "broken nail, its bolts" : "nail, its bolts",
            entries);
      } else if (metal.implant() instanceof ExternalFixator) {
        add(rows, metal.path(), "fixator, its pins", entries);
      } else if (metal.implant() instanceof LagScrew) {
        add(rows, metal.path(), "lag screw, " + surface(metal.path()), entries);
      } else if (metal.implant() instanceof Cerclage cerclage) {
        List<Rows.Entry> loops = new ArrayList<>();
        cerclage
            .atMm()
            .forEach(
                at ->
                    standing
                        .level(at, metal.round())
                        .ifPresent(l -> loops.add(new Rows.Entry(l, Key.CERCLAGE, "loop"))));
        add(rows, metal.path(), "cerclage", loops);
      } else if (metal.implant() instanceof Strut strut) {
        standing
            .level(
                Quantity.of((strut.fromMm().middle() + strut.toMm().middle()) / 2), metal.round())
            .ifPresent(
                l ->
                    rows.add(
                        row(
                            metal.path(),
                            under(strut),
                            new Rows.Entry(l, Key.STRUT, span(strut)))));
      }
    }
    return rows;
  }

  private String under(Strut strut) {
    return strut.where() == Strut.Where.ONLAY
        ? "strut, " + standing.surfaces().name(strut.surface())
        : "strut in the canal";
  }

  private static String span(Strut strut) {
    return number(strut.fromMm()) + " to " + number(strut.toMm()) + " mm as recorded";
  }

  private static Rows.Row row(String caption, String under, Rows.Entry entry) {
    return new Rows.Row(caption, under, List.of(entry));
  }

  private static void add(
      List<Rows.Row> rows, String caption, String under, List<Rows.Entry> entries) {
    if (!entries.isEmpty()) {
      rows.add(new Rows.Row(caption, under, entries));
    }
  }

  private String surface(String path) {
    return standing.tracks().stream()
        .map(drilled -> drilled.old().track())
        .filter(track -> track.implant().equals(path))
        .findFirst()
        .map(track -> standing.surfaces().name(track.direction()))
        .orElse("");
  }

  private List<Rows.Entry> filled(String path) {
    List<Rows.Entry> entries = new ArrayList<>();
    for (Standing.Drilled drilled : standing.tracks()) {
      Track track = drilled.old().track();
      if (drilled.old().filled() && track.implant().equals(path)) {
        track
            .level()
            .ifPresent(
                level ->
                    entries.add(
                        new Rows.Entry(
                            level,
                            key(track.kind()),
                            number(track) + InWords.state(track.state()) + left(drilled),
                            over(drilled))));
      }
    }
    return entries;
  }

  private static Key key(Track.Kind kind) {
    return switch (kind) {
      case BOLT -> Key.BOLT;
      case PIN -> Key.PIN;
      default -> Key.LAG;
    };
  }

  /** Return the number of a track within its implant; empty for a lag screw. */
  static String number(Track track) {
    return track.name().substring(track.name().lastIndexOf(' ') + 1).contains("/")
        ? ""
        : track.name().substring(track.name().lastIndexOf(' ') + 1);
  }

  /** Return what was left behind, cut out, or put in by others. */
  List<Rows.Row> other() {
    List<Rows.Row> rows = new ArrayList<>();
    List<Rows.Entry> pieces = new ArrayList<>();
    standing.eachPiece(
        (piece, level) ->
            pieces.add(
                new Rows.Entry(
                    level, Key.PIECE, Captions.shortened(piece.piece().orElse(""), 10.5, 420))));
    add(rows, "left behind", "", pieces);
    List<Rows.Entry> cuts = new ArrayList<>();
    CutLevels.of(standing)
        .forEach(
            (cut, level) ->
                cuts.add(
                    new Rows.Entry(level, Key.CUT, cut.to().minus(cut.from()).numbers() + " mm")));
    add(rows, "bone cut out", "", cuts);
    return rows;
  }

  /** Return the zone's row, where its level is known. */
  Optional<Rows.Row> zone() {
    FractureZone zone = standing.zone();
    return zone.centre()
        .map(
            centre ->
                row(
                    "zone",
                    "broken or not united",
                    new Rows.Entry(
                        centre,
                        Key.ZONE,
                        zone.length()
                            .map(l -> l.max() == 0 ? "closed" : l.numbers() + " mm long")
                            .orElse("length not recorded"))));
  }

  /** Return one row for each implant that left empty tracks. */
  List<Rows.Row> oldTracks() {
    Map<String, List<OldTrack>> byImplant = new LinkedHashMap<>();
    standing.tracks().stream()
        .map(Standing.Drilled::old)
        .filter(old -> !old.filled() && old.track().level().isPresent())
        .forEach(
            old ->
                byImplant.computeIfAbsent(old.track().implant(), i -> new ArrayList<>()).add(old));
    return byImplant.entrySet().stream()
        .map(
            entry ->
                new Rows.Row(
                    entry.getKey(),
                    "old tracks"
                        + entry.getValue().get(0).day().map(d -> ", day " + number(d)).orElse(""),
                    entry.getValue().stream()
                        .map(
                            old ->
                                new Rows.Entry(
                                    old.track().level().orElseThrow(),
                                    Key.old(old.track().round()),
                                    number(old.track()) + InWords.state(old.track().state())))
                        .toList()))
        .toList();
  }

  private static String number(Quantity quantity) {
    return Dimension.stated(quantity, "").numbers();
  }
}
