package org.bonewright.bone;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.Patient;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Section;

/**
 * The bone as a tube: its length, and outer and inner diameter at any level.
 *
 * <p>Between two measured sections a diameter is interpolated linearly, bound by bound; beyond the
 * last one it is that section's, ± 10 % and marked as assumed. With no section at all it is the
 * range of {@link TypicalBone}.
 */
public final class BoneShape {

  private final Bone bone;
  private final TypicalBone typical;
  private final Set<BoneGrade> grades;
  private final Measured outer;
  private final Measured canal;

  /**
   * Make the shape of a bone.
   *
   * @param bone the bone as recorded
   * @param sex the patient's sex, for table values
   * @param grades the grades that the bone may have; poor bone has a thinner cortex and a wider
   *     canal where these come from the table
   */
  public BoneShape(Bone bone, Optional<Patient.Sex> sex, Set<BoneGrade> grades) {
    this.bone = bone;
    this.typical = TypicalBone.of(bone.name(), sex.stream().toList());
    this.grades = Set.copyOf(grades);
    this.outer = Measured.of(bone, Section::outerMm, "outer diameter");
    this.canal = Measured.of(bone, Section::canalMm, "canal");
  }

  /** Return the length of the bone in mm. */
  public Dimension length() {
    return bone.lengthMm()
        .map(stated -> Dimension.stated(stated, "bone length stated"))
        .orElseGet(() -> fromTable(typical.length(), "length"));
  }

  /** Return the outer diameter in mm at a level in mm. */
  public Dimension outerAt(double level) {
    return outer.at(level).orElseGet(() -> fromTable(typical.outer(), "outer diameter"));
  }

  /** Return the outer diameter in mm somewhere between two levels in mm. */
  public Dimension outerAt(Dimension level) {
    return over(level, this::outerAt);
  }

  /**
   * Return the outer diameter in mm at the middle of a zone; that of the whole shaft where the
   * level is not known.
   */
  public Dimension outerAt(FractureZone zone) {
    return outerAt(zone.centre());
  }

  /** Return the outer diameter in mm at a level, where that is known; else of the whole shaft. */
  public Dimension outerAt(Optional<Dimension> level) {
    return level.map(at -> outerAt(at)).orElseGet(this::outerAtShaft);
  }

  /**
   * Return the diameter of the canal in mm at the middle of a zone; where the level is not known,
   * from the isthmus to the widest measured section, ± 10 %.
   */
  public Dimension canalAt(FractureZone zone) {
    return zone.centre()
        .map(level -> over(level, this::canalAt))
        .orElseGet(() -> canal.anywhere().map(isthmus()::or).orElseGet(this::isthmus));
  }

  /** Return the thickness of the cortex in mm somewhere between two levels in mm. */
  public Dimension cortexAt(Dimension level) {
    return over(level, this::cortexAt);
  }

  /** Between neighbouring sections a diameter runs straight, so ends and sections bound it. */
  private Dimension over(Dimension level, DoubleFunction<Dimension> at) {
    DoubleStream ends = DoubleStream.of(level.min(), level.max());
    DoubleStream between =
        bone.sections().stream()
            .mapToDouble(section -> section.atMm().middle())
            .filter(section -> section > level.min() && section < level.max());
    return DoubleStream.concat(ends, between).mapToObj(at).reduce(Dimension::or).orElseThrow();
  }

  /**
   * Return the thickness of the cortex in mm at a level in mm: half of what the canal leaves of the
   * outer diameter where both were measured, else the table's range for the bone, thinner by a
   * fixed share in reduced and poor bone (0.85 and 0.7, our convention).
   */
  public Dimension cortexAt(double level) {
    Optional<Dimension> outside = outer.at(level);
    Optional<Dimension> inside = canal.at(level);
    if (outside.isPresent() && inside.isPresent()) {
      Dimension wall = outside.get().minus(inside.get());
      return new Dimension(
          Math.max(0.1, wall.min() / 2), Math.max(0.1, wall.max() / 2), wall.assumed(), "cortex");
    }
    double thinnest =
        grades.contains(BoneGrade.POOR) ? 0.7 : grades.contains(BoneGrade.REDUCED) ? 0.85 : 1;
    double thickest =
        grades.contains(BoneGrade.GOOD) ? 1 : grades.contains(BoneGrade.REDUCED) ? 0.85 : 0.7;
    return fromTable(
        new TypicalBone.Range(typical.cortex().min() * thinnest, typical.cortex().max() * thickest),
        "cortex");
  }

  /**
   * Return the diameter of the canal in mm at a level in mm; where none was measured, that of the
   * isthmus.
   */
  public Dimension canalAt(double level) {
    return canal.at(level).orElseGet(this::isthmus);
  }

  /**
   * Return the outer diameter where the level is not known: from the thinnest measured section to
   * the thickest, ± 10 %.
   */
  public Dimension outerAtShaft() {
    return outer.anywhere().orElseGet(() -> fromTable(typical.outer(), "outer diameter"));
  }

  /**
   * Return the diameter of the canal at its narrowest part, in mm. It counts as measured when a
   * canal was measured in the middle half of the bone; a canal measured farther out only bounds it
   * from above.
   */
  public Dimension isthmus() {
    List<Section> measured =
        bone.sections().stream().filter(section -> section.canalMm().isPresent()).toList();
    if (measured.isEmpty()) {
      return typicalIsthmus();
    }
    double min = bound(measured, Quantity::min);
    double max = bound(measured, Quantity::max);
    double middle = length().middle();
    boolean inShaft =
        measured.stream()
            .mapToDouble(section -> section.atMm().middle())
            .anyMatch(level -> level >= middle / 4 && level <= middle * 3 / 4);
    return inShaft
        ? new Dimension(min, max, false, "narrowest canal measured")
        : Dimension.assumed(
            Math.min(typical.canal().min(), min), max, "at most the canal measured off the shaft");
  }

  private static double bound(List<Section> measured, Function<Quantity, Double> bound) {
    return measured.stream()
        .mapToDouble(section -> bound.apply(section.canalMm().orElseThrow()))
        .min()
        .orElseThrow();
  }

  private Dimension typicalIsthmus() {
    TypicalBone.Range canal = typical.canal();
    if (grades.contains(BoneGrade.POOR)) {
      double lost = 0.3 * typical.cortex().max();
      return fromTable(new TypicalBone.Range(canal.min(), canal.max() + 2 * lost), "canal");
    }
    return fromTable(canal, "canal");
  }

  private Dimension fromTable(TypicalBone.Range range, String what) {
    String boneName = bone.name().name().toLowerCase(java.util.Locale.ROOT);
    return Dimension.assumed(
        range.min(), range.max(), "usual " + what + " of an adult " + boneName);
  }
}
