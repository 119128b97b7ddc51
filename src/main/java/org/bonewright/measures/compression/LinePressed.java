package org.bonewright.measures.compression;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether the line was pressed together by anything. */
final class LinePressed implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "line-pressed",
        "Line pressed together",
        Definition.yesOrNo(),
        "yes for every method of compression, a clamp included; no for none",
        List.of("compression-method"),
        "bookkeeping; counting a clamp that is followed by locking screws is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (!(scene.read("compression-method") instanceof Reading.Word method)) {
      return new Reading.Unknown(scene.read("compression-method").missing());
    }
    Set<String> possible = new HashSet<>();
    method.possible().forEach(word -> possible.add(word.equals("none") ? "no" : "yes"));
    return Reading.words(
        possible, method.kind(), method.shown(), method.missing().toArray(MissingFact[]::new));
  }
}
