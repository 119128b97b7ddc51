package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Strut;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The measures of struts inside the bone and on it. */
final class StrutMeasures {

  private static final List<String> LEVELS =
      List.of(
          "operations/fixation/fromMm",
          "operations/fixation/toMm",
          "injury/zone",
          "operations/resection");
  private static final List<String> HOLD =
      List.of(
          "operations/fixation/screws",
          "operations/fixation/place",
          "operations/fixation/atMm",
          "operations/fixation/holds");

  private StrutMeasures() {}

  static List<Measure> all() {
    return List.of(
        new StrutUsed("canal-strut-used", Strut.Where.INTRAMEDULLARY),
        new StrutUsed("onlay-strut-used", Strut.Where.ONLAY),
        beyond("canal-strut-beyond", "Canal strut", Strut.Where.INTRAMEDULLARY),
        beyond("onlay-strut-beyond", "Onlay strut", Strut.Where.ONLAY),
        canalScrews(),
        canalFill(),
        onlayFixings(),
        onlayDiameters(),
        onlayWall());
  }

  private static Measure beyond(String id, String strut, Strut.Where where) {
    return new StrutNumber(
        new Definition(
            id,
            strut + " beyond the zone",
            Definition.signedMillimetres(),
            "length of the strut beyond the zone, on the shorter side; once bone is cut out the zone"
                + " is at least the gap left",
            LEVELS,
            "geometry of the case file"),
        where,
        StrutReach::beyond);
  }

  private static Measure canalScrews() {
    return new StrutNumber(
        new Definition(
            "canal-strut-screws",
            "Screws through the canal strut",
            Definition.count(1),
            "plate screws that cross both cortices at a level of the strut, on the side of the zone"
                + " that has fewer",
            HOLD,
            "our convention"),
        Strut.Where.INTRAMEDULLARY,
        StrutHold::screws);
  }

  private static Measure canalFill() {
    return new StrutNumber(
        new Definition(
            "canal-strut-fill",
            "Canal strut to canal",
            Definition.ratio(),
            "diameter of the strut over that of the canal at the zone",
            List.of("operations/fixation/outerMm", "bone/sections", "injury/zone"),
            "common practice, no source"),
        Strut.Where.INTRAMEDULLARY,
        StrutMeasures::fill);
  }

  private static Reading fill(Scene scene, Strut strut) {
    MissingFact wide = missing(scene, strut, "outerMm", "How thick is the strut, in mm?");
    MissingFact canal =
        scene.missingInCase("bone/sections", "How wide is the canal at the zone, in mm?");
    if (strut.outerMm().isEmpty()) {
      return Reading.unknown(wide);
    }
    Dimension canalMm = scene.bone().canalAt(scene.zone());
    if (canalMm.min() <= 0) {
      return Reading.unknown(canal);
    }
    Dimension outer = Dimension.stated(strut.outerMm().get(), "strut stated");
    return Reading.number(
        outer.over(canalMm),
        "strut " + outer.numbers() + " mm / canal " + canalMm.numbers() + " mm",
        wide,
        canal);
  }

  private static Measure onlayFixings() {
    return new StrutNumber(
        new Definition(
            "onlay-strut-fixings",
            "Screws and wires on the onlay strut",
            Definition.count(1),
            "screws through the strut and wires round it, on the side of the zone that has fewer. A"
                + " plate screw counts for a strut under its plate, and for one opposite when its"
                + " tip stands out by the wall of the strut; a wire when it is said to hold the"
                + " strut",
            HOLD,
            "our convention"),
        Strut.Where.ONLAY,
        StrutHold::screwsAndWires);
  }

  private static Measure onlayDiameters() {
    return new StrutNumber(
        new Definition(
            "onlay-strut-diameters",
            "Onlay strut in bone diameters",
            Definition.ratio(),
            "length of the strut over the outer diameter of the bone at the zone",
            List.of("operations/fixation/fromMm", "operations/fixation/toMm", "bone/sections"),
            "geometry of the case file"),
        Strut.Where.ONLAY,
        StrutMeasures::diameters);
  }

  private static Reading diameters(Scene scene, Strut strut) {
    Dimension length =
        Dimension.stated(strut.toMm(), "").minus(Dimension.stated(strut.fromMm(), ""));
    Dimension positive =
        new Dimension(Math.max(0, length.min()), Math.max(0, length.max()), false, "");
    Dimension outer = scene.bone().outerAt(scene.zone());
    return Reading.number(
        positive.over(outer),
        "strut " + positive.numbers() + " mm / bone " + outer.numbers() + " mm",
        scene.missingInCase(
            "bone/sections", "What is the outer diameter of the bone at the zone, in mm?"));
  }

  private static Measure onlayWall() {
    return new StrutNumber(
        new Definition(
            "onlay-strut-wall",
            "Thickness of the onlay strut",
            Definition.millimetres(),
            "as stated",
            List.of("operations/fixation/wallMm"),
            "the case file"),
        Strut.Where.ONLAY,
        StrutMeasures::wall);
  }

  private static Reading wall(Scene scene, Strut strut) {
    MissingFact thick = missing(scene, strut, "wallMm", "How thick is the strut, in mm?");
    Optional<Quantity> wall = strut.wallMm();
    return wall.map(q -> Reading.number(Dimension.stated(q, ""), "as stated", thick))
        .orElseGet(() -> Reading.unknown(thick));
  }

  private static MissingFact missing(Scene scene, Strut strut, String field, String question) {
    return scene.missing("fixation/" + strut.id() + "/" + field, question);
  }
}
