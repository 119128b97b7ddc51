package org.bonewright.bone;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.bonewright.casefile.Plate;
import org.bonewright.casefile.ScrewRow;

/**
 * A plate laid along the bone: where each hole is with regard to the zone.
 *
 * <p>Distances are mm along the axis from the middle of the zone, positive away from the landmark.
 * A plate placed by the holes either side of the zone can be shifted by what the zone leaves free
 * between these holes; every distance then carries that as a range.
 */
public final class PlacedPlate {

  private final Plate plate;
  private final FractureZone zone;
  private final Set<Integer> lagHoles;

  /** Lay a plate over a zone. */
  public PlacedPlate(Plate plate, FractureZone zone) {
    this(plate, zone, Set.of());
  }

  /** Lay a plate over a zone, with the holes that lag screws pass through. */
  public PlacedPlate(Plate plate, FractureZone zone, Set<Integer> lagHoles) {
    this.plate = plate;
    this.zone = zone;
    this.lagHoles = Set.copyOf(lagHoles);
  }

  /** Return whether a plate screw or a lag screw fills a hole. */
  public boolean isFilled(int hole) {
    return screwIn(hole).isPresent() || lagHoles.contains(hole);
  }

  /** Return the plate as recorded. */
  public Plate plate() {
    return plate;
  }

  /** Return the generic size, where the family is known. */
  public Optional<PlateSize> size() {
    return plate.family().map(PlateSize::of);
  }

  /** Return the distance between holes in mm, stated or from the family. */
  public Optional<Dimension> spacing() {
    return plate
        .spacingMm()
        .map(q -> Dimension.stated(q, "hole spacing stated"))
        .or(() -> size().map(s -> Dimension.assumed(s.spacing(), s.spacing(), "usual spacing")));
  }

  /** Return the length in mm, stated or from the number of holes and the family, ± 10 %. */
  public Optional<Dimension> length() {
    return plate
        .lengthMm()
        .map(q -> Dimension.stated(q, "plate length stated"))
        .or(() -> size().flatMap(s -> plate.holes().map(n -> typicalLength(n, s))));
  }

  private Dimension typicalLength(int holes, PlateSize size) {
    double length = (holes - 1) * size.spacing() + 2 * size.endOffset();
    return Dimension.assumed(
        length * 0.9, length * 1.1, "usual length of a plate of " + holes + " holes");
  }

  /** Return the screw row that fills a hole, where one does. */
  public Optional<ScrewRow> screwIn(int hole) {
    return plate.screws().stream()
        .flatMap(List::stream)
        .filter(row -> row.at().contains(hole))
        .findFirst();
  }

  /** Return the holes that certainly or possibly lie on this side, in order. */
  public List<Integer> holes(HoleSide side) {
    return allHoles().filter(hole -> side(hole) == side).boxed().toList();
  }

  /** Return every hole number that the plate or its screws name, in order. */
  public IntStream allHoles() {
    Set<Integer> named = new TreeSet<>(plate.plugged());
    plate.screws().ifPresent(rows -> rows.forEach(row -> named.addAll(row.at())));
    plate.holes().ifPresent(n -> IntStream.rangeClosed(1, n).forEach(named::add));
    return named.stream().mapToInt(Integer::intValue);
  }

  /** Return where a hole lies with regard to the zone. */
  public HoleSide side(int hole) {
    Optional<List<Integer>> either = eitherSide();
    if (either.isPresent()) {
      return hole <= either.get().get(0)
          ? HoleSide.NEAR
          : hole >= either.get().get(1) ? HoleSide.FAR : HoleSide.OVER;
    }
    Optional<Dimension> distance = distance(hole);
    if (distance.isEmpty() || zone.length().isEmpty()) {
      return HoleSide.UNSURE;
    }
    double halfMin = zone.length().get().min() / 2;
    double halfMax = zone.length().get().max() / 2;
    if (distance.get().max() < -halfMax) {
      return HoleSide.NEAR;
    }
    if (distance.get().min() > halfMax) {
      return HoleSide.FAR;
    }
    boolean over = distance.get().min() >= -halfMin && distance.get().max() <= halfMin;
    return over ? HoleSide.OVER : HoleSide.UNSURE;
  }

  /** Return the distance of a hole from the middle of the zone in mm, where it can be told. */
  public Optional<Dimension> distance(int hole) {
    return spacing().flatMap(step -> both(measured(hole, step), readOff(hole, step)));
  }

  /**
   * Return the level of a hole in mm from the landmark, where it can be told: from the level of the
   * first hole, and from the middle of the zone.
   */
  public Optional<Dimension> level(int hole) {
    Optional<Dimension> first =
        hole == 1
            ? firstHole()
            : spacing().flatMap(step -> firstHole().map(at -> at.plus(times(step, hole - 1))));
    Optional<Dimension> byZone =
        spacing().flatMap(step -> zone.centre().flatMap(at -> readOff(hole, step).map(at::plus)));
    return both(first, byZone);
  }

  /** Where a place is told in two ways both count, the first where they contradict each other. */
  private static Optional<Dimension> both(Optional<Dimension> one, Optional<Dimension> other) {
    return one.map(at -> other.map(at::within).orElse(at)).or(() -> other);
  }

  private Optional<Dimension> firstHole() {
    return plate
        .place()
        .flatMap(place -> place.firstHoleMm())
        .map(first -> Dimension.stated(first, "first hole stated"));
  }

  private Optional<Dimension> measured(int hole, Dimension step) {
    return firstHole()
        .flatMap(
            first -> zone.centre().map(centre -> first.plus(times(step, hole - 1)).minus(centre)));
  }

  private Optional<Dimension> readOff(int hole, Dimension step) {
    return eitherSide()
        .map(
            pair -> {
              double nominal = hole - (pair.get(0) + pair.get(1)) / 2.0;
              double free = shift(pair.get(1) - pair.get(0), step);
              Dimension at = times(step, nominal);
              return Dimension.assumed(
                  at.min() - free,
                  at.max() + free,
                  "read off by the holes either side of the zone");
            });
  }

  /**
   * Return by how much the plate may be shifted, mm each way: the zone must fit between the two
   * holes named, and every hole between them must at least touch it.
   */
  private double shift(int holesApart, Dimension step) {
    double shortest = zone.length().map(Dimension::min).orElse(0.0);
    double fits = Math.max(0, holesApart * step.max() - shortest) / 2;
    if (holesApart < 2 || zone.length().isEmpty()) {
      return fits;
    }
    double radius = size().map(PlateSize::screw).orElse(PlateSize.THICKEST_SCREW) / 2;
    double touches = zone.length().get().max() / 2 + radius - (holesApart / 2.0 - 1) * step.min();
    return Math.min(fits, Math.max(0, touches));
  }

  /** Return the length that the holes either side of the zone leave for it, in mm. */
  public Optional<Dimension> roomForZone() {
    return eitherSide()
        .flatMap(
            pair ->
                spacing()
                    .map(
                        step -> {
                          int apart = pair.get(1) - pair.get(0);
                          return Dimension.assumed(
                              Math.max(0, apart - 2) * step.min(),
                              apart * step.max(),
                              "zone fits between holes " + pair.get(0) + " and " + pair.get(1));
                        }));
  }

  private Optional<List<Integer>> eitherSide() {
    return plate.place().flatMap(place -> place.zoneBetweenHoles()).filter(p -> p.size() == 2);
  }

  private static Dimension times(Dimension step, double by) {
    double a = step.min() * by;
    double b = step.max() * by;
    return new Dimension(Math.min(a, b), Math.max(a, b), step.assumed(), step.basis());
  }
}
