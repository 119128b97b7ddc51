package org.bonewright.mechanics.answer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bonewright.mechanics.construct.Load;

/**
 * What one load does.
 *
 * @param load the load
 * @param end movement of the distal end against the proximal one
 * @param gap movement of the fracture
 * @param contact how the bone ends rest; absent where they cannot meet
 * @param plates what each plate carries at its holes and at the fracture
 * @param screws what each screw carries
 * @param nail what a nail and its bolts carry; absent where there is none
 * @param fixator what an external fixator carries; absent where there is none
 * @param lags what each lag screw carries
 * @param strut what a strut carries at the fracture; absent where none crosses it, or none that a
 *     screw holds on either side
 * @param onlay what a strut on the surface carries at the fracture; absent as for a strut
 * @param events what gave way, in order
 * @param slipCautious share of the load at which the patch next to the fracture would slip if it
 *     carried the whole axial force; absent where no screw presses
 * @param reached share of the load that was borne; below 1 nothing holds beyond it
 */
public record LoadAnswer(
    Load load,
    Movement end,
    GapMovement gap,
    Optional<EndContact> contact,
    List<List<PlateCut>> plates,
    List<ScrewDemand> screws,
    Optional<NailAnswer> nail,
    Optional<FixatorAnswer> fixator,
    List<LagDemand> lags,
    Optional<StrutCut> strut,
    Optional<PlateCut> onlay,
    List<GivingWay> events,
    OptionalDouble slipCautious,
    double reached) {}
