package org.bonewright.casefile;

import java.util.List;
import java.util.Optional;

/**
 * The broken bone. Levels are mm along its axis from a landmark: humerus top of head, femur tip of
 * greater trochanter, tibia plateau at the eminence, radius head, ulna olecranon tip, clavicle
 * sternal end.
 */
public record Bone(
    @Meaning("Which bone.") BoneName name,
    @Meaning("Which side.") Side side,
    @Meaning("Length of the bone in mm.") @Between(min = 60, max = 600) Optional<Quantity> lengthMm,
    @Meaning(
            "Distance in mm from the bone's own landmark to the one that levels in this file are read from; positive towards the far end.")
        @Between(min = -200, max = 200)
        Optional<Quantity> landmarkOffsetMm,
    @Meaning("Measured cross-sections, from the near end to the far end.") List<Section> sections,
    @Meaning("Width of the metaphysis nearest the fracture, in mm.") @Between(min = 10, max = 150)
        Optional<Quantity> metaphysealWidthMm,
    @Meaning(
            "Implants in this bone that do not belong to this history, such as a joint replacement.")
        List<OtherImplant> otherImplants,
    @Meaning("Measurements of bone quality, each with its method.") List<BoneQuality> quality) {}
