package org.bonewright.bone.ledger;

import java.util.Optional;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Quantity;

/**
 * A track that an operation finds in the bone.
 *
 * @param track the track; its level as it reads now
 * @param asInjured the level it has in the bone as injured, mm; empty where it cannot be told
 * @param operation the operation that drilled it
 * @param day when that was, in days after the injury
 * @param filled whether metal still lies in it
 * @param mayBeGone whether it may have lain in a piece that was cut out since
 */
public record OldTrack(
    Track track,
    Optional<Dimension> asInjured,
    String operation,
    Optional<Quantity> day,
    boolean filled,
    boolean mayBeGone) {}
