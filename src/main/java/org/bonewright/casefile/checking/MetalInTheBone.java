package org.bonewright.casefile.checking;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bonewright.casefile.Implant;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.Removal;

/**
 * The metal that may be in the bone around one operation: everything put in that was not certainly
 * taken out before.
 *
 * @param implants the implants that may be there
 * @param removals what was taken out so far
 */
record MetalInTheBone(List<Fitted<Implant>> implants, List<Removal> removals) {

  /**
   * Return the metal that was there at any time during an operation; absent when the file leaves
   * open what some operation put in, or names implants from outside this history.
   */
  static Optional<MetalInTheBone> during(Procedure procedure, Contents contents) {
    return of(contents, procedure, false);
  }

  /** Return the metal that was there once an operation was over; absent as for {@code during}. */
  static Optional<MetalInTheBone> after(Procedure procedure, Contents contents) {
    return of(contents, procedure, true);
  }

  private static Optional<MetalInTheBone> of(
      Contents contents, Procedure procedure, boolean whenOver) {
    List<Procedure> soFar =
        contents.procedures().stream()
            .filter(procedure::mayMeet)
            .filter(other -> !procedure.comesBefore(other))
            .toList();
    boolean gaps = soFar.stream().anyMatch(other -> other.operation().fixation().isEmpty());
    if (gaps || !contents.file().bone().otherImplants().isEmpty()) {
      return Optional.empty();
    }
    List<Removal> removals =
        soFar.stream()
            .filter(other -> other.comesBefore(procedure) || (whenOver && other.equals(procedure)))
            .flatMap(other -> takenOut(other, contents))
            .toList();
    return Optional.of(new MetalInTheBone(stillIn(soFar, removals), removals));
  }

  private static Stream<Removal> takenOut(Procedure procedure, Contents contents) {
    return procedure.operation().removed().stream()
        .flatMap(List::stream)
        .filter(removal -> contents.removable(removal.of(), procedure).isPresent());
  }

  private static List<Fitted<Implant>> stillIn(List<Procedure> soFar, List<Removal> removals) {
    Set<String> gone = new HashSet<>();
    removals.stream().filter(Removal::isWhole).map(Removal::of).forEach(gone::add);
    return soFar.stream()
        .flatMap(procedure -> procedure.fitted().stream())
        .filter(fitted -> !gone.contains(fitted.name()))
        .toList();
  }

  /** Return the plates among it. */
  List<Fitted<Plate>> plates() {
    return implants.stream().filter(f -> f.isA(Plate.class)).map(f -> f.as(Plate.class)).toList();
  }

  /** Return the holes of a plate that hold a screw; absent when its screws are not known. */
  Optional<Set<Integer>> filled(Fitted<Plate> plate) {
    return plate.implant().screws().map(rows -> filled(plate, Screws.holes(rows)));
  }

  private Set<Integer> filled(Fitted<Plate> plate, Stream<Integer> atFirst) {
    Set<Integer> filled = new HashSet<>();
    atFirst.forEach(filled::add);
    implants.stream()
        .flatMap(fitted -> Screws.throughPlate(fitted, plate).stream())
        .forEach(filled::add);
    removals.stream()
        .filter(removal -> removal.of().equals(plate.name()))
        .forEach(removal -> filled.removeAll(Set.copyOf(removal.holes())));
    return filled;
  }

  /** Return what is there in words. */
  String inWords() {
    return Wording.list(implants.stream().map(Fitted::name).toList(), "no metal");
  }
}
