package org.bonewright.measures.load;

import java.util.Arrays;
import java.util.List;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;

/** The measures of what the bone bears at the fracture. */
public final class LoadMeasures {

  /** The field of a case file that states loads: what rests on loads names it among its inputs. */
  public static final String STATED = "loads";

  private LoadMeasures() {}

  /** Return each of them, for a table of usual loads. */
  public static List<Measure> all(UsualLoads usual) {
    return Arrays.stream(LoadMeasure.What.values())
        .<Measure>map(what -> new LoadMeasure(what, usual))
        .toList();
  }

  /** Return whether a measure rests on the loads of the bone. */
  public static boolean restsOnLoads(Definition measure) {
    return measure.inputs().contains(STATED);
  }
}
