package org.bonewright.site;

import java.util.List;
import org.bonewright.casefile.BoneLoad;
import org.bonewright.casefile.BoneName;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Written;

/**
 * What a bone bears at a site instead of what the table says, as it was written.
 *
 * @param bone the bone
 * @param loads its loads, one of each activity; they take the place of all that the table has
 * @param reason why
 * @param by role of who answers for it
 * @param on ISO date
 */
@Meaning("What a bone bears here at a fracture, instead of what the published table says.")
public record LoadChange(
    @Meaning("The bone.") BoneName bone,
    @Meaning(
            "What it bears with no limit to the load, an entry for each activity, 5 at most. Of femur and tibia for a body weight of 75 kg; it follows the patient's.")
        List<BoneLoad> loads,
    @Meaning("Why it differs.") String reason,
    @Meaning("Role of who answers for it, not a name.") String by,
    @Meaning("Day on which it was set.")
        @Written(regex = "[0-9]{4}-[0-9]{2}-[0-9]{2}", inWords = "a date such as 2026-03-31")
        String on)
    implements Grounded {}
