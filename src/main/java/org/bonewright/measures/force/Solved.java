package org.bonewright.measures.force;

/**
 * What a construct does under one set of assumptions.
 *
 * @param near opening under the first plate in mm; below zero it closes
 * @param far opening opposite to the first plate in mm
 * @param most largest opening or closing anywhere round the outer ring in mm
 * @param shear largest movement across the line in mm
 * @param strain largest opening or closing anywhere round the outer ring in percent of the gaps;
 *     100 where the load is not borne; 0 where the ends touch
 * @param contact share of the ring that touches under the load, in percent
 * @param stress largest range of the nominal stress of a plate in MPa, under the load
 * @param steady nominal stress of a plate in MPa from what presses the ends together, where its
 *     range is largest
 * @param nail largest range of the nominal stress of a nail in MPa, under the load; 0 where there
 *     is none
 * @param bolt the same of its bolts
 * @param pin largest bending stress of a pin of a fixator in MPa, under the load; 0 where there is
 *     none
 * @param use how far plate, nail or bolts use up what their metal bears for ever; above 1 one of
 *     them breaks in time
 * @param life cycles to failure of plate, nail or bolts over cycles to union
 * @param margin pull that the worst screw bears over the pull on it
 * @param opening bending moment in N·m at which the cortex opposite the plate opens; 0 where
 *     nothing presses the ends together
 * @param strut percentage of the bending at the line that a strut in the canal carries
 */
record Solved(
    double near,
    double far,
    double most,
    double shear,
    double strain,
    double contact,
    double stress,
    double steady,
    double nail,
    double bolt,
    double pin,
    double use,
    double life,
    double margin,
    double opening,
    double strut) {}
