package org.bonewright.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.CaseFolder;
import org.bonewright.casefile.checking.Intake;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.catalogue.EveryMeasure;

/** Every drawing of every case. */
final class CaseDrawings {

  static final Path DEMO = Path.of("cases/demo/femur-three-operations/case.json");

  private CaseDrawings() {}

  /** One drawing of one subject. */
  record Drawn(Subject subject, View view, Picture picture) {
    @Override
    public String toString() {
      return subject.caseFile().reference() + " " + subject.id() + " " + view;
    }
  }

  static List<Path> files() {
    List<Path> files = new ArrayList<>(CaseFolder.files());
    try (Stream<Path> all = Files.walk(Path.of("src/test/resources/valid"))) {
      all.filter(file -> file.toString().endsWith(".json")).sorted().forEach(files::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  static CaseFile read(Path file) {
    try {
      return new Intake().read(Files.readAllBytes(file)).caseFile().orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Stream<Drawn> all() {
    return files().stream()
        .map(CaseDrawings::read)
        .flatMap(file -> Subject.of(file).stream())
        .flatMap(subject -> Stream.of(View.values()).map(view -> draw(subject, view)));
  }

  static Drawn draw(Subject subject, View view) {
    return new Drawn(subject, view, Drawing.of(new Scene(subject, EveryMeasure.catalogue()), view));
  }

  static Drawn draw(CaseFile file, String subject, View view) {
    return draw(
        Subject.of(file).stream().filter(s -> s.id().equals(subject)).findFirst().orElseThrow(),
        view);
  }

  /** Return every mark, those within others too. */
  static Stream<Mark> flat(Mark mark) {
    if (mark instanceof Mark.Thing thing) {
      return Stream.concat(Stream.of(thing), thing.marks().stream().flatMap(CaseDrawings::flat));
    }
    return mark instanceof Mark.Window window
        ? window.marks().stream().flatMap(CaseDrawings::flat)
        : Stream.of(mark);
  }

  static <T extends Mark> List<T> marks(Picture picture, Class<T> type) {
    return picture.marks().stream()
        .flatMap(CaseDrawings::flat)
        .filter(type::isInstance)
        .map(type::cast)
        .toList();
  }

  /** Return the one thing of this kind and name. */
  static Mark.Thing thing(Picture picture, String kind, String name) {
    List<Mark.Thing> found =
        marks(picture, Mark.Thing.class).stream()
            .filter(thing -> thing.kind().equals(kind) && thing.name().equals(name))
            .toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " of " + kind + " " + name);
    }
    return found.get(0);
  }
}
