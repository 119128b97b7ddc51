package org.bonewright.measures.nail;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.FractureZone;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the zone lies in the middle third of the bone, where a nail has its best fit. */
final class LineAtIsthmus implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "line-at-isthmus",
        "Line at the isthmus",
        Definition.yesOrNo(),
        "yes when the whole zone lies between one third and two thirds of the bone's length",
        List.of("injury/zone", "findings/zone", "bone/lengthMm"),
        "the middle third for the isthmus is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    FractureZone zone = scene.zone();
    Optional<Dimension> half = zone.length();
    MissingFact zoneMissing =
        scene.missingInCase(
            "injury/zone", "From which level to which is the bone broken or not united, in mm?");
    if (zone.centre().isEmpty() || half.isEmpty()) {
      return Reading.unknown(zoneMissing);
    }
    Dimension centre = zone.centre().get();
    Dimension length = scene.bone().length();
    double reach = half.get().max() / 2;
    boolean inside =
        centre.min() - reach >= length.max() / 3 && centre.max() + reach <= length.min() * 2 / 3;
    boolean outside =
        centre.max() - half.get().min() / 2 < length.min() / 3
            || centre.min() + half.get().min() / 2 > length.max() * 2 / 3;
    String working =
        "zone about " + centre.numbers() + " mm on a bone of " + length.numbers() + " mm";
    if (inside || outside) {
      return Reading.word(inside ? "yes" : "no", working);
    }
    return Reading.words(
        Set.of("yes", "no"),
        length.assumed() ? Kind.ASSUMED : Kind.FACT,
        working,
        length.min() < length.max()
            ? scene.missingInCase("bone/lengthMm", "How long is the bone, in mm?")
            : zoneMissing);
  }
}
