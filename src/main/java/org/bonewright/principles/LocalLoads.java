package org.bonewright.principles;

import java.util.List;
import org.bonewright.casefile.BoneName;
import org.bonewright.measures.load.UsualLoad;

/**
 * What a bone bears at a site instead of what the published table says.
 *
 * @param bone the bone
 * @param loads an entry for each activity, one at least
 * @param grounds why, by whom and when
 */
public record LocalLoads(BoneName bone, List<UsualLoad> loads, LocalLimit.Grounds grounds) {

  /** Keep the loads as they are now. */
  public LocalLoads {
    loads = List.copyOf(loads);
  }
}
