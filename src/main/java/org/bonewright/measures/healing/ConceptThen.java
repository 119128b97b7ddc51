package org.bonewright.measures.healing;

import java.util.List;
import java.util.Optional;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** The kind of stability under which a course healed, or should have. */
final class ConceptThen implements Measure {

  private final String id;
  private final Stretch stretch;

  ConceptThen(String id, Stretch stretch) {
    this.id = id;
    this.stretch = stretch;
  }

  @Override
  public Definition definition() {
    return new Definition(
        id,
        "Concept in force then",
        Definition.words("absolute", "relative"),
        "the concept of the operation that began this time; none after none; " + stretch.inWords(),
        List.of("concept"),
        "our convention");
  }

  @Override
  public Reading take(Scene scene) {
    boolean itself = stretch == Stretch.STANDING && !scene.subject().planned();
    Optional<Scene> then = itself ? Optional.of(scene) : scene.failedBefore();
    return then.map(s -> s.read("concept"))
        .orElseGet(() -> new Reading.None("no operation before"));
  }
}
